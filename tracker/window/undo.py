"""Every edit can be taken back: one command on the stack for each edit of the desk."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from typing import TYPE_CHECKING

from PySide6.QtGui import QUndoCommand
from shiboken6 import isValid

from tracker.window.look.figures import counted
from tracker.window.session import Session

if TYPE_CHECKING:
    from tracker.desk.changed_answers import ChangedAnswer
    from tracker.desk.edits import Edit
    from tracker.desk.take_in import Answered, Stored
    from tracker.trade.offer import Answers


class DeskEdit(QUndoCommand):
    """An edit the desk has already carried out; undo and redo ask the desk for its reverse.

    The desk's jobs run one after another on one thread, so the edit at hand is always the latest reverse.
    """

    def __init__(self, session: Session, edit: Edit, refresh: Callable[[], None]) -> None:
        super().__init__(edit.text)
        self._session = session
        self._edit = edit
        self._refresh = refresh
        self._carried_out = True

    def redo(self) -> None:
        if self._carried_out:
            self._carried_out = False
            return
        self._turn_round()

    def undo(self) -> None:
        self._turn_round()

    def _turn_round(self) -> None:
        self._session.work.ask(self._reverse, lambda _: self._refresh(), self._could_not)

    def _reverse(self) -> None:
        self._edit = self._session.door.undo(self._edit)

    def _could_not(self, error: Exception) -> None:
        if isValid(self):
            # A newer edit may have taken its place on the stack, which deletes it, while the desk was at work.
            self.setObsolete(True)
        self._session.tell_trouble(error)
        self._refresh()


class TakenIn(DeskEdit):
    """Files that were stored: undoing withdraws them all or none (kept, but their offers no longer count), redoing
    brings them back."""

    def __init__(self, session: Session, file_ids: Sequence[int], text: str) -> None:
        QUndoCommand.__init__(self, text)
        self._session = session
        self._file_ids = tuple(file_ids)
        self._withdrawn: Edit | None = None
        self._refresh = session.reload
        self._carried_out = True

    def _reverse(self) -> None:
        door = self._session.door
        if self._withdrawn is None:
            self._withdrawn = door.withdraw_files(*self._file_ids)
        else:
            self._withdrawn = door.undo(self._withdrawn)


class AnsweredAnew(DeskEdit):
    """A kept file that was stored once more with other answers: undoing stores it with the earlier ones."""

    def __init__(self, session: Session, file_id: int, before: Answers, changed: Iterable[str], text: str) -> None:
        QUndoCommand.__init__(self, text)
        self._session = session
        self._file_id = file_id
        self._answers = before
        self._changed = tuple(changed)
        self._refresh = session.reload
        self._carried_out = True

    def _reverse(self) -> None:
        settled = self._answers.settled
        remembered = {key: settled[key] for key in self._changed if key in settled}
        self._answers = self._session.door.read_kept_anew(self._file_id, self._answers, remembered)


class AnsweredLater(DeskEdit):
    """An answer to a kept file's question: undoing takes its offers out again and leaves the question open."""

    def __init__(self, session: Session, answered: Answered, text: str) -> None:
        QUndoCommand.__init__(self, text)
        self._session = session
        self._answered = answered
        self._holds = True
        self._refresh = session.reload
        self._carried_out = True

    def _reverse(self) -> None:
        door = self._session.door
        if self._holds:
            door.take_back(self._answered)
        else:
            self._answered = door.answer_again(self._answered).answered or self._answered
        self._holds = not self._holds


class AnswerChanged(DeskEdit):
    """A remembered answer said anew: undoing says the old one again, and the stored offers follow that."""

    def __init__(self, session: Session, changed: ChangedAnswer) -> None:
        QUndoCommand.__init__(self, changed.text)
        self._session = session
        self._changed = changed
        self._refresh = session.reload
        self._carried_out = True

    def _reverse(self) -> None:
        self._changed = self._session.door.change_answer(self._changed.answer_id, self._changed.was)


def push_changed(session: Session, changed: ChangedAnswer) -> None:
    """Puts a remembered answer that was said anew on the stack, says what followed, and reads everything anew."""
    session.undo_stack.push(AnswerChanged(session, changed))
    session.said.emit(changed.text)
    session.reload()


def push_answered(session: Session, stored: Stored) -> None:
    """Puts an answer given to a kept file on the stack, says what it let through, and reads everything anew."""
    text = f"answered; {counted(stored.offers, 'offer')} taken in"
    if stored.answered is not None:
        session.undo_stack.push(AnsweredLater(session, stored.answered, text))
    session.said.emit(text)
    session.reload()


def push_answered_anew(session: Session, file_id: int, before: Answers, changed: Iterable[str], text: str) -> None:
    """Puts a kept file that was stored with other answers on the stack and says so."""
    session.undo_stack.push(AnsweredAnew(session, file_id, before, changed, text))
    session.said.emit(text)


def push_taken_in(session: Session, file_ids: Sequence[int], text: str, more: str = "") -> None:
    """Puts files that were stored together on the stack and says so; `more`: what else there is to know about them."""
    session.undo_stack.push(TakenIn(session, file_ids, text))
    session.said.emit(f"{text}. {more}" if more else text)


def push(session: Session, edit: Edit, refresh: Callable[[], None]) -> None:
    """Puts a carried-out edit on the stack and says what was done."""
    session.undo_stack.push(DeskEdit(session, edit, refresh))
    session.said.emit(edit.text)
    refresh()
