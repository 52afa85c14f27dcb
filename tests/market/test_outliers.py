import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from tracker.market.outliers import generalized_esd


def _step_by_step(values, most):
    """R of every step as the definition says it, over the whole sample each time."""
    left, statistics = list(values), []
    for _ in range(most):
        away = np.abs(np.array(left) - np.mean(left))
        statistics.append(away.max() / np.std(left, ddof=1))
        left.pop(int(np.argmax(away)))
    return statistics


@given(st.integers(0, 10_000), st.integers(5, 30))
def test_running_sums_give_what_the_definition_gives(seed, n):
    values = np.random.default_rng(seed).normal(7, 0.1, n)
    most = n // 3
    assert generalized_esd(values, most).statistics == pytest.approx(_step_by_step(values, most), rel=1e-6)


def test_two_that_hide_each_other_are_both_found():
    values = np.concatenate([np.linspace(-1, 1, 20), [6.0, 6.2]])
    result = generalized_esd(values, 5)
    assert set(result.removed[: result.outliers]) == {20, 21}


def test_equal_values_have_no_outlier():
    assert generalized_esd(np.full(20, 3.0), 5).outliers == 0


def test_too_few_values_are_refused():
    with pytest.raises(ValueError, match="Looking for 4 outliers needs more than 5 values"):
        generalized_esd(np.arange(5.0), 4)
