"""Completing names of which several stand in one field, apart by semicolons."""

from PySide6.QtCore import QAbstractItemModel, QModelIndex, QPersistentModelIndex, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QCompleter, QLineEdit


class NamesField(QLineEdit):
    """A line of names: a semicolon takes what was completed and goes on to the next name."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        completed = self.selectionStart() >= 0 and self.selectionEnd() == len(self.text())
        if event.text() == ";" and completed and self.selectionStart() > 0:
            self.setCursorPosition(len(self.text()))
        super().keyPressEvent(event)


class SeveralNames(QCompleter):
    """Completes the name that the cursor is in; those before it stay."""

    def __init__(self, names: QAbstractItemModel, field: QLineEdit) -> None:
        super().__init__(names, field)
        self._field = field
        self.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self.setCompletionMode(QCompleter.CompletionMode.InlineCompletion)

    # Qt's own names from here on

    def splitPath(self, path: str) -> list[str]:
        return [path.rpartition(";")[2].lstrip()]

    def pathFromIndex(self, index: QModelIndex | QPersistentModelIndex) -> str:
        name = str(index.data(Qt.ItemDataRole.DisplayRole))
        typed = self._field.text()[: self._field.cursorPosition()]
        before, semicolon, last = typed.rpartition(";")
        gap = last[: len(last) - len(last.lstrip())]
        return f"{before}{semicolon}{gap}{name}"
