"""What became of files at hand since they were read: stored, withdrawn by an undo, or brought back."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from tracker.window.take_in.file_at_hand import FileAtHand

if TYPE_CHECKING:
    from tracker.desk.files import StoredFile


def follow_database(files: Sequence[FileAtHand], listing: Iterable[StoredFile]) -> bool:
    """Has each file at hand say whether its offers count now, as the database lists it; True where one said otherwise.

    A file that the database does not list was never stored: nothing changed for it.
    """
    listed = {kept.sha256: kept for kept in listing}
    changed = [_follow(file, listed) for file in files]
    return any(changed)


def _follow(file: FileAtHand, listed: dict[str, StoredFile]) -> bool:
    kept = None if file.taken is None else listed.get(file.taken.reading.sha256)
    if kept is None or file.taken is None:
        return False
    day = None if kept.withdrawn else kept.imported_at.astimezone().date()
    was = file.stored, file.taken.imported_on
    file.stored = file.stored and not kept.withdrawn
    file.taken = replace(file.taken, imported_on=day)
    return was != (file.stored, day)
