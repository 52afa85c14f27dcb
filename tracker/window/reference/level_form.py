"""The market level of a grade: what was set so far, and a line of fields to set it from a day on."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from tracker.market.bands import USUAL_SPREAD
from tracker.trade.bands import REFERENCE_GRADE
from tracker.trade.basis import Basis
from tracker.trade.level import LevelFigure
from tracker.window.look import figures
from tracker.window.pieces import button, column, row, words
from tracker.window.reference.fields import FieldLine, amount_typed, currency_typed
from tracker.window.samples.typed import Unclear, day_typed

if TYPE_CHECKING:
    from collections.abc import Sequence

    from tracker.desk.levels import Level


_WEIGHTS = {"short ton": Basis.SHORT_TON, "cwt": Basis.CWT, "tonne": Basis.TONNE}


@dataclass(frozen=True, slots=True)
class LevelTyped:
    """What was typed, understood. `spread` is in per cent up and down."""

    grade: str
    figure: LevelFigure
    on: date
    source: str
    spread: Decimal | None


class LevelForm(QWidget):
    """`wanted` carries a LevelTyped, `index_wanted` the grade whose level an index shall carry, `removal_wanted` a
    level's id."""

    wanted = Signal(object)
    index_wanted = Signal(str)
    removal_wanted = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._grade = REFERENCE_GRADE
        self._today = date.today()
        self._levels: tuple[Level, ...] = ()
        self._so_far = words("", wrap=True, selectable=True)
        self._line = FieldLine("Set the level", self.set_level)
        self.amount = self._line.field("Price", "", 90)
        self.currency = self._line.field("Currency", "", 70)
        self.currency.setText("USD")
        self.per = self._line.choice("Per", tuple(_WEIGHTS))
        self.on = self._line.field("From", "today", 100)
        self.spread = self._line.field("± per cent", f"{100 * USUAL_SPREAD:.3g} if blank", 96)
        self.source = self._line.field("Source", "who says so")
        self._wrong = self._line.wrong
        self.index = button("Carry it forward by a price index…", "word")
        self.index.setToolTip("A published index as a CSV of date and value: 2026-10, 147.8")
        self.index.clicked.connect(lambda: self.index_wanted.emit(self._grade))
        self.remove = button("Take the latest back", "word")
        self.remove.clicked.connect(self._remove_latest)
        self.setLayout(
            column(self._so_far, self._line, row(self._line.button, self.index, self.remove, None, gap=12), gap=8)
        )

    def show_levels(self, grade: str, levels: Sequence[Level], today: date) -> None:
        """What was set for the grade, the latest first."""
        self._grade, self._today = grade, today
        self._levels = tuple(level for level in levels if level.grade == grade)
        none_yet = (
            "Not set: the median of current offers serves while there are at least three."
            if grade == REFERENCE_GRADE
            else f"Not set: the level of {REFERENCE_GRADE} and the ratio serve."
        )
        self._so_far.setText("\n".join(_said(level) for level in self._levels) or none_yet)
        for part in (self.index, self.remove):
            part.setVisible(bool(self._levels))

    def stands_on(self, day: date) -> bool:
        """Whether the grade shown has a level of its own on a day."""
        return any(level.on <= day for level in self._levels)

    def set_level(self) -> None:
        """Hands the level on if every field can be understood; else says which can't."""
        self._line.begin()
        field = self.amount
        try:
            amount = amount_typed(field.text(), "a price")
            field = self.currency
            code = currency_typed(field.text(), "USD")
            field = self.on
            on = day_typed(field.text(), self._today) or self._today
            field = self.spread
            spread = amount_typed(field.text(), "a percentage", "15") if field.text().strip() else None
            field = self.source
            if not field.text().strip():
                raise Unclear("Where does the level come from? A figure without a source can't be defended.")
        except Unclear as unclear:
            self._line.tell(field, unclear)
            return
        figure = LevelFigure(amount, code, _WEIGHTS[self.per.currentText()])
        self.wanted.emit(LevelTyped(self._grade, figure, on, field.text().strip(), spread))

    def show_units(self, units: figures.Units) -> None:
        """Levels are published per short ton where board is measured in points."""
        usual = Basis.SHORT_TON if units is figures.Units.US else Basis.TONNE
        self.per.setCurrentIndex(list(_WEIGHTS.values()).index(usual))

    def ask_again(self, doubt: str) -> None:
        """Says what is odd about the level; typed as it is once more, it is meant."""
        self._line.ask_again(doubt)

    def _remove_latest(self) -> None:
        for latest in self._levels[:1]:
            self.removal_wanted.emit(latest.id)

    def begin_next(self) -> None:
        """Empties the fields once the level was set."""
        self._line.clear(self.currency)


def _said(level: Level) -> str:
    spread = "" if level.spread is None else f" ± {level.spread.normalize():f} %"
    carried = f"; carried forward by {level.index_name}" if level.index_name else ""
    return f"{level.said}{spread} from {figures.date_text(level.on)}, {level.source}{carried}"
