import pytest

from tests.market.making import offers_of
from tracker.market.history import history_of


def _year(prices, **columns):
    """The first half of `prices` on day 100, the second on day 200, of the same boards."""
    half = len(prices) // 2
    boards = [*range(half)] * 2
    plain = {"vendor": boards, "board": boards, "received": [100] * half + [200] * half}
    return offers_of(prices, **{**plain, **columns})


def test_a_board_against_its_own_last_price_and_its_grade():
    history = history_of(_year([1000.0, 900.0, 950.0, 1000.0, 1200.0, 918.0, 969.0, 1020.0]), 4)
    assert history.before == 0
    assert history.change == pytest.approx(0.20)
    assert history.grade_change == pytest.approx(0.02)
    assert history.boards == 3


def test_two_other_boards_are_too_few_to_say_how_the_grade_moved():
    history = history_of(_year([1000.0, 900.0, 950.0, 1200.0, 918.0, 969.0]), 3)
    assert (history.grade_change, history.boards) == (None, 2)


def test_the_last_price_before_counts_not_the_first():
    offers = offers_of([1000.0, 1100.0, 1210.0], board=[0, 0, 0], vendor=[0, 0, 0], received=[100, 150, 200])
    assert history_of(offers, 2).before == 1
    assert history_of(offers, 0) is None


@pytest.mark.parametrize("missing", [{"board": -1}, {"received": -1}])
def test_without_board_or_day_there_is_no_history(missing):
    assert history_of(_year([1000.0, 1200.0], **missing), 1) is None
