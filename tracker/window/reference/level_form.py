"""The market level of a grade: what was set so far, and a line of fields to set it from a day on."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget

from tracker.trade.bands import REFERENCE_GRADE
from tracker.window.look import figures
from tracker.window.pieces import button, column, restyle, row, words
from tracker.window.samples.typed import Unclear, day_typed

if TYPE_CHECKING:
    from collections.abc import Sequence

    from tracker.desk.levels import Level

_AMOUNT = re.compile(r"^\d{1,7}(\.\d{1,4})?$")
_CODE = re.compile(r"^[A-Za-z]{3}$")


@dataclass(frozen=True, slots=True)
class LevelTyped:
    """What was typed, understood. `spread` is in per cent up and down."""

    grade: str
    per_tonne: Decimal
    currency: str
    on: date
    source: str
    spread: Decimal | None


def amount_typed(text: str, what: str) -> Decimal:
    """'1450' or '1450.50'. A comma is refused: 1,450 is read two ways."""
    if not _AMOUNT.match(text.strip()):
        raise Unclear(f"“{text.strip()}” is not {what}: write 1450 or 1450.50, without a comma.")
    return Decimal(text.strip())


class LevelForm(QWidget):
    """`wanted` carries a LevelTyped."""

    wanted = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._grade = REFERENCE_GRADE
        self._today = date.today()
        self._so_far = words("", wrap=True, selectable=True)
        self.per_tonne = self._field("Per tonne", "1450", 90)
        self.currency = self._field("Currency", "USD", 70)
        self.on = self._field("From", "today", 100)
        self.spread = self._field("± per cent", "", 80)
        self.source = self._field("Source", "who says so", 0)
        self._set = button("Set the level")
        self._set.clicked.connect(self.set_level)
        self._wrong = words("", wrap=True)
        self._wrong.hide()
        fields = row(gap=10)
        for field in (self.per_tonne, self.currency, self.on, self.spread):
            fields.addLayout(self._labelled(field))
        fields.addLayout(self._labelled(self.source), 1)
        fields.addWidget(self._set, 0, Qt.AlignmentFlag.AlignBottom)
        self.setLayout(column(self._so_far, fields, self._wrong, gap=8))

    def show_levels(self, grade: str, levels: Sequence[Level], today: date) -> None:
        """What was set for the grade, the latest first."""
        self._grade, self._today = grade, today
        said = [
            f"{figures.figure(float(level.per_tonne), 0)} {level.currency} per tonne "
            f"from {figures.date_text(level.on)}, {level.source}"
            for level in levels
            if level.grade == grade
        ]
        none_yet = (
            "Not set: the median of current offers serves while there are at least three."
            if grade == REFERENCE_GRADE
            else f"Not set: the level of {REFERENCE_GRADE} and the ratio above serve."
        )
        self._so_far.setText("\n".join(said) or none_yet)

    def set_level(self) -> None:
        """Hands the level on if every field can be understood; else says which can't."""
        self._wrong.hide()
        for each in (self.per_tonne, self.currency, self.on, self.spread, self.source):
            each.setProperty("wrong", "false")
            restyle(each)
        field = self.per_tonne
        try:
            per_tonne = amount_typed(field.text(), "a price per tonne")
            field = self.currency
            code = (field.text().strip() or "USD").upper()
            if not _CODE.match(code):
                raise Unclear(f"“{field.text()}” is not a currency: write its three letters, such as USD.")
            field = self.on
            on = day_typed(field.text(), self._today) or self._today
            field = self.spread
            spread = amount_typed(field.text(), "a percentage") if field.text().strip() else None
            field = self.source
            if not field.text().strip():
                raise Unclear("Where does the level come from? A figure without a source can't be defended.")
        except Unclear as unclear:
            field.setProperty("wrong", "true")
            restyle(field)
            field.setFocus()
            self._wrong.setText(str(unclear))
            self._wrong.show()
            return
        self.wanted.emit(LevelTyped(self._grade, per_tonne, code, on, field.text().strip(), spread))

    def begin_next(self) -> None:
        """Empties the fields once the level was set."""
        for field in (self.per_tonne, self.on, self.spread, self.source):
            field.clear()

    def _field(self, name: str, example: str, width: int) -> QLineEdit:
        field = QLineEdit()
        field.setAccessibleName(name)
        field.setPlaceholderText(example)
        field.returnPressed.connect(self.set_level)
        if width:
            field.setFixedWidth(width)
        return field

    def _labelled(self, field: QLineEdit) -> QVBoxLayout:
        return column(words(field.accessibleName(), "rail"), field, gap=3)
