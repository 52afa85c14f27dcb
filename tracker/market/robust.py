"""Statistics that a few wild prices can't bend: median, spread, modified z-score and a robust line.

All take and give float64 arrays; NaN is not expected. Each names its source.
"""

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

MAD_TO_SD = 0.6745
"""The MAD of a normal sample in standard deviations (Iglewicz and Hoaglin 1993, ASQC Basic References, vol. 16)."""

MEAN_AD_TO_SD = 1.253314
"""The standard deviation of a normal sample is 1.253314 (the root of π/2) mean absolute deviations."""

CUT_OFF = 3.5
"""Iglewicz and Hoaglin's advice: call a value an outlier when its modified z-score is beyond 3.5 either way."""


def mad(values: Floats) -> float:
    """Median absolute deviation from the median, unscaled. NaN for no values."""
    if values.size == 0:
        return float("nan")
    return float(np.median(np.abs(values - np.median(values))))


def modified_z(values: Floats) -> Floats:
    """The modified z-score of every value: 0.6745 (x − median) / MAD, same shape.

    Where over half the values are equal the MAD is 0; then the mean absolute deviation from the median takes its
    place: (x − median) / (1.253314 × it). Where that is 0 as well all values are equal and score 0.
    Source: Iglewicz and Hoaglin 1993; NIST/SEMATECH e-Handbook 1.3.5.17; the fallback is common practice
    (it is printed so in the documentation of several statistics packages; from memory).
    """
    if values.size == 0:
        return np.zeros(0)
    away = values - np.median(values)
    middle = float(np.median(np.abs(away)))
    if middle > 0:
        return MAD_TO_SD * away / middle
    mean = float(np.mean(np.abs(away)))
    return away / (MEAN_AD_TO_SD * mean) if mean > 0 else np.zeros_like(away)


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


def theil_sen(x: Floats, y: Floats) -> tuple[float, float]:
    """Slope and intercept of Theil's and Sen's line: the median of all pairwise slopes, through the medians.

    Pairs of equal x say nothing and are left out; with no pair left the slope is 0 and the line the median of y.
    Memory grows with the square of the length: give medians per caliper, not 100,000 offers.
    Source: Theil 1950; Sen 1968, J. Am. Stat. Assoc. 63 (324), 1379-1389.
    """
    first, second = np.triu_indices(x.size, 1)
    run = x[second] - x[first]
    parted = run != 0
    if not parted.any():
        return 0.0, float(np.median(y)) if y.size else float("nan")
    slope = float(np.median((y[second] - y[first])[parted] / run[parted]))
    return slope, float(np.median(y) - slope * np.median(x))
