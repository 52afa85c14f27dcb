"""Keeping a database safe: a consistent copy while in use, the copy put back, everything checked."""

import shutil
import sqlite3
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

from sqlalchemy import Connection, func, select

from tracker.store import schema
from tracker.store.database import CannotOpen, Database, connect
from tracker.store.tables import attachment, metadata, offer, price_file

_SIDE_FILES = ("-wal", "-shm")


def copy(database: Database, target: Path) -> None:
    """A consistent copy of a SQLite database, which others may go on using. CannotOpen for a server's."""
    if database.path is None:
        raise CannotOpen("A team's server is backed up by its own means (pg_dump), not from here.")
    beside = target.with_name(f"{target.name}.part")
    try:
        schema.copy_file(database.path, beside)
        beside.replace(target)
    except (OSError, sqlite3.Error) as problem:
        beside.unlink(missing_ok=True)
        raise CannotOpen(f"{target} can't be written ({problem}): choose another place.") from problem


def put_back(backup: Path, target: Path) -> Path | None:
    """Puts a verified copy in a database's place; what stood there is kept beside it, and its path is given.

    CannotOpen, and nothing is changed, where the copy does not hold what a database of the tracker must, or while
    another program is at work on the database: that would go on writing to what is no longer there.
    """
    _verify(backup)
    target.parent.mkdir(parents=True, exist_ok=True)
    fresh = target.with_name(f"{target.name}.part")
    fresh.unlink(missing_ok=True)
    _copy_fresh(backup, fresh)
    kept = _set_aside(target) if target.exists() else None
    for ending in _SIDE_FILES:
        target.with_name(target.name + ending).unlink(missing_ok=True)
    fresh.replace(target)
    return kept


def _copy_fresh(backup: Path, fresh: Path) -> None:
    try:
        schema.copy_file(backup, fresh)
    except sqlite3.Error as problem:
        fresh.unlink(missing_ok=True)
        raise CannotOpen(
            f"{fresh} can't be written ({problem}): nothing was changed. Check that the disk is not full and that you "
            "may write in that folder."
        ) from problem


def _set_aside(target: Path) -> Path:
    """A copy of what stands there, beside it, in the place of no earlier one."""
    _refuse_in_use(target)
    kept, number = target.with_name(f"{target.name}.before-restore"), 2
    while kept.exists():
        kept, number = target.with_name(f"{target.name}.before-restore-{number}"), number + 1
    try:
        # Copied by the database, so that what is still in the write-ahead log is in it too.
        schema.copy_file(target, kept)
    except sqlite3.DatabaseError:
        # Damaged, which may be why a backup is put back: then its bytes as they are.
        shutil.copyfile(target, kept)
    return kept


def _refuse_in_use(target: Path) -> None:
    with closing(sqlite3.connect(target, timeout=1)) as database:
        try:
            # Leaving the write-ahead log takes being the only one who is at work on the database.
            database.execute("PRAGMA journal_mode=DELETE")
        except sqlite3.OperationalError as problem:
            if problem.sqlite_errorcode == sqlite3.SQLITE_BUSY:
                raise CannotOpen(
                    f"{target} is in use by another program: let it finish, then restore again."
                ) from problem
        except sqlite3.DatabaseError:
            return  # damaged: nobody can be working with it


def _verify(backup: Path) -> None:
    if not backup.is_file():
        raise CannotOpen(f"There is no file {backup}: check the name of the backup.")
    try:
        with closing(sqlite3.connect(f"{backup.absolute().as_uri()}?mode=ro", uri=True)) as copy:
            said = [str(row[0]) for row in copy.execute("PRAGMA integrity_check(3)")]
            broken = copy.execute("PRAGMA foreign_key_check").fetchone()
            found = copy.execute("SELECT version_num FROM alembic_version").fetchone()
    except sqlite3.Error as problem:
        raise CannotOpen(f"{backup} is not a backup of the tracker ({problem}): nothing was changed.") from problem
    if said != ["ok"] or broken is not None:
        raise CannotOpen(f"{backup} is damaged ({said[0]}): nothing was changed. Take an older backup.")
    if found is None or found[0] not in schema.REVISIONS:
        raise CannotOpen(
            f"{backup} was made by a newer version of the tracker: nothing was changed. Install that version."
        )


def faults(where: str) -> tuple[str, ...]:
    """What is wrong with a database, in sentences; nothing where all is well. CannotOpen if it can't be looked at."""
    database = connect(where)
    try:
        with database.reading() as connection:
            _refuse_other_version(where, schema.revision(connection))
            return (*_damage(connection), *_broken_references(connection), *_odd_files(connection))
    finally:
        database.close()


def _refuse_other_version(where: str, found: str | None) -> None:
    if found is None:
        raise CannotOpen(f"{where} is not a database of the tracker: name another file.")
    if found not in schema.REVISIONS:
        raise CannotOpen(f"{where} was made by a newer version of the tracker: check it with that version.")
    if found != schema.REVISIONS[-1]:
        raise CannotOpen(
            f"{where} was made by an older version and not opened since: open it once, which brings it up to date, "
            "then check it."
        )


def _damage(connection: Connection) -> Iterator[str]:
    if connection.dialect.name != "sqlite":
        return
    for row in connection.exec_driver_sql("PRAGMA integrity_check(20)"):
        if row[0] != "ok":
            yield f"The file is damaged: {row[0]}. Restore a backup."


def _broken_references(connection: Connection) -> Iterator[str]:
    for table in metadata.sorted_tables:
        for column in table.c:
            for key in column.foreign_keys:
                other = key.column
                missing = select(func.count()).where(
                    column.is_not(None), ~select(other).where(other == column).exists()
                )
                count = connection.execute(missing.select_from(table)).scalar_one()
                if count:
                    there = other.table.name
                    yield f"{table.name}: rows that name a {there} that is not there: {count}. Restore a backup."


def _odd_files(connection: Connection) -> Iterator[str]:
    import hashlib
    import zlib

    for table in (price_file, attachment):
        for row in connection.execute(select(table.c.id, table.c.name, table.c.sha256)):
            packed = connection.execute(select(table.c.content).where(table.c.id == row.id)).scalar_one()
            try:
                same = hashlib.sha256(zlib.decompress(packed)).hexdigest() == row.sha256
            except zlib.error:
                same = False
            if not same:
                yield f"The kept file {row.name} is no longer as it was kept. Restore a backup."
    unpriced = connection.execute(select(func.count()).where(offer.c.price_units <= 0)).scalar_one()
    if unpriced:
        yield f"Offers with a price that is not above 0: {unpriced}. Restore a backup."
