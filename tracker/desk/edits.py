"""Edits and their undoing: every edit is one transaction, logged, and can be reversed from the log."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import TYPE_CHECKING

from tracker.desk.trouble import Trouble

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.changes import Change as Change
    from tracker.store.changes import Pen


@dataclass(frozen=True, slots=True)
class Edit:
    """Something that was done: what to call it, and the log's entries that undo() reverses."""

    text: str
    changes: tuple[int, ...]


def undo(desk: Desk, edit: Edit) -> Edit:
    """Puts back what an edit changed; undoing the Edit that this gives does it again.

    Trouble, and nothing is changed, if something was edited again since.
    """
    from tracker.store.changes import ChangedMeanwhile

    try:
        with writing(desk, f"undone: {edit.text}") as pen:
            reversed_entries = pen.reverse(edit.changes)
    except ChangedMeanwhile as problem:
        raise Trouble(str(problem)) from problem
    return Edit(edit.text, reversed_entries)


def history(desk: Desk, limit: int = 200) -> tuple[Change, ...]:
    """The change log, newest first: who, when, what was and what is."""
    from tracker.store import changes

    with desk.store.reading() as connection:
        return changes.history(connection, limit)


def latest_change(desk: Desk) -> int:
    """The number of the newest edit: it grows with whatever anybody writes to the database, from any program."""
    from tracker.store import changes

    with desk.store.reading() as connection:
        return changes.latest(connection)


@contextmanager
def writing(desk: Desk, text: str) -> Iterator[Pen]:
    """One transaction whose edits are logged under `text`. What the database refuses becomes a sentence."""
    from sqlalchemy.exc import DBAPIError, IntegrityError

    from tracker.store.changes import Pen
    from tracker.store.types import NotKept

    try:
        with desk.store.writing() as connection:
            yield Pen(connection, desk.who, text)
    except NotKept as problem:
        raise Trouble(f"Nothing was stored. {problem}") from problem
    except IntegrityError as problem:
        raise Trouble(
            "Nothing was stored: somebody else stored the same at this moment. Look again, then retry."
        ) from problem
    except DBAPIError as problem:
        raise Trouble(
            f"Nothing was stored: the database did not take it ({str(problem.orig).strip()}). "
            "Check that the disk is not full and that no other program holds the database, then try again."
        ) from problem
