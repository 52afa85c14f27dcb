"""Theil's and Sen's slope against scipy's, and the weighted median against numpy's."""

import numpy as np
import pytest
import scipy.stats

from tracker.market.robust import theil_sen, weighted_median


@pytest.mark.parametrize("seed", range(6))
def test_theil_sen_agrees_with_scipy(seed: int) -> None:
    rng = np.random.default_rng(seed)
    x = rng.choice(np.arange(10.0, 31.0, 2.0), 25)
    y = 3 - 0.2 * x + rng.standard_t(2, 25)
    assert theil_sen(x, y) == pytest.approx(scipy.stats.theilslopes(y, x).slope, rel=1e-12)


@pytest.mark.parametrize("n", [1, 2, 7, 8])
def test_equal_weights_give_numpys_median(n: int) -> None:
    values = np.random.default_rng(n).normal(size=n)
    assert weighted_median(values, np.full(n, 0.3)) == pytest.approx(float(np.median(values)))
