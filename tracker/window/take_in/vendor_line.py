"""Whose sheet it is: said by the sheet, or named by the user where it says nothing."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QCompleter, QLineEdit, QWidget

from tracker.window.pieces import button, row, words


class VendorLine(QWidget):
    """Says the vendor. `named` carries the name that the user gives to a sheet without one."""

    named = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.label = words("", "quiet")
        self.ask = button("", "word")
        self.ask.setAccessibleName("Name the vendor")
        self.field = QLineEdit()
        self.field.setAccessibleName("The vendor's name")
        self.field.setPlaceholderText("the vendor's name, then Enter")
        self.field.setMinimumWidth(240)
        self.ask.clicked.connect(self._begin)
        self.field.returnPressed.connect(self._take)
        self.setLayout(row(self.label, self.ask, self.field, None, gap=8))
        self.show_vendor("")

    def show_vendor(self, text: str, *, may_name: str = "", known: Sequence[str] = ()) -> None:
        """Shows whose it is; `may_name` are the words that offer to say it; `known` vendors are proposed."""
        self.label.setText(text)
        self.ask.setText(may_name)
        self.ask.setVisible(bool(may_name))
        self.field.hide()
        if may_name:
            completer = QCompleter(list(known), self.field)
            completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
            completer.setFilterMode(Qt.MatchFlag.MatchContains)
            self.field.setCompleter(completer)

    def _begin(self) -> None:
        self.ask.hide()
        self.field.clear()
        self.field.show()
        self.field.setFocus()

    def _take(self) -> None:
        name = " ".join(self.field.text().split())
        if name:
            self.named.emit(name)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and self.field.isVisible():
            self.field.hide()
            self.ask.show()
        else:
            super().keyPressEvent(event)
