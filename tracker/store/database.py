"""An open database, SQLite or PostgreSQL: connections to read with, transactions to write in."""

import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from sqlalchemy import URL, Connection, Engine, create_engine, event, make_url
from sqlalchemy.exc import ArgumentError, DBAPIError
from sqlalchemy.pool import ConnectionPoolEntry, NullPool

_BUSY_MS = 5000
_REACHED_WITHIN_S = 10


class CannotOpen(Exception):
    """A database that can't be used; the message is one plain sentence for the user."""


class Database:
    """One open database. Reading and writing each take a connection, held for one piece of work."""

    def __init__(self, engine: Engine, path: Path | None) -> None:
        self.engine = engine
        self.path = path
        self._writing = engine.execution_options(write=True)
        # SQLite's readers see one moment of themselves; a server must be told.
        self._reading = engine if path else engine.execution_options(isolation_level="REPEATABLE READ")

    @contextmanager
    def reading(self) -> Iterator[Connection]:
        """A connection in one transaction, so that everything read through it is of one moment."""
        with self._reading.connect() as connection:
            yield connection

    @contextmanager
    def writing(self) -> Iterator[Connection]:
        """A transaction: all that is done in it is kept when the block ends, none of it if the block raises."""
        with self._writing.begin() as connection:
            yield connection

    def close(self) -> None:
        """Lets go of every connection."""
        self.engine.dispose()


def connect(where: str | Path) -> Database:
    """An engine on the database as it stands: no table is made or looked at."""
    text = str(where)
    if "://" in text:
        return Database(_server(text), None)
    path = Path(where).expanduser()
    if text.startswith(("\\\\", "//")):
        raise CannotOpen(
            f"{text} lies on a network share, where SQLite loses data: put it on this computer's own disk, "
            "or let the team share a PostgreSQL server."
        )
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
    except OSError as problem:
        raise CannotOpen(
            f"The folder {path.parent} can't be made ({problem.strerror}): name another place."
        ) from problem
    return Database(_file(path), path)


def _server(url: str) -> Engine:
    try:
        parsed = make_url(url)
    except (ArgumentError, ValueError) as problem:
        # What was written is not repeated: it may hold a password.
        raise CannotOpen(
            "That is not an address of a database server: write postgresql+psycopg://user@host/name."
        ) from problem
    if parsed.get_backend_name() != "postgresql":
        raise CannotOpen(f"A {parsed.get_backend_name()} server can't be used: name a PostgreSQL server or a file.")
    # Without a bound a host that swallows every packet would hold the window for minutes.
    address = parsed.set(
        drivername="postgresql+psycopg", query={"connect_timeout": str(_REACHED_WITHIN_S), **parsed.query}
    )
    return create_engine(address, pool_pre_ping=True)


def _file(path: Path) -> Engine:
    # Made of parts, because in the text of a URL a name with a question mark would end there. No connection outlives
    # its piece of work: SQLite's locks are lost when anything in the process (a file dialog that looks for a file's
    # kind, say) opens and closes the file, and then the next program to leave deletes the log still being written to.
    engine = create_engine(URL.create("sqlite+pysqlite", database=str(path.absolute())), poolclass=NullPool)

    @event.listens_for(engine, "connect")
    def _set_up(connection: sqlite3.Connection, _: ConnectionPoolEntry) -> None:
        # The driver's own transactions begin late and let DDL escape; SQLAlchemy's BEGIN below replaces them.
        connection.isolation_level = None
        cursor = connection.cursor()
        for pragma in ("journal_mode=WAL", "synchronous=NORMAL", "foreign_keys=ON", f"busy_timeout={_BUSY_MS}"):
            cursor.execute(f"PRAGMA {pragma}")
        cursor.close()

    @event.listens_for(engine, "begin")
    def _begin(connection: Connection) -> None:
        # A writer takes its lock at once: one that began by reading would fail as soon as another had written.
        writes = connection.get_execution_options().get("write", False)
        connection.exec_driver_sql("BEGIN IMMEDIATE" if writes else "BEGIN")

    return engine


def why_not(where: str | Path, problem: DBAPIError) -> str:
    """Why a database can't be used, in one sentence that says what to do and shows no password."""
    reason = str(problem.orig).strip().splitlines()[0] if problem.orig and str(problem.orig) else "no reason given"
    if "not a database" in reason:
        return f"{where} is not a database of the tracker: name another file, or restore a backup."
    if "locked" in reason:
        return f"{where} is in use by another program that does not let go: close it and try again."
    if "://" in str(where):
        shown = make_url(str(where)).render_as_string(hide_password=True)
        return f"The server {shown} can't be reached ({reason}): check its address, your name and the network."
    return f"{where} can't be opened ({reason}): check that you may read and write it, and that the disk is not full."
