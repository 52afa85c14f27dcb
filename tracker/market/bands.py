"""The band a grade's price is expected in: from a dated market level and the grade's ratio to the reference grade."""

from bisect import bisect_right
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date

import numpy as np
from numpy.typing import NDArray

from tracker.market.offers import Offers
from tracker.market.robust import Floats, weighted_median
from tracker.trade.days import day_text

USUAL_SPREAD = 0.15
"""Half-width of the band round a grade's own level where its setter did not say (common practice, no source)."""

FEWEST_FOR_A_LEVEL = 3
"""Current offers of the reference grade from which a level may be taken when nobody set one."""

Places = NDArray[np.int8]
BELOW, WITHIN, ABOVE, NO_BAND = -1, 0, 1, -9


@dataclass(frozen=True, slots=True)
class Level:
    """A market level somebody set: per tonne in the comparison currency, from a day on (`date.toordinal`).

    spread: half-width of the band round it as a fraction, None where not said. source: in words, shown to people.
    """

    grade: str
    per_tonne: float
    from_day: int
    source: str
    spread: float | None = None


@dataclass(frozen=True, slots=True)
class Ratio:
    """A grade's price over the reference grade's, lowest and highest, and who says so."""

    low: float
    high: float
    source: str

    def __str__(self) -> str:
        return f"ratio {self.low:.2f}–{self.high:.2f} ({self.source})"


@dataclass(frozen=True, slots=True)
class Bands:
    """The expected band of every grade, per tonne, aligned with `Offers.grades`; NaN and '' where there is none."""

    low: Floats
    high: Floats
    sources: tuple[str, ...]


def expected_bands(
    offers: Offers, levels: Iterable[Level], ratios: Mapping[str, Ratio], reference: str, day: int
) -> Bands:
    """The band of every grade on a day.

    A grade's own level, the latest set on or before the day, comes first: the level ± its spread. Else the reference
    grade's level times the grade's ratio. Where no level of the reference grade is set, the weighted median of its
    current offers serves if there are at least three, and the source says so.
    """
    standing = levels_on(levels, day)
    level, said_by = _reference_level(offers, standing.get(reference), reference)
    low, high, sources = [], [], []
    for grade in offers.grades:
        own = standing.get(grade)
        if own is not None and (grade != reference or own.spread is not None or grade not in ratios):
            spread = USUAL_SPREAD if own.spread is None else own.spread
            low.append(own.per_tonne * (1 - spread))
            high.append(own.per_tonne * (1 + spread))
            sources.append(f"level of {grade} {own.source}, ± {100 * spread:.3g} %")
        elif level is not None and grade in ratios:
            low.append(level * ratios[grade].low)
            high.append(level * ratios[grade].high)
            sources.append(f"{said_by}, {ratios[grade]}")
        else:
            low.append(np.nan)
            high.append(np.nan)
            sources.append("")
    return Bands(np.array(low, dtype=np.float64), np.array(high, dtype=np.float64), tuple(sources))


def levels_on(levels: Iterable[Level], day: int) -> dict[str, Level]:
    """Each grade's level that stands on a day: the latest from that day or before; of one day's, the last given."""
    standing: dict[str, Level] = {}
    for level in levels:
        held = standing.get(level.grade)
        if level.from_day <= day and (held is None or level.from_day >= held.from_day):
            standing[level.grade] = level
    return standing


def carry_forward(level: Level, index: Sequence[tuple[int, float]], name: str, day: int) -> Level:
    """A level brought to a later day by a published price index: level × index then / index at the level's day.

    index: (day, value) in order of day; the last value on or before a day counts for it. The source says by what the
    level was carried. ValueError where the index does not reach back to the level's day.
    """
    days = [on for on, _ in index]
    start, stop = bisect_right(days, level.from_day), bisect_right(days, day)
    if start == 0 or stop < start:
        raise ValueError(f"The index {name} has no value for the day of the level: give one that starts earlier.")
    moved = index[stop - 1][1] / index[start - 1][1]
    until = day_text(date.fromordinal(index[stop - 1][0]))
    source = f"{level.source}, carried forward to {until} by {name} ({100 * (moved - 1):+.1f} %)"
    return Level(level.grade, level.per_tonne * moved, day, source, level.spread)


def place(per_tonne: Floats, grade: NDArray[np.int32], bands: Bands) -> Places:
    """-1 below, 0 within, 1 above its grade's band, -9 where there is no band or no price."""
    low, high = of_grade(bands.low, grade), of_grade(bands.high, grade)
    places = np.where(per_tonne < low, BELOW, np.where(per_tonne > high, ABOVE, WITHIN)).astype(np.int8)
    places[np.isnan(low) | np.isnan(high) | np.isnan(per_tonne)] = NO_BAND
    return places


def of_grade(values: Floats, grade: NDArray[np.int32]) -> Floats:
    """A figure per grade brought to every offer, NaN where the grade is unknown."""
    return np.append(values, np.nan)[np.where(grade < 0, len(values), grade)]


def _reference_level(offers: Offers, own: Level | None, reference: str) -> tuple[float | None, str]:
    if own is not None:
        return own.per_tonne, f"level of {reference} {own.source}"
    if reference not in offers.grades:
        return None, ""
    mine = offers.judged & (offers.grade == list(offers.grades).index(reference))
    count = int(mine.sum())
    if count < FEWEST_FOR_A_LEVEL:
        return None, ""
    weights = vendor_weights(offers.vendor[mine])
    weighed = ", a vendor's many weighing less each (four as two)" if np.any(weights < 1) else ""
    middle = weighted_median(offers.per_tonne[mine], weights)
    return middle, f"no level is set, so the median of {count} current offers of {reference}{weighed}"


def vendor_weights(vendor: NDArray[np.int32]) -> Floats:
    """What each offer counts for: one over the root of how many its vendor has here.

    A vendor with nine offers counts as three, not as nine: its offers share one price policy, so they are not nine
    witnesses; nor are they only one. An unknown vendor's offers count singly.
    """
    _, which, count = np.unique(vendor, return_inverse=True, return_counts=True)
    return np.where(vendor < 0, 1.0, 1 / np.sqrt(count[which]))
