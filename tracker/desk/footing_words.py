"""What every price of a list or a report means, in words."""

import numpy as np

from tracker.desk.comparison import ChosenFooting
from tracker.desk.snapshot import Snapshot
from tracker.trade.basis import IN_POUNDS_AND_FEET, Basis
from tracker.trade.days import day_text
from tracker.trade.exact import KG_PER_LB, half_up


def footing_sentence(footing: ChosenFooting) -> str:
    """The whole footing as one sentence."""
    parts = [
        footing.per_words,
        f"in {footing.currency} at {day_text(footing.as_of)}",
        "delivered where known" if footing.delivered else "as quoted, freight not added",
        "all order sizes" if footing.order_kg is None else f"an order of {footing.order_kg:,.0f} kg",
        "current offers only" if footing.current_only else "lapsed and superseded offers too",
    ]
    return f"Every price below: {', '.join(parts)}."


def order_words(snapshot: Snapshot, index: int) -> str:
    """The order size an offer holds for, else the smallest order its vendor takes: 'from 40,000 lb', '5–20 t'.

    In pounds where the price is quoted in pounds or feet, so that the vendor's own figure is met again.
    """
    pounds = Basis(snapshot.bases[snapshot.basis[index]]) in IN_POUNDS_AND_FEET
    low, high, least = (
        _mass(float(kg[index]), pounds) for kg in (snapshot.from_kg, snapshot.below_kg, snapshot.minimum_kg)
    )
    unit = "lb" if pounds else "t"
    if low and high:
        return f"{low}–{high} {unit}"
    if low or high:
        return f"from {low} {unit}" if low else f"below {high} {unit}"
    return f"min. {least} {unit}" if least else "any"


def _mass(kg: float, pounds: bool) -> str:
    """'' where it is not said."""
    if np.isnan(kg):
        return ""
    return f"{half_up(kg / float(KG_PER_LB), 0):,f}" if pounds else f"{kg / 1000:.3g}"
