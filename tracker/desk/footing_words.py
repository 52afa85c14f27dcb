"""What every price of a list or a report means, in words."""

import numpy as np

from tracker.desk.comparison import ChosenFooting
from tracker.trade.days import day_text


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


def order_words(from_kg: float, below_kg: float, minimum_kg: float) -> str:
    """The order size an offer holds for, else the smallest order its vendor takes, in tonnes; NaN where not said."""
    low, high = f"{from_kg / 1000:.3g}", f"{below_kg / 1000:.3g}"
    if np.isnan(from_kg) and np.isnan(below_kg):
        return "any" if np.isnan(minimum_kg) else f"min. {minimum_kg / 1000:.3g} t"
    if np.isnan(from_kg):
        return f"below {high} t"
    return f"from {low} t" if np.isnan(below_kg) else f"{low}–{high} t"
