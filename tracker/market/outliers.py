"""Several outliers at once in a normal sample: Rosner's generalized extreme Studentized deviate."""

from dataclasses import dataclass

import numpy as np

from tracker.market.robust import Floats

FEWEST_FOR_ESD = 15
"""Below 15 values the critical values of the generalized ESD test are not accurate (Rosner 1983, Technometrics 25)."""


@dataclass(frozen=True, slots=True)
class ExtremeDeviates:
    """Steps of the generalized ESD test, one entry for each value taken away in turn.

    removed: indices into the sample; statistics and critical: R and lambda of each step; outliers: how many of
    `removed`, from the first, are outliers (the largest step whose R exceeds its lambda: steps before may not).
    """

    removed: tuple[int, ...]
    statistics: Floats
    critical: Floats
    outliers: int


def generalized_esd(values: Floats, most: int, alpha: float = 0.05) -> ExtremeDeviates:
    """Rosner's test for up to `most` outliers, two-sided at `alpha`. ValueError if fewer than two are left.

    The value farthest from the mean is always the lowest or the highest one left, so sorted sums give every step
    without going over the sample again. With `most` = 1 this is Grubbs' test.
    Source: Rosner 1983, Technometrics 25, 165-172; NIST/SEMATECH e-Handbook 1.3.5.17.3.
    """
    if values.size - most < 2:
        raise ValueError(f"Looking for {most} outliers needs more than {values.size} values.")
    order = np.argsort(values, kind="stable")
    centred = values[order] - values.mean()
    low, high = 0, values.size - 1
    total, squares = float(centred.sum()), float((centred**2).sum())
    removed: list[int] = []
    statistics = np.zeros(most)
    for step in range(most):
        left = high - low + 1
        mean = total / left
        spread = np.sqrt(max(squares - left * mean**2, 0.0) / (left - 1))
        upper_is_farther = centred[high] - mean >= mean - centred[low]
        at = high if upper_is_farther else low
        statistics[step] = abs(centred[at] - mean) / spread if spread > 0 else 0.0
        removed.append(int(order[at]))
        total -= centred[at]
        squares -= centred[at] ** 2
        high, low = (high - 1, low) if upper_is_farther else (high, low + 1)
    critical = _critical(values.size - np.arange(most, dtype=np.float64), alpha / 2)
    beyond = np.flatnonzero(statistics > critical)
    return ExtremeDeviates(tuple(removed), statistics, critical, int(beyond[-1]) + 1 if beyond.size else 0)


def _critical(n: Floats, tail: float) -> Floats:
    """What the farthest of n values must exceed, in standard deviations, at a one-tailed level shared by all n."""
    from scipy.special import stdtrit

    t = stdtrit(n - 2, 1 - tail / n)
    critical: Floats = (n - 1) * t / np.sqrt(n * (n - 2 + t**2))
    return critical
