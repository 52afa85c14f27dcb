"""What rests on an estimated basis weight is a range, not a number: the figure at either end of the usual weights."""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache

import numpy as np

from tracker.desk.measured_weights import reweighed
from tracker.desk.snapshot import Floats, Snapshot
from tracker.trade.grades import estimate_grammage, grades

_SAME = 1e-9


def weight_range(snapshot: Snapshot) -> tuple[Floats, Floats]:
    """Lightest and heaviest usual basis weight, g/m², of the boards whose weight is an estimate; else the weight."""
    low, high = snapshot.grammage_gsm.copy(), snapshot.grammage_gsm.copy()
    for index in np.flatnonzero(snapshot.estimated & (snapshot.grade >= 0) & np.isfinite(snapshot.caliper_um)):
        grade = snapshot.grades[snapshot.grade[index]]
        if grade in grades():
            low[index], high[index] = _usual(grade, float(snapshot.caliper_um[index]))
    return low, high


def at_either_end(snapshot: Snapshot) -> tuple[Snapshot, Snapshot] | None:
    """The snapshot with every estimated weight at its lightest, and at its heaviest. None where none is estimated."""
    if not snapshot.estimated.any():
        return None
    lightest, heaviest = weight_range(snapshot)
    return reweighed(snapshot, lightest), reweighed(snapshot, heaviest)


def between(light: Floats, heavy: Floats) -> tuple[Floats, Floats]:
    """Lowest and highest of two figures of each offer, NaN where they are the same: there nothing is estimated."""
    low, high = np.fmin(light, heavy), np.fmax(light, heavy)
    with np.errstate(invalid="ignore"):
        apart = high - low > _SAME * np.abs(high)
    return np.where(apart, low, np.nan), np.where(apart, high, np.nan)


@lru_cache(8192)
def _usual(grade: str, caliper_um: float) -> tuple[float, float]:
    usual = estimate_grammage(grade, Fraction(repr(caliper_um)))
    return float(usual.low), float(usual.high)
