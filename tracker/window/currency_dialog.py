"""A currency that no list of usual ones has: its three letters, asked for in a dialog."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDialog, QWidget

from tracker.trade.currencies import no_currency
from tracker.window.pieces import button, column, row, words
from tracker.window.samples.fields import Wrong, field


class CurrencyDialog(QDialog):
    """`chosen` carries the code; Escape leaves it as it was."""

    chosen = Signal(str)

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setObjectName("window")
        self.setWindowTitle("Another currency")
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.field = field("Currency", "three letters, such as JPY", self._take)
        self.wrong = Wrong()
        leave = button("Cancel")
        leave.clicked.connect(self.reject)
        take = button("Answer", "main")
        take.clicked.connect(self._take)
        asked = words("In which currency are the prices?", "heading", wrap=True)
        foot = row(None, leave, take, gap=10)
        self.setLayout(column(asked, self.field, self.wrong.label, foot, margins=18, gap=10))
        self.resize(420, self.sizeHint().height())
        self.field.setFocus()

    def _take(self) -> None:
        typed = self.field.text().strip()
        code = typed.upper()
        wrong = no_currency(code) if typed else None
        if wrong:
            self.wrong.say(wrong.replace(f"“{code}”", f"“{typed}”"), self.field)
        elif typed:
            self.chosen.emit(code)
            self.accept()
