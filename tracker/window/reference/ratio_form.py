"""A grade's ratio to the reference grade: the trade's saying, what the user set, and fields to set it from a day on."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from tracker.trade.bands import REFERENCE_GRADE
from tracker.window.look import figures
from tracker.window.pieces import column, words
from tracker.window.reference.fields import FieldLine, amount_typed
from tracker.window.samples.typed import Unclear, day_typed

if TYPE_CHECKING:
    from collections.abc import Sequence

    from tracker.desk.ratios import OwnRatio

_PER_CENT = Decimal(100)


@dataclass(frozen=True, slots=True)
class RatioTyped:
    """What was typed, understood: 0.65 to 0.80 of the reference grade's level."""

    grade: str
    low: Decimal
    high: Decimal
    on: date
    source: str


class RatioForm(QWidget):
    """`wanted` carries a RatioTyped. Hidden for the reference grade, which is its own measure."""

    wanted = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._grade = ""
        self._today = date.today()
        self._so_far = words("", wrap=True, selectable=True)
        self._line = FieldLine("Set the ratio", self.set_ratio)
        self.low = self._line.field("At least, per cent", "65", 120)
        self.high = self._line.field("At most, per cent", "80", 120)
        self.on = self._line.field("From", "today", 100)
        self.source = self._line.field("Source", "who says so")
        self._line.close_line()
        self.wrong = self._line.wrong
        self.setLayout(column(words("Your own ratio", "heading"), self._so_far, self._line, gap=8))

    def show_ratios(self, grade: str, ratios: Sequence[OwnRatio], today: date, *, set_aside: bool) -> None:
        """What was set for the grade, the latest first; `set_aside` where a level of the grade's own comes first."""
        self._grade, self._today = grade, today
        said = [
            f"{100 * ratio.low:.3g} to {100 * ratio.high:.3g} % of {REFERENCE_GRADE} from "
            f"{figures.date_text(ratio.on)}, {ratio.source}"
            for ratio in ratios
            if ratio.grade == grade
        ]
        if set_aside:
            said.append("It does not count while the grade has a market level of its own.")
        self._so_far.setText("\n".join(said) or "None set: the trade's saying above serves.")
        self.setVisible(grade != REFERENCE_GRADE)

    def set_ratio(self) -> None:
        """Hands the ratio on if every field can be understood; else says which can't."""
        self._line.begin()
        field = self.low
        try:
            low = amount_typed(field.text(), "a percentage", "65")
            field = self.high
            high = amount_typed(field.text(), "a percentage", "80")
            field = self.on
            on = day_typed(field.text(), self._today) or self._today
            field = self.source
            if not field.text().strip():
                raise Unclear("Where does the ratio come from? A figure without a source can't be defended.")
        except Unclear as unclear:
            self._line.tell(field, unclear)
            return
        self.wanted.emit(RatioTyped(self._grade, low / _PER_CENT, high / _PER_CENT, on, field.text().strip()))

    def begin_next(self) -> None:
        """Empties the fields once the ratio was set."""
        self._line.clear()
