import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from tracker.market.pareto import unbeaten

OFFER = st.tuples(st.integers(1, 6), st.integers(1, 6), st.integers(0, 4))


def _beats(one, other):
    return all(a <= b for a, b in zip(one, other, strict=True)) and one != other


@given(st.lists(OFFER, max_size=30))
def test_the_front_is_what_no_other_beats(drawn):
    offers = [(price, low, low + more) for price, low, more in drawn]
    price, low, high = np.array(offers, dtype=float).reshape(-1, 3).T
    expected = [not any(_beats(other, offer) for other in offers) for offer in offers]
    assert unbeaten(price, low, high).tolist() == expected


def test_an_unknown_lead_time_neither_beats_nor_stays_unbeaten():
    nan = np.nan
    flags = unbeaten(np.array([50.0, 100.0]), np.array([nan, 10.0]), np.array([nan, 20.0]))
    assert flags.tolist() == [False, True]
