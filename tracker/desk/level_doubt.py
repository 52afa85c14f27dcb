"""What is odd about a market level that a person typed: most often a decimal point, or another ton or currency."""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING

from tracker.desk.levels import levels
from tracker.desk.rates import EURO, rate
from tracker.trade.days import day_text
from tracker.trade.level import LevelFigure

if TYPE_CHECKING:
    from tracker.desk.opening import Desk

_LEAST_EUROS, _MOST_EUROS = 250, 4000
"""Per tonne; no carton board sold in bulk was ever near either end (assumed)."""
_TIMES_ODD = 2
"""No grade's level doubled or halved from one setting to the next (assumed)."""
_FURTHEST_AHEAD = timedelta(366)
"""Announced prices hold from some months ahead at most (assumed); further off is a slip of the year."""


def doubt_level(desk: Desk, grade: str, figure: LevelFigure, on: date) -> str | None:
    """A sentence on a level that is far from the grade's last one or from what board costs; None for a plausible one,
    and where no rate tells what it is in euro."""
    if on > desk.today + _FURTHEST_AHEAD:
        return f"{day_text(on)} is more than a year ahead, and nobody knows a price for then."
    known = rate(desk, figure.currency, EURO, on)
    if known is None:
        return None
    euros, said = figure.per_tonne * known.factor, f"{grade} at {figure}"
    if not _LEAST_EUROS <= euros <= _MOST_EUROS:
        return f"{said} is EUR {euros:,.0f} per tonne, which no carton board costs."
    last = next((each for each in levels(desk) if each.grade == grade and each.on <= on), None)
    before = None if last is None else rate(desk, last.currency, EURO, on)
    if last is None or before is None:
        return None
    earlier = last.per_tonne * before.factor
    if earlier / _TIMES_ODD <= euros <= earlier * _TIMES_ODD:
        return None
    return f"{said} is far from its level of {day_text(last.on)}, {last.said}."
