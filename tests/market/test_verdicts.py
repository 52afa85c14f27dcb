import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.market.making import LIKE, NO_BANDS, bands_of, offers_of
from tracker.market.bands import Bands
from tracker.market.offers import SENSITIVITIES, Settings
from tracker.market.verdicts import judge

BAND = bands_of(850.0, 1150.0)
USUAL = Settings()


def _out(offers, bands=BAND, chosen=USUAL):
    return np.flatnonzero(judge(offers, bands, chosen).out_of_line).tolist()


def test_clean_offers_are_in_line():
    assert _out(offers_of(LIKE)) == []


@pytest.mark.parametrize("price", [1350.0, 680.0])
def test_an_outlier_is_out_of_line_either_way(price):
    assert _out(offers_of([*LIKE, price])) == [8]


def test_the_score_is_the_gap_over_the_spread_with_its_doubt():
    verdicts = judge(offers_of([*LIKE, 1350.0]), BAND, USUAL)
    gap = np.log(1350.0 / verdicts.expected[8])
    assert verdicts.peers[8] == 8
    assert verdicts.score[8] == pytest.approx(gap / verdicts.evidence.spread[8])
    assert verdicts.evidence.spread[8] > verdicts.evidence.noise[8]
    assert 980 < verdicts.expected[8] < 1030


def test_four_others_are_too_few_to_score_but_the_narrowed_band_judges():
    verdicts = judge(offers_of([1000.0, 1030.0, 980.0, 1010.0, 1400.0]), BAND, USUAL)
    assert np.isnan(verdicts.score).all()
    assert verdicts.out_of_line.tolist() == [False, False, False, False, True]
    assert verdicts.low[4] > 800
    assert verdicts.high[4] < 1400


def test_a_lone_offer_has_only_its_band():
    assert _out(offers_of([1100.0])) == []
    assert _out(offers_of([1250.0])) == []  # beyond the band, but within the usual scatter round it
    assert _out(offers_of([1600.0])) == [0]


def test_a_lone_offer_without_a_band_is_not_judged():
    verdicts = judge(offers_of([1600.0]), NO_BANDS, USUAL)
    assert not verdicts.out_of_line.any()
    assert np.isnan(verdicts.expected).all()
    assert verdicts.place.tolist() == [-9]


def test_offers_of_one_vendor_do_not_vouch_for_each_other():
    dear = [price * 1.38 for price in LIKE]
    clean = [*LIKE, 1005.0, 1035.0, 985.0, 1015.0]
    offers = offers_of([*clean, *dear], vendor=[*range(12), *[12] * 8])
    assert _out(offers) == list(range(12, 20))
    assert _out(offers, NO_BANDS) == list(range(12, 20))


def test_a_vendors_own_offers_may_accuse_its_odd_one():
    """All offers of a grade are one vendor's: nobody vouches for it, but its own list shows which price is odd."""
    offers = offers_of([*LIKE, 1450.0], vendor=[3] * 9)
    verdicts = judge(offers, NO_BANDS, USUAL)
    assert np.isnan(verdicts.score).all()
    assert np.flatnonzero(verdicts.out_of_line).tolist() == [8]


def test_offers_that_hide_each_other_are_all_found():
    clean = [price for price in LIKE for _ in range(2)]
    assert _out(offers_of([*clean, 1450.0, 1460.0, 1480.0])) == [16, 17, 18]


def test_what_is_not_on_offer_is_neither_judged_nor_a_peer():
    offers = offers_of([*LIKE, 3000.0, 3010.0], shown=[True] * 8 + [False] * 2)
    verdicts = judge(offers, BAND, USUAL)
    assert not verdicts.out_of_line.any()
    assert verdicts.peers[0] == 7
    assert np.isnan(verdicts.expected[8])


@pytest.mark.parametrize("price", [np.nan, 0.0, -5.0])
def test_what_has_no_price_is_not_judged(price):
    verdicts = judge(offers_of([*LIKE, price]), BAND, USUAL)
    assert not verdicts.out_of_line.any()
    assert verdicts.place[8] == -9


def test_nothing_at_all():
    assert len(judge(offers_of([]), BAND, USUAL).out_of_line) == 0


def test_price_falling_with_caliper_is_not_held_against_the_thick_and_thin():
    points = np.repeat(np.arange(10, 31, 2), 2)
    steep = 1000 * np.exp(-0.25 * np.log(points / 18)) * np.tile([0.98, 1.02], 11)
    offers = offers_of(steep, caliper_um=points * 25.4)
    assert _out(offers) == []
    verdicts = judge(offers, BAND, USUAL)
    assert verdicts.expected[0] > verdicts.expected[-1] * 1.2


def test_a_discount_for_larger_orders_is_learnt():
    sizes = np.tile([1000.0, 5000.0, 20000.0], 12)
    prices = 1000 * np.tile([1.12, 1.05, 1.0], 12) * np.exp(np.random.default_rng(2).normal(0, 0.02, 36))
    verdicts = judge(offers_of(prices, from_kg=sizes), BAND, USUAL)
    assert verdicts.expected[0] > verdicts.expected[2] * 1.07


def test_an_estimated_weight_needs_more_to_be_out_of_line():
    assert _out(offers_of([*LIKE, 1250.0])) == [8]
    assert _out(offers_of([*LIKE, 1250.0], estimated=[False] * 8 + [True])) == []


def test_sensitivity_decides_on_the_doubtful():
    doubtful = offers_of([*LIKE, 1010.0, 1190.0])
    assert [
        _out(doubtful, chosen=Settings(cut_off=SENSITIVITIES[words]))
        for words in ("only what nobody would defend", "anything worth asking about")
    ] == [[], [9]]


def test_a_jump_of_its_own_tips_a_doubtful_price():
    """1,150 is doubtful by itself. Its vendor asked 940 before, and nobody else moved."""
    others, before = [*LIKE, 1010.0, 1000.0], [*LIKE, 1010.0, 1000.0, 940.0]
    prices, day = [*others, 1150.0, *before], [200] * 11 + [100] * 11
    told = offers_of(
        prices, vendor=[*range(11)] * 2, board=[*range(11)] * 2, received=day, shown=[True] * 11 + [False] * 11
    )
    untold = offers_of(prices, vendor=[*range(11)] * 2, shown=[True] * 11 + [False] * 11)
    assert not judge(untold, BAND, USUAL).out_of_line[10]
    verdicts = judge(told, BAND, USUAL)
    assert verdicts.out_of_line[10]
    assert verdicts.jumped[10]


MARKETS = st.lists(st.floats(6.0, 8.0), min_size=1, max_size=25)


@settings(max_examples=40)
@given(MARKETS, st.randoms())
def test_the_order_of_offers_says_nothing(logs, random):
    order = list(range(len(logs)))
    random.shuffle(order)
    prices, points = np.exp(logs), np.linspace(300, 700, len(logs))
    straight = judge(offers_of(prices, caliper_um=points), BAND, USUAL)
    mixed = judge(offers_of(prices[order], vendor=order, caliper_um=points[order]), BAND, USUAL)
    assert mixed.expected == pytest.approx(straight.expected[order], rel=1e-6)
    assert mixed.out_of_line.tolist() == straight.out_of_line[order].tolist()


@settings(max_examples=40)
@given(MARKETS, st.floats(0.01, 100))
def test_the_currency_says_nothing(logs, rate):
    prices = np.exp(logs)
    here = judge(offers_of(prices), BAND, USUAL)
    there = judge(offers_of(prices * rate), Bands(BAND.low * rate, BAND.high * rate, BAND.sources), USUAL)
    assert there.expected == pytest.approx(here.expected * rate, rel=1e-6)
    assert there.out_of_line.tolist() == here.out_of_line.tolist()
