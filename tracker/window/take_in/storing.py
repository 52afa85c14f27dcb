"""Storing what was agreed to: one file, or several in one step that one word tells and one undo takes back."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from tracker.trade.offer import State
from tracker.window.look.figures import counted
from tracker.window.session import Session
from tracker.window.take_in.file_at_hand import FileAtHand, lapsed_words
from tracker.window.undo import push_answered_anew, push_taken_in

if TYPE_CHECKING:
    from tracker.desk.take_in import Stored
    from tracker.trade.offer import Answers


def left_words(files: Sequence[FileAtHand]) -> str:
    """'1 file couldn't be read, 9 lines wait for answers.' of files of which all that was ready is stored."""
    unread = sum(file.is_unreadable for file in files)
    held = sum(file.found.states[State.QUESTION] for file in files if file.taken is not None)
    nameless = sum(file.accepted for file in files)
    parts = [f"{counted(unread, 'file')} couldn't be read"] if unread else []
    if held:
        parts.append(f"{counted(held, 'line')} {'waits' if held == 1 else 'wait'} for answers")
    if nameless:
        parts.append(f"{counted(nameless, 'offer')} {'waits' if nameless == 1 else 'wait'} for the vendor's name")
    return f"{', '.join(parts)}." if parts else ""


class Storing(QObject):
    """`stored` carries how many offers were, once all files of one step are done; a file that the database refuses is
    told and stays as it is."""

    stored = Signal(int)

    def __init__(self, session: Session, parent: QObject) -> None:
        super().__init__(parent)
        self._session = session
        self._waiting = 0
        self._asked: list[FileAtHand] = []
        self._done: list[tuple[FileAtHand, Stored]] = []
        self._anew = 0

    def store(self, files: Sequence[FileAtHand | None]) -> None:
        """Stores those of these files that are ready; nothing while others are being stored."""
        self._asked = [file for file in files if file is not None]
        ready = [file for file in self._asked if file.ready]
        if self._waiting or not ready:
            return
        self._waiting, self._done, self._anew = len(ready), [], 0
        for file in ready:
            self._session.work.ask(partial(self._stored, file), partial(self._was_stored, file), self._could_not)

    def _stored(self, file: FileAtHand) -> tuple[Stored, Answers | None]:
        """Stores one file; with it the answers that a kept one counted with until now. Runs on the desk's thread."""
        door, taken = self._session.door, file.taken
        assert taken is not None
        counted_till_now = bool(file.kept) and taken.imported_on is not None
        before = door.answers_of_kept(file.kept) if counted_till_now else None
        return door.store(taken, file.to_remember, dict(file.words), anew=bool(file.kept)), before

    def _was_stored(self, file: FileAtHand, result: tuple[Stored, Answers | None]) -> None:
        stored, before = result
        file.stored = True
        if before is None:
            self._done.append((file, stored))
        else:
            text = f"answered {file.path.name} anew: {counted(stored.offers, 'offer')}"
            push_answered_anew(self._session, stored.file_id, before, file.to_remember, text)
            self._anew += stored.offers
        self._one_less()

    def _more(self, offers: int) -> str:
        """What of these files is not stored, and what of it no list of current offers shows."""
        gone = sum(file.found.lapsed(self._session.footing.as_of) for file, _ in self._done)
        return " ".join(filter(None, (left_words(self._asked), lapsed_words(gone, offers) if gone else "")))

    def _could_not(self, error: Exception) -> None:
        self._session.tell_trouble(error)
        self._one_less()

    def _one_less(self) -> None:
        self._waiting -= 1
        if self._waiting:
            return
        offers = sum(stored.offers for _, stored in self._done)
        if self._done:
            whence = self._done[0][0].path.name if len(self._done) == 1 else counted(len(self._done), "file")
            text = f"took in {counted(offers, 'offer')} from {whence}"
            push_taken_in(self._session, [stored.file_id for _, stored in self._done], text, self._more(offers))
        self.stored.emit(offers + self._anew)
