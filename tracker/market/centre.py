"""What a grade's price should be: a line through its offers that faults among them don't bend.

The logarithm of price per tonne is taken as level + slope × log(caliper) + discount × log(order size) with normal
scatter, save for a few offers that may lie anywhere (a mixture, fitted by the EM algorithm of Dempster, Laird and
Rubin 1977). What is known of the trade before any offer is seen enters as a prior and yields to the offers as they
become many: the level lies in the grade's band, price per tonne falls a little with caliper, order size moves it
little, and offers scatter by some 5 %.
"""

from dataclasses import dataclass

import numpy as np

from tracker.market.robust import Floats, spread, theil_sen, weighted_median

MIDDLE_CALIPER_UM = 457.2
"""18 points, the middle of the usual calipers: where a grade's level is read."""

SLOPE, SLOPE_SD = -0.06, 0.08
"""Change of log price per tonne with log caliper: a little down (common practice, no source; the spread is assumed)."""

DISCOUNT_SD = 0.03
"""Change of log price with log order size: none until offers show one (assumed)."""

SCATTER, SCATTER_COUNT = 0.05, 8.0
"""Scatter of clean offers of one grade, and how many offers' worth of belief it has (3 to 8 % is usual; assumed)."""

MAD_EFFICIENCY = 0.37
"""How much one offer tells a median absolute deviation of a normal sample, beside what it tells a standard deviation
(Rousseeuw and Croux 1993, J. Am. Stat. Assoc. 88, 1273-1283)."""

ANYWHERE = 0.15
"""Density, per unit of log price, of faulty offers relative to clean ones: about one in twenty, over a factor of 16."""

UNKNOWN_LEVEL_SD = 3.0
BAND_EDGE_SD = 0.03
_START_OFFERS = 80
_START_ROUNDS = 6
_ROUNDS = 15
_ENOUGH_OFFERS, _ENOUGH_CALIPERS, _MOST_CALIPERS = 15, 4, 200


@dataclass(frozen=True, slots=True)
class Prior:
    """Belief before the offers: mean and precision (one over variance) of level, slope and discount."""

    mean: Floats
    precision: Floats

    @classmethod
    def within(cls, low: float, high: float) -> "Prior":
        """The prior of a grade whose band per tonne is known; NaN says that it is not."""
        if np.isnan(low) or np.isnan(high):
            level, spread = 0.0, UNKNOWN_LEVEL_SD * 100
        else:
            level = (np.log(low) + np.log(high)) / 2
            spread = float(np.hypot((np.log(high) - np.log(low)) / np.sqrt(12), BAND_EDGE_SD))
        mean = np.array([level, SLOPE, 0.0])
        return cls(mean, 1 / np.array([spread, SLOPE_SD, DISCOUNT_SD]) ** 2)


@dataclass(frozen=True, slots=True)
class Fit:
    """A grade's line. line: level, slope, discount. scatter: standard deviation of clean offers in log price.

    clean: the chance that each offer is a clean one. count: how many clean offers' worth of weight it rests on.
    squares: weighted sum of their squared residuals.
    """

    line: Floats
    scatter: float
    clean: Floats
    count: float
    squares: float


def design(caliper_um: Floats, from_kg: Floats, below_kg: Floats) -> Floats:
    """The columns of the line, shape (n, 3): 1, log caliper from the middle one, log order size from the mean one.

    What is not known sits at the middle, so that it says nothing about slope or discount.
    """
    with np.errstate(divide="ignore", invalid="ignore"):
        thick = np.log(caliper_um / MIDDLE_CALIPER_UM)
        size = np.log(np.where(from_kg > 0, from_kg, below_kg / 2))
    known = np.isfinite(size)
    size = np.where(known, size - (size[known].mean() if known.any() else 0.0), 0.0)
    return np.column_stack([np.ones_like(caliper_um), np.where(np.isfinite(thick), thick, 0.0), size])


def fit_line(columns: Floats, log_price: Floats, weights: Floats, prior: Prior, scatter: float, belief: float) -> Fit:
    """The grade's line from its offers; `scatter` is believed as if `belief` offers had shown it."""
    line = _start(columns, log_price, weights, prior, scatter)
    deviation = scatter
    for _ in range(_ROUNDS):
        clean = _chance_clean(log_price - columns @ line, deviation)
        pull = weights * clean
        told = (columns * pull[:, None]).T @ columns / deviation**2
        known = told + np.diag(prior.precision)
        line[:] = np.linalg.solve(known, columns.T @ (pull * log_price) / deviation**2 + prior.precision * prior.mean)
        squares = float(pull @ (log_price - columns @ line) ** 2)
        count = float(pull.sum() - np.trace(np.linalg.solve(known, told)))
        deviation = float(np.sqrt((belief * scatter**2 + squares) / max(belief + count, 1.0)))
    shown = spread(log_price - columns @ line, pull) ** 2 * pull.sum() / max(count, 1.0)
    worth = MAD_EFFICIENCY * max(count, 0.0)
    return Fit(line, float(np.sqrt((belief * scatter**2 + worth * shown) / (belief + worth))), clean, count, squares)


def _chance_clean(residual: Floats, spread: float) -> Floats:
    near = np.exp(-0.5 * (residual / spread) ** 2) / (spread * np.sqrt(2 * np.pi))
    chance: Floats = near / (near + ANYWHERE)
    return chance


def _start(columns: Floats, log_price: Floats, weights: Floats, prior: Prior, scatter: float) -> Floats:
    line = prior.mean.copy()
    line[1] = _first_slope(columns[:, 1], log_price, line[1])
    line[0] = _first_level(log_price - columns[:, 1:] @ line[1:], weights, prior, scatter)
    return line


def _first_slope(thick: Floats, log_price: Floats, usual: float) -> float:
    """Theil's and Sen's slope through the median of each caliper; the usual slope where calipers or offers are few."""
    calipers, which = np.unique(thick, return_inverse=True)
    if thick.size < _ENOUGH_OFFERS or not _ENOUGH_CALIPERS <= calipers.size <= _MOST_CALIPERS:
        return usual
    return theil_sen(calipers, np.array([np.median(log_price[which == code]) for code in range(calipers.size)]))


def _first_level(level: Floats, weights: Floats, prior: Prior, scatter: float) -> float:
    """The level to start from: of the levels that single offers suggest, the one most offers agree with.

    A median would do were it not that two fifths of a small grade may be one vendor's faulty offers.
    """
    step = -(-level.size // _START_OFFERS)
    level, weight = level[::step], weights[::step]
    starts = np.append(level, weighted_median(level, weight))
    known = prior.precision[0]
    for _ in range(_START_ROUNDS):
        pull = weight * _chance_clean(level[None, :] - starts[:, None], scatter) / scatter**2
        starts = (pull @ level + known * prior.mean[0]) / (pull.sum(axis=1) + known)
    density = np.exp(-0.5 * ((level[None, :] - starts[:, None]) / scatter) ** 2) / (scatter * np.sqrt(2 * np.pi))
    agreement = np.log(density + ANYWHERE) @ weight - known * (starts - prior.mean[0]) ** 2 / 2
    return float(starts[np.argmax(agreement)])
