"""Backing up, putting back, checking."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from tracker.desk.opening import is_server, refuse_missing
from tracker.desk.trouble import Trouble

if TYPE_CHECKING:
    from tracker.desk.opening import Desk


def backup(desk: Desk, path: Path, *, replace: bool = False) -> None:
    """Writes a consistent copy, also while others work. Trouble if there is no database or no way to write there.

    What stands there already, an older backup perhaps, is written over only where `replace` says so.
    """
    from tracker.store import keeping
    from tracker.store.database import CannotOpen

    refuse_missing(desk)
    if path.resolve() == Path(desk.database).resolve():
        raise Trouble("That is the database itself: name another file for the backup.")
    if path.exists() and not replace:
        raise Trouble(f"{path} is there already and was left as it is: name another file, or add --replace.")
    try:
        keeping.copy(desk.store, path)
    except CannotOpen as problem:
        raise Trouble(str(problem)) from problem


def restore(database: str, path: Path) -> Path | None:
    """Puts a backup in a database's place after verifying it; gives where what stood there is kept, if there was any.

    Trouble, and nothing is changed, if the backup is not whole. Close every window on the database first.
    """
    from tracker.store import keeping
    from tracker.store.database import CannotOpen

    if is_server(database):
        raise Trouble("A team's server is restored by its own means (pg_restore), not from here.")
    try:
        return keeping.put_back(path, Path(database).expanduser())
    except CannotOpen as problem:
        raise Trouble(str(problem)) from problem
    except OSError as problem:
        raise Trouble(
            f"{database} can't be replaced ({problem.strerror}): close what uses it and try again."
        ) from problem


def check(desk: Desk) -> tuple[str, ...]:
    """What is wrong with the database, in sentences; nothing where all is well. Trouble where there is none."""
    from sqlalchemy.exc import DBAPIError

    from tracker.store import keeping
    from tracker.store.database import CannotOpen, why_not

    refuse_missing(desk)
    try:
        return keeping.faults(desk.database)
    except CannotOpen as problem:
        raise Trouble(str(problem)) from problem
    except DBAPIError as problem:
        if is_server(desk.database):
            raise Trouble(why_not(desk.database, problem)) from problem
        return (f"The database can't be read ({problem.orig}). Restore a backup.",)
