"""Which offers nothing beats on both price and lead time."""

import numpy as np

from tracker.desk.comparison import Comparison
from tracker.desk.snapshot import Codes, Flags
from tracker.market.pareto import unbeaten


def best_choices(comparison: Comparison, among: Codes) -> Flags:
    """Of the offers at these indices, those that no other of them beats on price beside expectation and lead time.

    A price that is out of line or looks like a slip is no bargain before it is confirmed, and an offer that is not
    current can't be bought: neither is ever among them, and neither beats another.
    """
    with np.errstate(invalid="ignore", divide="ignore"):
        ratio = (comparison.price / comparison.expected)[among]
    doubtful = comparison.out_of_line[among] | comparison.slip[among] | ~comparison.current[among]
    snapshot = comparison.snapshot
    low, high = snapshot.lead_low[among], snapshot.lead_high[among]
    return unbeaten(np.where(doubtful, np.nan, ratio), np.fmin(low, high), np.fmax(low, high))
