"""What prices are held against, on one page: every grade's band, how much must stand out, and the exchange rates."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from math import isnan
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QButtonGroup, QGridLayout, QRadioButton, QWidget

from tracker.desk.grade_bands import grade_bands
from tracker.desk.sensitivity import Sensitivity
from tracker.trade.grades import grades
from tracker.window.look import figures
from tracker.window.pieces import clear, column, hairline, words
from tracker.window.reference.fields import FieldLine, amount_typed, currency_typed
from tracker.window.samples.typed import Unclear, day_typed

if TYPE_CHECKING:
    from tracker.desk.comparison import Comparison

_LABEL_WIDTH, _FIGURE_WIDTH = 90, 190
_DIGITS = 10
"""Of a rate that was worked out from its inverse: more than anybody quotes."""


@dataclass(frozen=True, slots=True)
class RateTyped:
    """One unit of `code` is `euros` euro on a day."""

    code: str
    euros: Decimal
    on: date


class YardsticksPage(QWidget):
    """`sensitivity_wanted` carries its word, `rate_wanted` a RateTyped."""

    sensitivity_wanted = Signal(str)
    rate_wanted = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._today = date.today()
        self._bands = _grid()
        self._rates = _grid()
        self._group = QButtonGroup(self)
        self.choices = {each: QRadioButton(each.words) for each in Sensitivity}
        for each, choice in self.choices.items():
            self._group.addButton(choice)
            choice.clicked.connect(lambda _checked=False, word=each.value: self.sensitivity_wanted.emit(word))
        self._line = FieldLine("Set your own rate", self.set_rate)
        self.code = self._line.field("Currency", "SEK", 90)
        self.euros = self._line.field("Rate", "0.0921", 110)
        self.way = self._line.choice("Which is", ("euro for one unit", "units for one euro"))
        self.on = self._line.field("On", "today", 100)
        self._line.close_line()
        self.wrong = self._line.wrong
        self.setLayout(
            column(
                words("What prices are held against", "title"), 6,
                words("Expected bands", "heading"), self._bands, 8, hairline(), 4,
                words("Prices are called out of line", "heading"), *self.choices.values(), 8, hairline(), 4,
                words("Exchange rates", "heading"), self._rates, self._line, None,
                margins=(24, 18, 24, 24), gap=8,
            )
        )  # fmt: skip

    def show_sensitivity(self, chosen: Sensitivity) -> None:
        self.choices[chosen].setChecked(True)

    def show_comparison(self, comparison: Comparison) -> None:
        """The bands and rates that the comparison rests on."""
        self._today = comparison.footing.as_of
        clear(self._bands)
        _fill(self._bands, _band_rows(comparison))
        clear(self._rates)
        _fill(self._rates, _rate_rows(comparison))

    def set_rate(self) -> None:
        """Hands the rate on if every field can be understood; else says which can't."""
        self._line.begin()
        field = self.code
        try:
            code = currency_typed(field.text())
            field = self.euros
            euros = _euros_for_one(amount_typed(field.text(), "a rate", "0.0921"), turned=self.way.currentIndex() == 1)
            field = self.on
            on = day_typed(field.text(), self._today) or self._today
        except Unclear as unclear:
            self._line.tell(field, unclear)
            return
        self.rate_wanted.emit(RateTyped(code, euros, on))

    def ask_again(self, doubt: str) -> None:
        """Says what is odd about the rate; typed as it is once more, it is meant."""
        self._line.ask_again(doubt)

    def begin_next(self) -> None:
        """Empties the fields once the rate was set."""
        self._line.clear()


def _euros_for_one(rate: Decimal, *, turned: bool) -> Decimal:
    """The euro that one unit is worth; `turned`: the rate says how many units one euro is."""
    if not turned:
        return rate
    if not rate:
        raise Unclear("“0” is not a rate: write 10.86, or what one euro is worth.")
    return (1 / rate).quantize(Decimal(1).scaleb((1 / rate).adjusted() - _DIGITS + 1))


def _grid() -> QGridLayout:
    grid = QGridLayout()
    grid.setHorizontalSpacing(20)
    grid.setVerticalSpacing(7)
    grid.setColumnStretch(2, 1)
    return grid


def _fill(grid: QGridLayout, rows: Iterable[tuple[str, str, str]]) -> None:
    for place, (name, figure, source) in enumerate(rows):
        label = words(name, "quiet")
        label.setFixedWidth(_LABEL_WIDTH)
        shown = words(figure, selectable=True)
        shown.setMinimumWidth(_FIGURE_WIDTH)
        for at, widget in enumerate((label, shown, words(source, "small", wrap=True, selectable=True))):
            grid.addWidget(widget, place, at, Qt.AlignmentFlag.AlignTop)


def _band_rows(comparison: Comparison) -> list[tuple[str, str, str]]:
    bands = grade_bands(comparison)
    rows = []
    for code in grades():
        band = bands.get(code)
        if band is None:
            rows.append((code, figures.NONE, "no offers"))
        elif isnan(band.low):
            rows.append((code, figures.NONE, "no level is set: choose the grade at the left and set one"))
        else:
            low, high = (figures.figure(end, 0) for end in (band.low, band.high))
            unoffered = "" if band.offered else "; nobody offers it yet"
            money = f"{comparison.footing.currency} per tonne"
            rows.append((code, f"{low} to {high} {money}", f"{band.source}{unoffered}"))
    return rows


def _rate_rows(comparison: Comparison) -> list[tuple[str, str, str]]:
    """Every currency of the offers; those without a rate first, because their prices can't be compared."""
    judged, into = comparison.judged, comparison.footing.currency
    known = {} if judged is None else judged.rates
    rows = []
    for code in sorted(comparison.snapshot.currencies, key=lambda code: (code in known, code)):
        rate = known.get(code)
        if code == into:
            continue
        if rate is None:
            rows.append((code, figures.NONE, "no rate is known: its offers can't be compared until you set one"))
        else:
            rows.append((code, f"{float(rate.factor):.5g} {into}", rate.said(comparison.footing.as_of)))
    return rows or [(into, figures.NONE, "every offer is in this currency")]
