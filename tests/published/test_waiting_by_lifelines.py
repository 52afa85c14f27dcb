"""Usual times and their bounds once more, by another program for survival analysis."""

import warnings
from typing import Any

import numpy as np
import pytest

from tests.published.test_statistics_of_waiting import IN_REMISSION, RELAPSED
from tracker.market.survival import kaplan_meier, median_time


def lifelines(times: np.ndarray, came: np.ndarray) -> Any:
    """lifelines' estimate of the same record. Its warnings are about its own dependencies."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        from lifelines import KaplanMeierFitter

        return KaplanMeierFitter().fit(times, came)


def test_6mp_median_and_bands_by_lifelines() -> None:
    """Freireich's 6-MP arm: median 23 weeks, log-log bands by both programs."""
    times = np.array([*RELAPSED, *IN_REMISSION], float)
    came = np.arange(times.size) < len(RELAPSED)
    ours, theirs = kaplan_meier(times, came), lifelines(times, came)
    assert median_time(ours).time == theirs.median_survival_time_ == 23
    band = theirs.confidence_interval_.loc[ours.time].to_numpy()
    assert ours.still_waiting == pytest.approx(theirs.survival_function_.loc[ours.time].to_numpy()[:, 0], rel=1e-9)
    assert ours.low == pytest.approx(band[:, 0], rel=1e-6)
    assert ours.high == pytest.approx(band[:, 1], rel=1e-6)


@pytest.mark.parametrize("seed", range(4))
def test_lifelines_gives_the_same_for_random_records(seed: int) -> None:
    rng = np.random.default_rng(seed)
    times, came = rng.integers(1, 30, 40).astype(float), rng.random(40) < 0.6
    ours, theirs = kaplan_meier(times, came), lifelines(times, came)
    assert ours.still_waiting == pytest.approx(theirs.survival_function_.loc[ours.time].to_numpy()[:, 0], abs=1e-12)
    median = median_time(ours).time
    assert (float("inf") if median is None else median) == theirs.median_survival_time_
