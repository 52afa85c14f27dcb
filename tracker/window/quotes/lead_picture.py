"""Lead time against price as per cent off the going price, with the choices that nothing beats on both."""

import numpy as np
from numpy.typing import NDArray

from tracker.desk.choices import best_choices
from tracker.window.look.figures import signed_percent
from tracker.window.quotes.drawing import Drawing
from tracker.window.quotes.frame import far_off_words, held_in
from tracker.window.quotes.geometry import spread
from tracker.window.quotes.offer_columns import Offers
from tracker.window.quotes.spread_picture import (
    Picture,
    drawable,
    known_rows,
    label_of,
    labels_of,
    thin_words,
    without_words,
)

OF_GOING = "vs going price"
"""What is told of a price here, in place of its unit."""
_DAYS_A_WEEK = 7.0
_MOST_SPANS = 1_500
_MOST_RINGED_TOLD = 12
_MOST_WEEKS = 12


def lead_against_price(offers: Offers, rows: NDArray[np.intp], grade: str) -> Picture:
    """x: weeks until delivery (the longer end of a range, the range as a bar); y: per cent off the going price."""
    snapshot = offers.comparison.snapshot
    ratio = 100 * (offers.of_expected - 1)
    longest = np.where(np.isfinite(ratio), np.fmax(snapshot.lead_low, snapshot.lead_high), np.nan)
    known, chosen = known_rows(offers, rows, longest), drawable(offers, rows, longest)
    weeks = longest[chosen] / _DAYS_A_WEEK
    shortest = np.fmin(snapshot.lead_low, snapshot.lead_high)[chosen] / _DAYS_A_WEEK
    y = ratio[chosen]
    front = np.flatnonzero(best_choices(offers.comparison, chosen.astype(np.int32)))
    ranged = np.flatnonzero(weeks > shortest)[:_MOST_SPANS]
    drawing = Drawing(
        rows=chosen,
        x=weeks + spread(snapshot.id[chosen], 0.05),
        y=y,
        marks=offers.marks[chosen],
        labels=_labels(offers, chosen, front),
        faint=~offers.comparison.current[chosen],
        spans=[(int(place), float(shortest[place]), float(weeks[place])) for place in ranged],
        level=0.0,
        front=front,
        x_ticks=_week_ticks(weeks, shortest),
        x_unit=" wk",
        x_zero="stock",
        y_unit=" %",
        y_zero="going",
    )
    drawing = held_in(drawing, lambda place: label_of(offers, int(chosen[place])), _off)
    words = "Ringed: nothing is both sooner and cheaper. Bars are ranges, the dashed line is the going price."
    words += without_words(len(rows) - len(known), "lead time or going price")
    words += far_off_words(drawing) + thin_words(known, chosen)
    return Picture(
        drawing,
        f"{grade or 'All grades'}: lead time against price",
        words,
        OF_GOING,
    )


def _week_ticks(longest: NDArray[np.float64], shortest: NDArray[np.float64]) -> list[tuple[float, str]]:
    """Whole weeks, while they are few enough to be read side by side: nobody promises 2.2 weeks."""
    if not len(longest):
        return []
    weeks = range(int(np.floor(shortest.min())), int(np.ceil(longest.max())) + 1)
    return [(float(week), f"{week} wk" if week else "stock") for week in weeks] if len(weeks) <= _MOST_WEEKS else []


def _labels(offers: Offers, chosen: NDArray[np.intp], front: NDArray[np.intp]) -> list[tuple[int, str]]:
    """The ringed ones by vendor, soonest first, then what stands out."""
    ringed = {int(place): label_of(offers, int(chosen[place]), caliper=False) for place in front[:_MOST_RINGED_TOLD]}
    return [*ringed.items(), *(each for each in labels_of(offers, chosen) if each[0] not in ringed)]


def _off(per_cent: float) -> str:
    return signed_percent(1 + per_cent / 100)
