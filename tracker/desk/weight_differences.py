"""What a board's measured weight means in money over a year, against what the vendor claims it weighs."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np

from tracker.desk.comparison import ChosenFooting
from tracker.desk.measured_weights import MeasuredWeight, at_measured_weight, measured_weights
from tracker.desk.quotes import bracket_fits, is_current, prices_on
from tracker.desk.rates import rates_on
from tracker.desk.snapshot import Flags, Floats, Snapshot
from tracker.trade.basis import BY_WEIGHT, Basis

if TYPE_CHECKING:
    from tracker.desk.opening import Desk


@dataclass(frozen=True, slots=True)
class WeightDifference:
    """One board's offer at both weights. offer: its index in the snapshot. claimed_per_msf, measured_per_msf in the
    chosen currency. a_year: what the difference comes to over year_msf, above 0 where the board is dearer than it
    seems; 0 where it is bought by area. sentence: the same in words."""

    weight: MeasuredWeight
    offer: int
    claimed_per_msf: float
    measured_per_msf: float
    year_msf: float
    a_year: float
    sentence: str


def weight_differences(
    desk: Desk, snapshot: Snapshot, footing: ChosenFooting, year_msf: float
) -> tuple[WeightDifference, ...]:
    """Of every board with a measured weight: its cheapest current offer at the claimed and at the measured weight.

    year_msf: a year's volume in thousands of square feet. The largest difference comes first.
    """
    weights = measured_weights(desk)
    rates = rates_on(desk, footing.as_of)
    _, claimed = prices_on(snapshot, footing, rates)
    _, measured = prices_on(at_measured_weight(snapshot, weights), footing, rates)
    counts = is_current(snapshot, footing) & bracket_fits(snapshot, footing.order_kg) & np.isfinite(claimed)
    found = (_difference(weight, snapshot, footing, (claimed, measured), counts, year_msf) for weight in weights)
    return tuple(sorted((each for each in found if each is not None), key=lambda each: -abs(each.a_year)))


def _difference(
    weight: MeasuredWeight,
    snapshot: Snapshot,
    footing: ChosenFooting,
    per_msf: tuple[Floats, Floats],
    counts: Flags,
    year_msf: float,
) -> WeightDifference | None:
    claimed, measured = per_msf
    offers = np.flatnonzero(counts & np.isin(snapshot.id, weight.offers))
    if not offers.size:
        return None
    offer = int(offers[np.argmin(measured[offers])])
    difference = float(measured[offer] - claimed[offer])
    by_weight = Basis(snapshot.bases[snapshot.basis[offer]]) in BY_WEIGHT
    sentence = _sentence(weight, bool(snapshot.estimated[offer]), by_weight, footing.currency, difference, year_msf)
    return WeightDifference(
        weight, offer, float(claimed[offer]), float(measured[offer]), year_msf, difference * year_msf, sentence
    )


def _sentence(
    weight: MeasuredWeight, estimated: bool, by_weight: bool, currency: str, difference: float, year_msf: float
) -> str:
    called = weight.board or "The board"
    said = f"{called} of {weight.vendor} weighs {weight.gsm:.1f} g/m² ({weight.spread.n} readings)"
    if weight.claimed is not None:
        percent = 100 * (weight.gsm / float(weight.claimed) - 1)
        side = "more" if percent >= 0 else "less"
        said += f" where {float(weight.claimed):.5g} is claimed, {abs(percent):.1f} % {side}"
    elif estimated:
        said += " where no weight is claimed and one was estimated"
    if not by_weight:
        return f"{said}. It is bought by area, so 1,000 ft² cost the same."
    dearer = "more" if difference >= 0 else "less"
    said += (
        f". Bought by weight, 1,000 ft² cost {currency} {abs(difference):,.2f} {dearer}: "
        f"{currency} {abs(difference) * year_msf:,.0f} {dearer} over a year's {year_msf:,.0f} MSF."
    )
    return said + _doubt(weight)


def _doubt(weight: MeasuredWeight) -> str:
    low, high, claimed = weight.spread.low, weight.spread.high, weight.claimed
    if low is not None and high is not None and claimed is not None and low <= float(claimed) <= high:
        return " The readings scatter so much that the claim may still be right."
    return ""
