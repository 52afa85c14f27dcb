"""A line of named fields with one button, and the words that say which field can't be understood."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from decimal import Decimal

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QLineEdit, QPushButton, QVBoxLayout, QWidget

from tracker.trade.currencies import no_currency
from tracker.window.field_steps import empty
from tracker.window.pieces import bring_in_view, button, column, restyle, row, words
from tracker.window.samples.typed import Unclear

_AMOUNT = re.compile(r"^\d{1,7}(\.\d{1,6})?$")


def amount_typed(text: str, what: str, example: str = "1450 or 1450.50") -> Decimal:
    """'1450' or '1450.50'. A comma is refused: 1,450 is read two ways."""
    if not text.strip():
        raise Unclear(f"Write {what} here, for example {example}.")
    if not _AMOUNT.match(text.strip()):
        raise Unclear(f"“{text.strip()}” is not {what}: write {example}, without a comma.")
    return Decimal(text.strip())


def currency_typed(text: str, usual: str = "") -> str:
    """Three letters, in capitals; `usual` stands where nothing was typed."""
    code = (text.strip() or usual).upper()
    wrong = no_currency(code)
    if wrong is not None:
        raise Unclear(wrong)
    return code


class FieldLine(QWidget):
    """Fields side by side, each under its name, then the button. What was typed is read through `read`."""

    def __init__(self, set_words: str, done: Callable[[], None], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._done = done
        self._fields: list[QLineEdit] = []
        self.button: QPushButton = button(set_words)
        self.button.clicked.connect(done)
        self.wrong = words("", wrap=True)
        self.wrong.hide()
        self._line = row(gap=10)
        self.setLayout(column(self._line, self.wrong, gap=8))

    def field(self, name: str, example: str, width: int = 0) -> QLineEdit:
        """Adds a field; without a width it takes what room is left."""
        made = QLineEdit()
        made.setAccessibleName(name)
        made.setPlaceholderText(example)
        made.returnPressed.connect(self._done)
        if width:
            made.setFixedWidth(width)
        self._fields.append(made)
        self._line.addLayout(_labelled(made), 0 if width else 1)
        return made

    def choice(self, name: str, titles: Sequence[str]) -> QComboBox:
        """Adds a choice between a few words."""
        made = QComboBox()
        made.setAccessibleName(name)
        made.addItems(list(titles))
        self._line.addLayout(column(words(name, "rail"), made, gap=3))
        return made

    def ask_again(self, doubt: str) -> None:
        """Says what is odd; whoever means it presses the button once more."""
        self._say(f"{doubt} Press Enter again if it is meant.")

    def close_line(self) -> None:
        """Puts the button after the last field."""
        self._line.addWidget(self.button, 0, Qt.AlignmentFlag.AlignBottom)
        if all(field.minimumWidth() == field.maximumWidth() for field in self._fields):
            self._line.addStretch(1)

    def begin(self) -> None:
        """Forgets what was wrong, before the fields are read anew."""
        self.wrong.hide()
        for each in self._fields:
            each.setProperty("wrong", "false")
            restyle(each)

    def tell(self, field: QLineEdit, unclear: Unclear) -> None:
        """Marks the field that can't be understood and says why."""
        field.setProperty("wrong", "true")
        restyle(field)
        field.setFocus()
        self._say(str(unclear))

    def _say(self, wrong: str) -> None:
        self.wrong.setText(wrong)
        self.wrong.show()
        bring_in_view(self.wrong)

    def clear(self, *kept: QLineEdit) -> None:
        """Empties the fields, save those to keep."""
        empty(*(each for each in self._fields if each not in kept))


def _labelled(field: QLineEdit) -> QVBoxLayout:
    return column(words(field.accessibleName(), "rail"), field, gap=3)
