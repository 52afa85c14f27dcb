"""What issue 4 asks of the judge, on a reduced run of the simulation; tests/benchmarks/ has it in full."""

import pytest

from tests.benchmarks.market_simulation import CLEAN, OUTLIER, SLIP, VENDOR, Scene, simulate

SEED = 20261125


def test_a_dozen_offers_and_more():
    score = simulate(Scene(), markets=60, seed=SEED)
    assert score.share(OUTLIER) >= 97
    assert score.share(CLEAN) <= 0.3
    assert score.share(SLIP) >= 99
    assert score.named_share() >= 98


def test_outliers_of_just_thirty_per_cent_and_no_more():
    score = simulate(Scene(most=0.30), markets=40, seed=SEED)
    assert score.share(OUTLIER) >= 97
    assert score.share(CLEAN) <= 0.3


def test_three_to_nine_offers():
    score = simulate(Scene(sizes=(3, 9), outliers=0.10), markets=60, seed=SEED)
    assert score.share(OUTLIER) >= 93
    assert score.share(CLEAN) <= 1
    assert score.share(SLIP) >= 99
    assert score.named_share() >= 98


@pytest.mark.parametrize("sizes", [(12, 15), (12, 60)])
def test_one_vendor_with_two_fifths_of_a_grade_all_too_dear(sizes):
    score = simulate(Scene(sizes=sizes, outliers=0, slips=0, cluster=True), markets=80, seed=SEED)
    assert score.share(VENDOR) >= 95
    assert score.share(CLEAN) <= 0.3
