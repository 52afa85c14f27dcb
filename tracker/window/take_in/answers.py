"""Answers to a sheet's questions and marks made in it by hand, each of which can be taken back."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtGui import QUndoCommand

from tracker.window.take_in.file_at_hand import FileAtHand
from tracker.window.take_in.marking import Marking


class SaidOfFile(QUndoCommand):
    """Something said about a file while it is being taken in. `spent`: the file is stored or left, so that undoing it
    would be seen nowhere."""

    def __init__(self, file: FileAtHand, text: str) -> None:
        super().__init__(text)
        self._file = file

    @property
    def spent(self) -> bool:
        return self._file.stored or self._file.let_go


class AnswerGiven(SaidOfFile):
    """Sets one answer of a file that is being taken in, or (None) has it asked whatever is remembered, and has the file
    read again."""

    def __init__(
        self, file: FileAtHand, key: str, value: str | None, read_again: Callable[[], None], text: str
    ) -> None:
        super().__init__(file, text)
        self._key = key
        self._new = value
        self._old = file.given.get(key)
        self._was_anew = key in file.anew
        self._read_again = read_again

    def redo(self) -> None:
        self._put(self._new, anew=self._new is None)

    def undo(self) -> None:
        self._put(self._old, anew=self._was_anew)

    def _put(self, value: str | None, *, anew: bool) -> None:
        if value is None:
            self._file.given.pop(self._key, None)
        else:
            self._file.given[self._key] = value
        (self._file.anew.add if anew else self._file.anew.discard)(self._key)
        self._read_again()


class StartedOver(SaidOfFile):
    """Drops all that was said about a file: its answers, its marks, and that it has no vendor's name."""

    def __init__(self, file: FileAtHand, read_again: Callable[[], None]) -> None:
        super().__init__(file, f"forgot your answers about {file.path.name}")
        self._given, self._anew = dict(file.given), set(file.anew)
        self._marking, self._nameless = file.marking, file.nameless
        self._read_again = read_again

    def redo(self) -> None:
        self._put({}, set(), None, nameless=False)

    def undo(self) -> None:
        self._put(self._given, self._anew, self._marking, nameless=self._nameless)

    def _put(self, given: dict[str, str], anew: set[str], marking: Marking | None, *, nameless: bool) -> None:
        file = self._file
        file.given, file.anew = dict(given), set(anew)
        file.marking, file.nameless = marking, nameless
        self._read_again()


class NamelessChosen(SaidOfFile):
    """Lets a file be taken in without a vendor's name, or asks for it again."""

    def __init__(self, file: FileAtHand, nameless: bool, show: Callable[[], None]) -> None:
        super().__init__(file, "without a vendor's name" if nameless else "asked for the vendor's name again")
        self._nameless = nameless
        self._show = show

    def redo(self) -> None:
        self._put(self._nameless)

    def undo(self) -> None:
        self._put(not self._nameless)

    def _put(self, nameless: bool) -> None:
        self._file.nameless = nameless
        self._show()


class MarksChanged(SaidOfFile):
    """Sets the marks made by hand in a file that is being taken in, and has it read again."""

    def __init__(self, file: FileAtHand, marking: Marking | None, read_again: Callable[[], None], text: str) -> None:
        super().__init__(file, text)
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
