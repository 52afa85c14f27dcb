"""The product-limit estimate, against Freireich's leukaemia data, scipy's published examples and scipy itself."""

import numpy as np
import pytest
import scipy.stats

from tracker.market.survival import kaplan_meier, median_time

RELAPSED = [6, 6, 6, 7, 10, 13, 16, 22, 23]
IN_REMISSION = [6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35]
"""Weeks in remission under 6-MP (Freireich and others 1963, Blood 21), the example of most textbooks of survival."""

PLACEBO = [1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23]


def _record(came, waiting=()):
    times = np.array([*came, *waiting], dtype=float)
    return kaplan_meier(times, np.arange(times.size) < len(came))


def test_6mp_as_textbooks_print_it() -> None:
    """S to three decimals (printed so in textbooks; from memory, recomputed), median 23 weeks."""
    survival = _record(RELAPSED, IN_REMISSION)
    assert survival.time.tolist() == [6, 7, 10, 13, 16, 22, 23]
    assert survival.at_risk.tolist() == [21, 17, 15, 12, 11, 7, 6]
    assert np.round(survival.still_waiting, 3).tolist() == [0.857, 0.807, 0.753, 0.690, 0.627, 0.538, 0.448]
    assert survival.error == pytest.approx(
        [0.076360, 0.086935, 0.096350, 0.106815, 0.114054, 0.128234, 0.134591], abs=1e-6
    )
    assert survival.low == pytest.approx([0.6197, 0.5631, 0.5032, 0.4316, 0.3675, 0.2678, 0.1881], abs=5e-5)
    assert survival.high == pytest.approx([0.9516, 0.9228, 0.8894, 0.8491, 0.8049, 0.7468, 0.6801], abs=5e-5)


def test_medians_of_both_arms() -> None:
    """23 weeks, interval from 13 to not reached; placebo 8 weeks. Without the open ones the mean would be 12.1."""
    treated = median_time(_record(RELAPSED, IN_REMISSION))
    assert (treated.time, treated.low, treated.high) == (23, 13, None)
    assert median_time(_record(PLACEBO)).time == 8
    assert np.mean(RELAPSED) == pytest.approx(12.1, abs=0.05)


@pytest.mark.parametrize(
    ("times", "came", "printed"),
    [
        (
            [8, 12, 26, 14, 21, 27, 8, 32, 20, 40],
            [1, 1, 1, 1, 1, 1, 0, 0, 0, 0],
            [0.9, 0.788, 0.675, 0.675, 0.54, 0.405, 0.27, 0.27, 0.27],
        ),
        (
            [24, 3, 11, 19, 24, 13, 14, 2, 18, 17, 24, 21, 12, 1, 10, 23, 6, 5, 9, 17],
            [0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0, 1, 0, 1, 0, 1, 0, 1],
            [0.95, 0.95, 0.897, *[0.844] * 7, 0.76, *[0.676] * 4, 0.507, 0.507],
        ),
    ],
)
def test_examples_of_a_school_of_public_health(times, came, printed) -> None:
    """Boston University's teaching pages on survival, with the values that scipy's own tests quote from them
    (scipy/stats/tests/test_survival.py): S at every distinct time, to three decimals."""
    survival = kaplan_meier(np.array(times, dtype=float), np.array(came, dtype=bool))
    shares = [survival.share_waiting(time) for time in sorted(set(times))]
    assert shares == pytest.approx(printed, abs=1e-3)


@pytest.mark.filterwarnings("ignore:The confidence interval is undefined")  # where all or none have arrived
@pytest.mark.parametrize("seed", range(6))
def test_scipy_gives_the_same_with_censored_times(seed: int) -> None:
    rng = np.random.default_rng(seed)
    times = rng.integers(1, 30, 40).astype(float)
    came = rng.random(40) < 0.6
    ours = kaplan_meier(times, came)
    theirs = scipy.stats.ecdf(scipy.stats.CensoredData.right_censored(times, ~came)).sf
    at = np.isin(theirs.quantiles, ours.time)
    assert ours.still_waiting == pytest.approx(theirs.probabilities[at], rel=1e-12, abs=1e-15)
    interval = theirs.confidence_interval(method="log-log")
    open_ended = ours.still_waiting > 0
    assert ours.low[open_ended] == pytest.approx(interval.low.probabilities[at][open_ended], rel=1e-9)
    assert ours.high[open_ended] == pytest.approx(interval.high.probabilities[at][open_ended], rel=1e-9)
