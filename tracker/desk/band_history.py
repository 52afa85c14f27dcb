"""A grade's expected band over time: from the dated levels, ratios and indices that the user set."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date

import numpy as np

from tracker.desk.comparison import Comparison, Per
from tracker.desk.judged import Judged
from tracker.desk.quotes import at_equal_caliper, kilograms_per_msf
from tracker.desk.snapshot import Floats
from tracker.desk.yardsticks import levels_standing, ratios_standing
from tracker.market.bands import expected_bands
from tracker.trade.bands import REFERENCE_GRADE


@dataclass(frozen=True, slots=True)
class BandHistory:
    """What a grade's band was from each day to the next, in the comparison's unit; days are proleptic ordinals.

    low, high: NaN while no level was set. set_on: the days on which a level was set, for the grade or for the one its
    ratio hangs on. Per MSF the band is that of a board of the offers' middle weight.
    """

    days: Floats
    low: Floats
    high: Floats
    set_on: tuple[int, ...] = ()


def band_history(comparison: Comparison, grade: str) -> BandHistory:
    """The band from the first offer or level on to the comparison's day."""
    judged, snapshot = comparison.judged, comparison.snapshot
    if judged is None or judged.held is None or judged.on is None or grade not in snapshot.grades:
        return BandHistory(np.zeros(0), np.zeros(0), np.zeros(0))
    code = snapshot.grades.index(grade)
    set_on = {level.on for level in judged.held.levels if level.grade in (grade, REFERENCE_GRADE)}
    days = _turning_days(comparison, judged, code, set_on)
    nobody = replace(judged.offers, shown=np.zeros(len(snapshot), np.bool_))
    low, high = [], []
    for day in days:
        bands = expected_bands(
            nobody,
            levels_standing(judged.held.levels, day, comparison.footing.currency, judged.on),
            ratios_standing(judged.held.ratios, day),
            REFERENCE_GRADE,
            day.toordinal(),
        )
        low.append(float(bands.low[code]))
        high.append(float(bands.high[code]))
    unit = _unit(comparison, code)
    return BandHistory(
        np.array([day.toordinal() for day in days], np.float64),
        np.array(low) * unit,
        np.array(high) * unit,
        tuple(sorted(day.toordinal() for day in set_on if day <= comparison.footing.as_of)),
    )


def _turning_days(comparison: Comparison, judged: Judged, code: int, set_on: set[date]) -> list[date]:
    """The days on which the band may have changed, the first and the last to be drawn among them."""
    assert judged.held is not None
    received = comparison.snapshot.received[(comparison.snapshot.grade == code) & (comparison.snapshot.received > 0)]
    turning = {comparison.footing.as_of, *set_on, *(ratio.on for ratio in judged.held.ratios)}
    for level in judged.held.levels:
        turning.update(day for day, _ in level.index if day >= level.on)
    if len(received):
        turning.add(date.fromordinal(int(received.min())))
    return sorted(day for day in turning if day <= comparison.footing.as_of)


def _unit(comparison: Comparison, code: int) -> float:
    """What a price per tonne of the grade is on the footing, per MSF by the middle weight of its offers."""
    if comparison.footing.per is Per.TONNE:
        return 1.0
    snapshot = comparison.snapshot
    weights = (kilograms_per_msf(snapshot) * at_equal_caliper(snapshot, comparison.footing))[snapshot.grade == code]
    known = weights[np.isfinite(weights)]
    return float(np.median(known)) / 1000 if len(known) else float("nan")
