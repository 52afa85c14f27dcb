"""Which offers nothing beats on both lead time and price."""

from bisect import bisect_left, bisect_right

import numpy as np

from tracker.market.offers import Flags
from tracker.market.robust import Floats


def unbeaten(price: Floats, lead_low: Floats, lead_high: Floats) -> Flags:
    """True for the offers that no other beats (the Pareto front); same length as the arrays.

    One offer beats another when it is no dearer and neither its shortest nor its longest lead time is longer, and
    one of the three is truly better. price: any figure where less is better, such as percent of expected;
    lead_low, lead_high: days. An offer with NaN in any is never unbeaten and beats nothing.
    """
    flags = np.zeros(price.size, np.bool_)
    known = np.flatnonzero(np.isfinite(price) & np.isfinite(lead_low) & np.isfinite(lead_high))
    if known.size == 0:
        return flags
    triples, which = np.unique(np.column_stack([price, lead_low, lead_high])[known], axis=0, return_inverse=True)
    flags[known] = _front(triples)[which.reshape(-1)]
    return flags


def _front(triples: Floats) -> Flags:
    """Of distinct rows sorted by price, those that no row before beats in both lead times.

    What rows before allow is kept as a staircase: shortest times rising, longest times falling.
    """
    lows: list[float] = []
    highs: list[float] = []
    front = np.zeros(len(triples), np.bool_)
    for row, (_, low, high) in enumerate(triples.tolist()):
        step = bisect_right(lows, low)
        if step and highs[step - 1] <= high:
            continue
        front[row] = True
        start = stop = bisect_left(lows, low)
        while stop < len(lows) and highs[stop] >= high:
            stop += 1
        lows[start:stop], highs[start:stop] = [low], [high]
    return front
