"""Each offer against what its grade's other offers lead one to expect.

Two expectations an offer: one without the offer itself, one without any offer of its vendor. Several offers of one
vendor must not vouch for each other, so the second decides what is in line; the first may only accuse.
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from tracker.market.bands import Bands, vendor_weights
from tracker.market.centre import SCATTER, SCATTER_COUNT, Fit, Prior, design, fit_line
from tracker.market.offers import Flags, Offers
from tracker.market.outliers import FEWEST_FOR_ESD, generalized_esd
from tracker.market.robust import Floats

FEWEST_PEERS = 5
"""Fewer other vendors' offers are too few to score."""

MARKET_BELIEF = 20.0
"""How many offers' worth of belief the scatter of all grades together has in judging one grade's (assumed)."""

LEAST_SCATTER = 0.03
"""Below 3 % scatter between vendors is not to be had in this trade; a tighter sample is luck (assumed)."""

_MOST_SUSPECTS = 3  # one in three offers at most can be an outlier of the rest
_ALPHA = 0.05


@dataclass(frozen=True, slots=True)
class Peers:
    """Arrays of length n, aligned with the offers; NaN, 0 or False for offers that are not judged.

    n: offers of other vendors in the grade. expected: log price per tonne to expect without this vendor's offers.
    gap: log price less expected. spread: standard deviation of such a gap for a clean offer (scatter and doubt
    about the expectation). own_gap, own_spread: the same with only the offer itself left out.
    scatter: of the grade. support: clean other vendors' offers that the expectation rests on, in weight.
    extreme: the generalized ESD test calls it an outlier (grades with 15 offers or more). slope: of the grade's line.
    """

    n: NDArray[np.int32]
    expected: Floats
    gap: Floats
    spread: Floats
    own_gap: Floats
    own_spread: Floats
    scatter: Floats
    support: Floats
    extreme: Flags
    slope: Floats


def compare(offers: Offers, bands: Bands) -> Peers:
    """Judge every shown offer beside its grade's others."""
    taking_part = offers.shown & offers.usable
    groups = [np.flatnonzero(taking_part & (offers.grade == code)) for code in range(len(offers.grades))]
    columns = design(offers.caliper_um, offers.from_kg, offers.below_kg)
    log_price = np.log(np.where(offers.usable, offers.per_tonne, 1.0))
    priors = [Prior.within(low, high) for low, high in zip(bands.low, bands.high, strict=True)]
    weights = [vendor_weights(offers.vendor[group]) for group in groups]
    market = _market_scatter(columns, log_price, groups, weights, priors)
    found = _blank(len(offers))
    for group, weight, prior in zip(groups, weights, priors, strict=True):
        if group.size:
            fit = fit_line(columns[group], log_price[group], weight, prior, market, MARKET_BELIEF)
            _fill(found, group, columns[group], log_price[group], weight, prior, fit, offers.vendor[group])
    return found


def _market_scatter(
    columns: Floats, log_price: Floats, groups: list[NDArray[np.intp]], weights: list[Floats], priors: list[Prior]
) -> float:
    """The scatter of clean offers over all grades, so that a grade of four offers borrows it from the others."""
    squares, count = SCATTER_COUNT * SCATTER**2, SCATTER_COUNT
    for group, weight, prior in zip(groups, weights, priors, strict=True):
        if group.size:
            fit = fit_line(columns[group], log_price[group], weight, prior, SCATTER, SCATTER_COUNT)
            squares, count = squares + fit.squares, count + max(fit.count, 0.0)
    return max(float(np.sqrt(squares / count)), LEAST_SCATTER)


def _blank(n: int) -> Peers:
    def unknown() -> Floats:
        return np.full(n, np.nan)

    return Peers(
        np.zeros(n, np.int32), unknown(), unknown(), unknown(), unknown(), unknown(), unknown(),
        np.zeros(n), np.zeros(n, np.bool_), unknown(),
    )  # fmt: skip


def _fill(
    found: Peers,
    group: NDArray[np.intp],
    columns: Floats,
    log_price: Floats,
    weights: Floats,
    prior: Prior,
    fit: Fit,
    vendor: NDArray[np.int32],
) -> None:
    scatter = max(fit.scatter, LEAST_SCATTER)
    pull = weights * fit.clean
    each = columns[:, :, None] * columns[:, None, :] * (pull / scatter**2)[:, None, None]
    pulled = columns * (pull * log_price / scatter**2)[:, None]
    whole, total = each.sum(axis=0) + np.diag(prior.precision), pulled.sum(axis=0) + prior.precision * prior.mean
    which = _vendor_groups(vendor)
    own_each, own_pulled = _sum_by(each, which), _sum_by(pulled, which)
    without = np.linalg.solve(whole - own_each, (total - own_pulled)[:, :, None])[which, :, 0]
    doubt = np.linalg.inv(whole - own_each)[which]
    found.expected[group] = np.einsum("ij,ij->i", columns, without)
    found.gap[group] = log_price - found.expected[group]
    found.spread[group] = np.sqrt(scatter**2 + np.einsum("ij,ijk,ik->i", columns, doubt, columns))
    alone = np.linalg.solve(whole - each, (total - pulled)[:, :, None])[:, :, 0]
    own_doubt = np.linalg.inv(whole - each)
    found.own_gap[group] = log_price - np.einsum("ij,ij->i", columns, alone)
    found.own_spread[group] = np.sqrt(scatter**2 + np.einsum("ij,ijk,ik->i", columns, own_doubt, columns))
    found.n[group] = group.size - np.bincount(which)[which]
    found.support[group] = pull.sum() - np.bincount(which, pull)[which]
    found.scatter[group] = scatter
    found.slope[group] = fit.line[1]
    found.extreme[group] = _extreme(log_price - columns @ fit.line)


def _vendor_groups(vendor: NDArray[np.int32]) -> NDArray[np.intp]:
    """0, 1, 2 … for the vendors of a grade; an offer without a known vendor is a vendor of its own."""
    apart = np.where(vendor < 0, -1 - np.arange(vendor.size), vendor)
    return np.unique(apart, return_inverse=True)[1]


def _sum_by(values: Floats, which: NDArray[np.intp]) -> Floats:
    sums = np.zeros((int(which.max()) + 1, *values.shape[1:]))
    np.add.at(sums, which, values)
    return sums


def _extreme(residual: Floats) -> Flags:
    flags = np.zeros(residual.size, np.bool_)
    if residual.size >= FEWEST_FOR_ESD:
        test = generalized_esd(residual, residual.size // _MOST_SUSPECTS, _ALPHA)
        flags[list(test.removed[: test.outliers])] = True
    return flags
