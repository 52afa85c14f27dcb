"""Statistics that a few wild prices can't bend: a median, a spread and a line.

All take and give float64 arrays; NaN is not expected. Each names its source.
"""

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

MAD_OF_NORMAL = 0.6745
"""The median absolute deviation of a normal sample, in standard deviations (Iglewicz and Hoaglin 1993)."""

SD_OVER_MEAN_DEVIATION = 1.253314
"""The standard deviation of a normal sample over its mean absolute deviation: the root of π/2."""

CUT_OFF = 3.5
"""Iglewicz and Hoaglin's advice: a value whose modified z-score is beyond 3.5 either way is to be called an outlier."""


def spread(away: Floats, weights: Floats) -> float:
    """What one standard deviation would be, from the values' distances to their middle: MAD / 0.6745.

    Where over half of the weight is at distance 0 the mean absolute deviation stands in, × 1.253314; 0 if all are.
    A value's distance over this is its modified z-score, 0.6745 (x − median) / MAD. NaN for no values.
    Sources: Iglewicz and Hoaglin 1993, How to Detect and Handle Outliers, ASQC Basic References 16; NIST/SEMATECH
    e-Handbook 1.3.5.17; the stand-in is common practice (from memory).
    """
    distance = np.abs(away)
    middle = weighted_median(distance, weights)
    if middle > 0 or distance.size == 0:
        return middle / MAD_OF_NORMAL
    return float(SD_OVER_MEAN_DEVIATION * (weights @ distance) / weights.sum())


def weighted_median(values: Floats, weights: Floats) -> float:
    """The value at which half of the weight is reached, the mean of two where the half falls between. NaN for none."""
    if values.size == 0:
        return float("nan")
    order = np.argsort(values, kind="stable")
    reached = np.cumsum(weights[order])
    half = reached[-1] / 2
    first = int(np.searchsorted(reached, half * (1 - 1e-12)))
    between = np.isclose(reached[first], half, rtol=1e-12) and first + 1 < values.size
    lower = values[order[first]]
    return float((lower + values[order[first + 1]]) / 2 if between else lower)


def theil_sen(x: Floats, y: Floats) -> float:
    """Slope of Theil's and Sen's line: the median of all pairwise slopes.

    Pairs of equal x say nothing and are left out; with no pair left the slope is 0. Memory grows with the square of
    the length: give one y per caliper, not 100,000 offers.
    Source: Theil 1950; Sen 1968, J. Am. Stat. Assoc. 63 (324), 1379-1389.
    """
    first, second = np.triu_indices(x.size, 1)
    run = x[second] - x[first]
    parted = run != 0
    return float(np.median((y[second] - y[first])[parted] / run[parted])) if parted.any() else 0.0
