"""Each offer against what its grade's other offers lead one to expect.

Two expectations an offer: one without any offer of its vendor, one without only the offer itself. Several offers of
one vendor must not vouch for each other, so the first decides what is in line; the second may only accuse.
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

ESD_LEVEL = 0.01
"""Level of the generalized ESD test, for a whole grade: at the usual 5 % one clean grade in twenty would be accused."""

_MARKET_BELIEF = 30.0  # offers' worth of belief that all grades' scatter has in judging one grade's (assumed)
_LEAST_SCATTER = 0.03  # a tighter sample than 3 % is luck, not agreement (assumed)
_ESTIMATE_SD = 0.08  # what an estimated basis weight may be off by (assumed; see the density ranges of the grades)
_ONE_IN = 3  # at most one offer in three can be an outlier of the rest
_LEAST_SUPPORT = 0.5  # with less than half a clean offer to go by there is no expectation without a band


@dataclass(frozen=True, slots=True)
class Peers:
    """Arrays of length n, aligned with the offers; NaN, 0 or False for offers that are not judged.

    n: offers of other vendors in the grade. expected: log price per tonne to expect without this vendor's offers,
    NaN where there is nothing to go by. gap: log price less that. spread: standard deviation of such a gap for a
    clean offer (scatter, doubt about the expectation, estimated basis weight).
    own_expected, own_gap, own_spread: the same with only the offer itself left out.
    noise: that standard deviation without the doubt. extreme: the generalized ESD test calls the offer an outlier
    (grades of 15 offers and more).
    """

    n: NDArray[np.int32]
    expected: Floats
    gap: Floats
    spread: Floats
    own_expected: Floats
    own_gap: Floats
    own_spread: Floats
    noise: Floats
    extreme: Flags


@dataclass(frozen=True, slots=True)
class _Grade:
    """One grade's judged offers: where they are, and what its line is fitted to."""

    where: NDArray[np.intp]
    columns: Floats
    log_price: Floats
    weights: Floats
    vendor: NDArray[np.intp]
    estimated: Flags
    prior: Prior
    band_known: bool


def compare(offers: Offers, bands: Bands) -> Peers:
    """Judge every shown offer beside its grade's others."""
    grades = _grades(offers, bands)
    market = _market_scatter(grades)
    found = _blank(len(offers))
    for grade in grades:
        fit = fit_line(grade.columns, grade.log_price, grade.weights, grade.prior, market, _MARKET_BELIEF)
        _fill(found, grade, fit)
    return found


def _grades(offers: Offers, bands: Bands) -> list[_Grade]:
    columns = design(offers.caliper_um, offers.from_kg, offers.below_kg)
    grades = []
    for code in range(len(offers.grades)):
        where = np.flatnonzero(offers.judged & (offers.grade == code))
        if where.size == 0:
            continue
        low, high = float(bands.low[code]), float(bands.high[code])
        estimated = offers.estimated[where]
        trust = np.where(estimated, SCATTER**2 / (SCATTER**2 + _ESTIMATE_SD**2), 1.0)
        grades.append(
            _Grade(
                where,
                columns[where],
                np.log(offers.per_tonne[where]),
                trust * vendor_weights(offers.vendor[where]),
                _vendor_groups(offers.vendor[where]),
                estimated,
                Prior.within(low, high),
                not np.isnan(low + high),
            )
        )
    return grades


def _market_scatter(grades: list[_Grade]) -> float:
    """The scatter of clean offers over all grades, so that a grade of four offers borrows it from the others."""
    squares, count = SCATTER_COUNT * SCATTER**2, SCATTER_COUNT
    for grade in grades:
        fit = fit_line(grade.columns, grade.log_price, grade.weights, grade.prior, SCATTER, SCATTER_COUNT)
        squares, count = squares + fit.squares, count + max(fit.count, 0.0)
    return max(float(np.sqrt(squares / count)), _LEAST_SCATTER)


def _fill(found: Peers, grade: _Grade, fit: Fit) -> None:
    scatter = max(fit.scatter, _LEAST_SCATTER)
    noise = np.hypot(scatter, np.where(grade.estimated, _ESTIMATE_SD, 0.0))
    pull = grade.weights * fit.clean
    each = np.arange(grade.where.size)
    own_expected, own_doubt = _leave_out(grade, pull, scatter, each)
    expected, doubt = _leave_out(grade, pull, scatter, grade.vendor)
    support = pull.sum() - np.bincount(grade.vendor, pull)[grade.vendor]
    if not grade.band_known:
        nothing_else = pull.sum() - pull < _LEAST_SUPPORT
        own_expected = np.where(nothing_else, np.nan, own_expected)
        expected, doubt = (
            np.where(support < _LEAST_SUPPORT, own, others)
            for own, others in ((own_expected, expected), (own_doubt, doubt))
        )
    at = grade.where
    found.n[at] = at.size - np.bincount(grade.vendor)[grade.vendor]
    found.noise[at] = noise
    found.expected[at], found.gap[at] = expected, grade.log_price - expected
    found.spread[at] = np.sqrt(noise**2 + doubt)
    found.own_expected[at], found.own_gap[at] = own_expected, grade.log_price - own_expected
    found.own_spread[at] = np.sqrt(noise**2 + own_doubt)
    found.extreme[at] = _extreme(grade.log_price - grade.columns @ fit.line)


def _leave_out(grade: _Grade, pull: Floats, scatter: float, group: NDArray[np.intp]) -> tuple[Floats, Floats]:
    """What to expect of each offer without its group's offers, and the variance of that expectation.

    The sums that a weighted line rests on are taken once; a group's own part is taken off again, so that the cost
    does not grow with the number of groups.
    """
    columns, prior = grade.columns, grade.prior
    parts = columns[:, :, None] * columns[:, None, :] * (pull / scatter**2)[:, None, None]
    pulled = columns * (pull * grade.log_price / scatter**2)[:, None]
    whole = parts.sum(axis=0) + np.diag(prior.precision)
    total = pulled.sum(axis=0) + prior.precision * prior.mean
    doubt = np.linalg.inv(whole - _sum_by(parts, group))
    lines = np.einsum("gij,gj->gi", doubt, total - _sum_by(pulled, group))
    expected: Floats = np.einsum("ni,ni->n", columns, lines[group])
    variance: Floats = np.einsum("ni,nij,nj->n", columns, doubt[group], columns)
    return expected, np.maximum(variance, 0.0)


def _sum_by(values: Floats, group: NDArray[np.intp]) -> Floats:
    sums = np.zeros((int(group.max()) + 1, *values.shape[1:]))
    np.add.at(sums, group, values)
    return sums


def _vendor_groups(vendor: NDArray[np.int32]) -> NDArray[np.intp]:
    """0, 1, 2 … for the vendors of a grade; an offer without a known vendor is a vendor of its own."""
    apart = np.where(vendor < 0, -1 - np.arange(vendor.size), vendor)
    return np.unique(apart, return_inverse=True)[1]


def _extreme(residual: Floats) -> Flags:
    flags = np.zeros(residual.size, np.bool_)
    if residual.size >= FEWEST_FOR_ESD:
        test = generalized_esd(residual, residual.size // _ONE_IN, ESD_LEVEL)
        flags[list(test.removed[: test.outliers])] = True
    return flags


def _blank(n: int) -> Peers:
    def unknown() -> Floats:
        return np.full(n, np.nan)

    return Peers(
        n=np.zeros(n, np.int32),
        expected=unknown(),
        gap=unknown(),
        spread=unknown(),
        own_expected=unknown(),
        own_gap=unknown(),
        own_spread=unknown(),
        noise=unknown(),
        extreme=np.zeros(n, np.bool_),
    )
