"""The plainest reason of all: what the same vendor asks, in the same sheet, for the boards next to this one."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from tracker.desk.comparison import Comparison
from tracker.desk.snapshot import Snapshot
from tracker.trade.basis import BY_WEIGHT, Basis
from tracker.trade.exact import UM_PER_POINT


def own_neighbours(comparison: Comparison, index: int, metric: bool | None = None) -> str | None:
    """'This vendor's own 18 pt is $50.80 /cwt and 22 pt $48.55 /cwt; this 20 pt is $81.34 /cwt.'

    Only where a price is out of line and the next thinner or thicker board of the grade stands in the same sheet for
    the same order, quoted by weight alike: by area the caliper alone would make the difference. Where one of the two
    is out of line itself nothing is said: to pass it over for a farther board would hide what speaks against the point.
    """
    snapshot = comparison.snapshot
    if not comparison.out_of_line[index] or not _by_weight(snapshot, index):
        return None
    beside = [place for place in _next_to(snapshot, index, _comparable(comparison, index)) if place is not None]
    if not beside or any(comparison.out_of_line[place] or comparison.slip[place] for place in beside):
        return None
    own = " and ".join(f"{_caliper(snapshot, place, metric)} is {snapshot.as_quoted[place]}" for place in beside)
    return f"This vendor's own {own}; this {_caliper(snapshot, index, metric)} is {snapshot.as_quoted[index]}."


def _by_weight(snapshot: Snapshot, index: int) -> bool:
    code = int(snapshot.basis[index])
    return code >= 0 and Basis(snapshot.bases[code]) in BY_WEIGHT


def _comparable(comparison: Comparison, index: int) -> NDArray[np.intp]:
    snapshot = comparison.snapshot
    alike = comparison.shown & comparison.current
    for column in (snapshot.vendor, snapshot.grade, snapshot.file, snapshot.basis, snapshot.currency):
        alike &= (column == column[index]) & (column >= 0)
    for bound in (snapshot.from_kg, snapshot.below_kg):
        alike &= np.equal(bound, bound[index]) | (np.isnan(bound) & np.isnan(bound[index]))
    return np.flatnonzero(alike & np.isfinite(snapshot.caliper_um))


def _next_to(snapshot: Snapshot, index: int, places: NDArray[np.intp]) -> tuple[int | None, int | None]:
    """The nearest thinner and the nearest thicker board."""
    calipers, own = snapshot.caliper_um[places], snapshot.caliper_um[index]
    thinner, thicker = places[calipers < own], places[calipers > own]
    return (
        int(thinner[np.argmax(snapshot.caliper_um[thinner])]) if thinner.size else None,
        int(thicker[np.argmin(snapshot.caliper_um[thicker])]) if thicker.size else None,
    )


def _caliper(snapshot: Snapshot, place: int, metric: bool | None) -> str:
    caliper_um = float(snapshot.caliper_um[place])
    return f"{caliper_um:.0f} µm" if metric else f"{caliper_um / float(UM_PER_POINT):.3g} pt"
