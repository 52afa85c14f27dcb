"""Which shape of the database this version of the tracker works with, and how an older one becomes it."""

import sqlite3
from contextlib import closing
from pathlib import Path
from typing import TYPE_CHECKING

from sqlalchemy import Column, Connection, MetaData, PrimaryKeyConstraint, String, Table, insert, inspect, select

from tracker.store.database import CannotOpen, Database
from tracker.store.tables import metadata

if TYPE_CHECKING:
    from alembic.config import Config

REVISIONS = ("0001", "0002", "0003", "0004", "0005")
"""Every migration from the first on. Kept here too so that an up-to-date database opens without importing Alembic."""

_VERSION = Table(
    "alembic_version",
    MetaData(),
    Column("version_num", String(32), nullable=False),
    PrimaryKeyConstraint("version_num", name="alembic_version_pkc"),
)
"""Where Alembic keeps the migration a database stands at, in Alembic's own words."""
_MIGRATING = 7_225_417
"""What a PostgreSQL server knows the lock by that one who migrates holds; any number that nobody else uses will do."""


def bring_up_to_date(database: Database) -> None:
    """Makes the tables in an empty database, or migrates an older one (a copy is left beside a SQLite file first).

    CannotOpen for a database made by a newer version, or one that holds something else.
    """
    with database.reading() as connection:
        found = revision(connection)
        foreign = found is None and bool(inspect(connection).get_table_names())
    if found == REVISIONS[-1]:
        return
    if foreign:
        raise CannotOpen(f"{_name(database)} holds tables of another program: name a file that does not exist yet.")
    if found is not None and found not in REVISIONS:
        raise CannotOpen(
            f"{_name(database)} was made by a newer version of the tracker: install that version, "
            "or open another database."
        )
    if found is None:
        _make(database)
    else:
        migrate(database)


def revision(connection: Connection) -> str | None:
    """The migration this database stands at; None for one without our tables."""
    if not inspect(connection).has_table(_VERSION.name):
        return None
    return connection.execute(select(_VERSION.c.version_num)).scalar()


def _make(database: Database) -> None:
    """Makes in an empty database what all migrations together make, which tests hold it to.

    Loading Alembic would take longer than all else that a new database needs. Others who open it meanwhile wait.
    """
    with database.writing() as connection:
        _alone(database, connection)
        if revision(connection) is None:
            metadata.create_all(connection, checkfirst=False)
            _VERSION.create(connection)
            connection.execute(insert(_VERSION).values(version_num=REVISIONS[-1]))


def _alone(database: Database, connection: Connection) -> None:
    """Waits until nobody else changes the tables; a SQLite file lets one writer in at a time anyway."""
    if database.path is None:
        connection.exec_driver_sql(f"SELECT pg_advisory_xact_lock({_MIGRATING})")


def migrate(database: Database, to: str = "head") -> None:
    """Runs the migrations up to a revision, all in one transaction, and checks every reference afterwards.

    An older SQLite database is copied first. Others who open it meanwhile wait, and then find it done.
    """
    from alembic import command

    with database.engine.execution_options(write=True).connect() as connection:
        # SQLite remakes a table to alter it; with foreign keys on, dropping the old one would delete its children.
        # The switch works only outside a transaction.
        if database.path is not None:
            _raw(connection).execute("PRAGMA foreign_keys=OFF")
        try:
            with connection.begin():
                _alone(database, connection)
                if database.path is not None:
                    _copy_older(connection, database.path)
                settings = alembic_settings()
                settings.attributes["connection"] = connection
                command.upgrade(settings, to)
                if database.path is not None and connection.exec_driver_sql("PRAGMA foreign_key_check").first():
                    raise CannotOpen(
                        f"{_name(database)} holds broken references, so it was left as it was: restore a backup."
                    )
        finally:
            if database.path is not None:
                _raw(connection).execute("PRAGMA foreign_keys=ON")


def _copy_older(connection: Connection, path: Path) -> None:
    if revision(connection) in (None, REVISIONS[-1]):
        return
    copy = path.with_name(f"{path.name}.before-{REVISIONS[-1]}")
    try:
        copy_file(path, copy)
    except (OSError, sqlite3.Error) as problem:
        raise CannotOpen(
            f"{path} must be brought up to date and can't be copied to {copy} before that ({problem}): "
            "make room in that folder."
        ) from problem


def alembic_settings() -> "Config":
    """Alembic's configuration, made here because the migrations travel inside the package."""
    from alembic.config import Config

    settings = Config()
    settings.set_main_option("script_location", str(Path(__file__).parent / "migrations").replace("%", "%%"))
    return settings


def copy_file(source: Path, target: Path) -> None:
    """A consistent copy of a SQLite database, also while others write to it."""
    with closing(sqlite3.connect(source)) as original, closing(sqlite3.connect(target)) as copy:
        original.backup(copy)
        # A copy in WAL mode would need its own side files; one plain file is what can be carried away.
        copy.execute("PRAGMA journal_mode=DELETE")


def _raw(connection: Connection) -> sqlite3.Connection:
    raw = connection.connection.driver_connection
    assert isinstance(raw, sqlite3.Connection)
    return raw


def _name(database: Database) -> str:
    return str(database.path) if database.path else database.engine.url.render_as_string(hide_password=True)
