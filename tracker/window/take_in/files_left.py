"""Leaving files that are being taken in; several at once can be taken back: choosing them again from memory would be
the user's work."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtGui import QUndoCommand

from tracker.window.look.figures import counted
from tracker.window.session import Session
from tracker.window.take_in.file_at_hand import FileAtHand


class FilesLeft(QUndoCommand):
    """Files that were left unsettled; undoing reads them again, with all that was said about them."""

    def __init__(
        self, files: Sequence[FileAtHand], leave: Callable[[], None], read: Callable[[Sequence[FileAtHand]], None]
    ) -> None:
        super().__init__(f"left {counted(len(files), 'file')} without taking them in")
        self._files, self._leave, self._read = files, leave, read

    def redo(self) -> None:
        self._leave()

    def undo(self) -> None:
        self._read([FileAtHand(file.path, kept=file.kept) for file in self._files])


def leave_files(
    session: Session,
    files: Sequence[FileAtHand],
    leave: Callable[[], None],
    read: Callable[[Sequence[FileAtHand]], None],
) -> None:
    """Leaves them all. One file is soon chosen again; of several it can be undone."""
    unsettled = [file for file in files if file.unsettled]
    if len(unsettled) > 1:
        left = FilesLeft(unsettled, leave, read)
        session.undo_stack.push(left)
        session.said.emit(left.text())
        return
    stopped = [file.path.name for file in unsettled if file.taken is None]
    leave()
    if stopped:
        session.said.emit(f"stopped reading {stopped[0]}; nothing of it was stored")
