"""Outliers, against NIST/SEMATECH's e-Handbook of Statistical Methods, printed tables, scipy and scikit-posthocs."""

import numpy as np
import pytest
import scikit_posthocs
import scipy.stats

from tracker.market.outliers import generalized_esd
from tracker.market.robust import spread

TIETJEN_MOORE = np.array([199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57])
"""Eight uranium isotope readings (Tietjen and Moore 1972), the example of e-Handbook 1.3.5.17.1."""

ROSNER = np.array([
    -0.25, 0.68, 0.94, 1.15, 1.20, 1.26, 1.26, 1.34, 1.38, 1.43, 1.49, 1.49, 1.55, 1.56, 1.58, 1.65, 1.69, 1.70, 1.76,
    1.77, 1.81, 1.91, 1.94, 1.96, 1.99, 2.06, 2.09, 2.10, 2.14, 2.15, 2.23, 2.24, 2.26, 2.35, 2.37, 2.40, 2.47, 2.54,
    2.62, 2.64, 2.90, 2.92, 2.92, 2.93, 3.21, 3.26, 3.30, 3.59, 3.68, 4.30, 4.64, 5.34, 5.42, 6.01,
])  # fmt: skip
"""Rosner's 54 values (Technometrics 25, 1983), the example of e-Handbook 1.3.5.17.3."""

REMOVED = [6.01, 5.42, 5.34, 4.64, -0.25, 4.30, 3.68, 3.59, 0.68, 3.30]
PUBLISHED_R = [3.118, 2.942, 3.179, 2.810, 2.815, 2.848, 2.279, 2.310, 2.101, 2.067]
PUBLISHED_LAMBDA = [3.158, 3.151, 3.143, 3.136, 3.128, 3.120, 3.111, 3.103, 3.094, 3.085]


def test_grubbs_of_the_handbook() -> None:
    """Rosner's first step is Grubbs' test. e-Handbook 1.3.5.17.1: G = 2.4687, one-sided critical value at 5 % 2.032,
    which is the two-sided one at 10 % (last digits cut, not rounded)."""
    result = generalized_esd(TIETJEN_MOORE, 1, alpha=0.10)
    assert 0 <= result.statistics[0] - 2.4687 < 1e-4
    assert result.critical[0] == pytest.approx(2.032, abs=5e-4)
    assert result.outliers == 1
    assert TIETJEN_MOORE[result.removed[0]] == 245.57


@pytest.mark.parametrize(("n", "critical"), [(3, 1.15), (4, 1.48), (5, 1.71), (6, 1.89), (7, 2.02), (8, 2.13)])
def test_two_sided_critical_values_as_printed(n: int, critical: float) -> None:
    """Grubbs' 5 % row as lists in the manner of ASTM E 178 print it, two-sided (two decimals, cut or rounded)."""
    assert generalized_esd(np.arange(n, dtype=float), 1).critical[0] == pytest.approx(critical, abs=0.006)


def test_rosners_steps_of_the_handbook() -> None:
    """e-Handbook 1.3.5.17.3 prints R and lambda cut to three decimals; three outliers, though two steps before fail."""
    result = generalized_esd(ROSNER, 10)
    assert [ROSNER[at] for at in result.removed] == REMOVED
    assert ((result.statistics - PUBLISHED_R >= 0) & (result.statistics - PUBLISHED_R < 1e-3)).all()
    assert ((result.critical - PUBLISHED_LAMBDA >= 0) & (result.critical - PUBLISHED_LAMBDA < 1e-3)).all()
    assert result.outliers == 3
    assert not (result.statistics[:2] > result.critical[:2]).any()


def _modified_z(values: np.ndarray) -> np.ndarray:
    away = values - np.median(values)
    return away / spread(away, np.ones(values.size))


def test_modified_z_of_the_same_values() -> None:
    """The handbook (1.3.5.17) gives the formula and the cut-off 3.5; scores of its two samples worked out by hand."""
    scores = _modified_z(TIETJEN_MOORE)
    by_hand = [-1.39645, -1.24732, -0.79991, -0.37284, 0.37284, 0.39318, 0.54909, 29.96271]
    assert scores == pytest.approx(np.array(by_hand), abs=1e-5)
    beyond = ROSNER[np.abs(_modified_z(ROSNER)) > 3.5]
    assert sorted(beyond) == [5.34, 5.42, 6.01]
    assert _modified_z(ROSNER)[-1] == pytest.approx(4.84526, abs=1e-5)


def test_three_standard_deviations_are_blind_in_small_samples() -> None:
    """Why plain z-scores are not used: none can exceed (n − 1)/√n (Shiffler 1988, The American Statistician 42)."""
    plain = (TIETJEN_MOORE - TIETJEN_MOORE.mean()) / TIETJEN_MOORE.std(ddof=1)
    assert np.abs(plain).max() < 7 / np.sqrt(8) < 3


@pytest.mark.parametrize("seed", range(5))
def test_mad_agrees_with_scipy(seed: int) -> None:
    values = np.random.default_rng(seed).standard_t(3, 40 + seed)
    ours = spread(values - np.median(values), np.ones(values.size)) * 0.6745
    assert ours == pytest.approx(scipy.stats.median_abs_deviation(values), rel=1e-12)


def test_mean_deviation_stands_in_where_most_values_are_equal() -> None:
    """The root of π/2 turns a normal sample's mean absolute deviation into its standard deviation."""
    away = np.array([0.0, 0.0, 0.0, 0.0, 0.0, 4.0])
    assert spread(away, np.ones(6)) == pytest.approx(np.sqrt(np.pi / 2) * 4 / 6, rel=1e-6)


@pytest.mark.parametrize("seed", range(8))
def test_scikit_posthocs_finds_the_same(seed: int) -> None:
    rng = np.random.default_rng(seed)
    values = rng.normal(0, 1, 40)
    values[: seed % 4] += rng.choice([-8.0, 8.0], seed % 4)
    ours = generalized_esd(values, 10)
    theirs = scikit_posthocs.outliers_gesd(values, 10, alpha=0.05)
    assert sorted(theirs) == pytest.approx(sorted(np.delete(values, list(ours.removed[: ours.outliers]))))
    left = scikit_posthocs.outliers_grubbs(values, alpha=0.05)
    assert len(values) - len(left) == generalized_esd(values, 1).outliers
