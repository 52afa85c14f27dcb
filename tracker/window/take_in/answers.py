"""Answers to a sheet's questions and marks made in it by hand, each of which can be taken back."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtGui import QUndoCommand

from tracker.window.take_in.file_at_hand import FileAtHand
from tracker.window.take_in.marking import Marking


class AnswerGiven(QUndoCommand):
    """Sets or drops one answer of a file that is being taken in, and has it read again."""

    def __init__(
        self, answers: dict[str, str], key: str, value: str | None, read_again: Callable[[], None], text: str
    ) -> None:
        super().__init__(text)
        self._answers = answers
        self._key = key
        self._new = value
        self._old = answers.get(key)
        self._read_again = read_again

    def redo(self) -> None:
        self._put(self._new)

    def undo(self) -> None:
        self._put(self._old)

    def _put(self, value: str | None) -> None:
        if value is None:
            self._answers.pop(self._key, None)
        else:
            self._answers[self._key] = value
        self._read_again()


class NamelessChosen(QUndoCommand):
    """Lets a file be taken in without a vendor's name, or asks for it again."""

    def __init__(self, file: FileAtHand, nameless: bool, show: Callable[[], None]) -> None:
        super().__init__("without a vendor's name" if nameless else "asked again: the vendor's name")
        self._file = file
        self._nameless = nameless
        self._show = show

    def redo(self) -> None:
        self._put(self._nameless)

    def undo(self) -> None:
        self._put(not self._nameless)

    def _put(self, nameless: bool) -> None:
        self._file.nameless = nameless
        self._show()


class MarksChanged(QUndoCommand):
    """Sets the marks made by hand in a file that is being taken in, and has it read again."""

    def __init__(self, file: FileAtHand, marking: Marking | None, read_again: Callable[[], None], text: str) -> None:
        super().__init__(text)
        self._file = file
        self._new = marking
        self._old = file.marking
        self._read_again = read_again

    def redo(self) -> None:
        self._put(self._new)

    def undo(self) -> None:
        self._put(self._old)

    def _put(self, marking: Marking | None) -> None:
        self._file.marking = marking
        self._read_again()
