"""A grade's prices over time, each board's joined, with the band as it stood on every day."""

from datetime import date

import numpy as np
from numpy.typing import NDArray

from tracker.desk.band_history import band_history
from tracker.window.look import figures
from tracker.window.quotes.drawing import Drawing
from tracker.window.quotes.frame import far_off_words
from tracker.window.quotes.geometry import Ribbon, spread
from tracker.window.quotes.joins import joined
from tracker.window.quotes.offer_columns import Offers, per_words
from tracker.window.quotes.spread_picture import (
    PER_TONNE_HERE,
    Picture,
    also_per_short_ton,
    drawable,
    known_rows,
    labels_of,
    like_with_like,
    prices_held_in,
    thin_words,
)

_DAY_SPREAD = 0.8
_MOST_TICKS = 7
_MONTH_STEPS = (1, 2, 3, 6, 12, 24, 60)
_LEAST_DAYS = 75.0


def over_time(offers: Offers, rows: NDArray[np.intp], grade: str) -> Picture:
    """x: the day an offer came; those that no longer count are faint. The band steps where something was set."""
    comparison = like_with_like(offers.comparison)
    snapshot = comparison.snapshot
    received = np.where(snapshot.received > 0, snapshot.received.astype(np.float64), np.nan)
    chosen = drawable(offers, rows, received)
    band = band_history(comparison, grade)
    ribbon = _steps(band.days, band.low, band.high)
    x = received[chosen] + spread(snapshot.id[chosen], _DAY_SPREAD)
    boards = snapshot.board[chosen].astype(np.intp) if len(snapshot.board) else np.zeros(0, np.intp)
    drawing = Drawing(
        rows=chosen,
        x=x,
        y=comparison.price[chosen],
        marks=offers.marks[chosen],
        labels=labels_of(offers, chosen),
        faint=~comparison.current[chosen],
        ribbons=[] if ribbon is None else [ribbon],
        joins=joined(boards, received[chosen]) if len(boards) else np.empty(0, np.intp),
        x_ticks=month_ticks(*_ends(x, ribbon)),
        least_width=_LEAST_DAYS,
        y_also=also_per_short_ton(comparison, offers.units),
    )
    drawing = prices_held_in(drawing, offers, comparison)
    caption = _caption(grade, ribbon, band.set_on, len(drawing.joins) > 0)
    if comparison is not offers.comparison:
        caption = f"{PER_TONNE_HERE} {caption}"
    caption += far_off_words(drawing) + thin_words(known_rows(offers, rows, received), chosen)
    return Picture(drawing, f"{grade or 'All grades'}: prices over time", caption, per_words(comparison))


def month_ticks(first: float, last: float) -> list[tuple[float, str]]:
    """First days of months between two ordinals, so many that they can be read: (ordinal, 'Oct 2026')."""
    if not np.isfinite(first) or not np.isfinite(last):
        return []
    begin, end = date.fromordinal(int(first)), date.fromordinal(int(last))
    months = range(begin.year * 12 + begin.month - 1, end.year * 12 + end.month + 1)
    step = next((each for each in _MONTH_STEPS if len(months) / each <= _MOST_TICKS), _MONTH_STEPS[-1])
    days = [date(month // 12, month % 12 + 1, 1) for month in months if month % step == 0]
    return [(float(day.toordinal()), figures.date_text(day).split(" ", 1)[1]) for day in days]


def _steps(days: NDArray[np.float64], low: NDArray[np.float64], high: NDArray[np.float64]) -> Ribbon | None:
    """Level from each day to the next, then a step; only where a band is known."""
    known = np.isfinite(low) & np.isfinite(high)
    if not known.any():
        return None
    days, low, high = days[known], low[known], high[known]
    if len(days) == 1:
        days, low, high = np.array([days[0] - 7, days[0]]), np.repeat(low, 2), np.repeat(high, 2)
    return Ribbon(np.repeat(days, 2)[1:], np.repeat(low, 2)[:-1], np.repeat(high, 2)[:-1])


def _ends(x: NDArray[np.float64], ribbon: Ribbon | None) -> tuple[float, float]:
    both = x if ribbon is None else np.concatenate([x, ribbon.x])
    return (float(both.min()), float(both.max())) if len(both) else (float("nan"), float("nan"))


def _caption(grade: str, ribbon: Ribbon | None, set_on: tuple[int, ...], has_joins: bool) -> str:
    if not grade:
        words = "Choose a grade to see its band over time."
    elif ribbon is None:
        words = "No band: no market level was set for these days (Reference, Market level)."
    else:
        days = ", ".join(figures.day(day) for day in set_on[-4:])
        words = f"The ribbon is the band as it stood; levels were set on {days}."
    return f"{words} A line joins one board's prices; those that no longer count are faint." if has_joins else words
