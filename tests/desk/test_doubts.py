"""Figures that a person typed and most likely did not mean: said once, in figures that can be read aloud."""

from datetime import date, timedelta
from decimal import Decimal

import pytest

from tracker.desk.level_doubt import doubt_level
from tracker.desk.opening import Desk
from tracker.desk.rates import doubt_rate, set_rate
from tracker.trade.level import LevelFigure


@pytest.fixture
def rated(desk: Desk) -> Desk:
    """A desk that knows the dollar at 0.9 EUR since ten days ago."""
    set_rate(desk, "USD", Decimal("0.9"), desk.today - timedelta(10))
    return desk


@pytest.mark.parametrize(
    ("euros", "said"),
    [
        ("9", "1 USD at 9 EUR is 10 times the 0.9 EUR of"),
        ("0.09", "1 USD at 0.09 EUR is 10 times less than the 0.9 EUR of"),
        ("3.15", "1 USD at 3.15 EUR is 3.5 times the 0.9 EUR of"),
        ("900", "1 USD at 900 EUR is 1,000 times the 0.9 EUR of"),
    ],
)
def test_a_rate_far_from_the_last_one_is_doubted_in_plain_figures(rated: Desk, euros: str, said: str) -> None:
    doubt = doubt_rate(rated, "USD", Decimal(euros), rated.today)
    assert doubt is not None
    assert doubt.startswith(said)


@pytest.mark.parametrize("euros", ["0.31", "0.9", "2.6"])
def test_a_rate_near_the_last_one_is_not_doubted(rated: Desk, euros: str) -> None:
    assert doubt_rate(rated, "USD", Decimal(euros), rated.today) is None


def test_a_rate_of_a_day_to_come_is_doubted(rated: Desk) -> None:
    doubt = doubt_rate(rated, "USD", Decimal("0.9"), date(rated.today.year + 1, rated.today.month, 20))
    assert doubt is not None
    assert "still to come" in doubt


@pytest.mark.parametrize(("days", "doubted"), [(0, False), (90, False), (366, False), (800, True)])
def test_a_level_from_far_ahead_is_doubted(rated: Desk, days: int, doubted: bool) -> None:
    doubt = doubt_level(rated, "SBS", LevelFigure(Decimal(1340), "USD"), rated.today + timedelta(days))
    assert (doubt is not None) is doubted


@pytest.mark.parametrize("per_tonne", ["66", "6600"])
def test_a_level_that_no_board_costs_is_doubted(rated: Desk, per_tonne: str) -> None:
    doubt = doubt_level(rated, "SBS", LevelFigure(Decimal(per_tonne), "USD"), rated.today)
    assert doubt is not None
    assert "which no carton board costs" in doubt


def test_a_rate_typed_the_other_way_round_is_doubted_with_the_right_one(rated: Desk) -> None:
    doubt = doubt_rate(rated, "USD", Decimal("1.11"), rated.today)
    assert doubt is not None
    assert doubt.startswith("1 USD at 1.11 EUR is what 1 EUR is in USD, by your own rate")
    assert doubt.endswith("the other way round it is 0.9009.")


def test_a_rate_near_one_is_the_same_either_way_and_not_doubted(rated: Desk) -> None:
    set_rate(rated, "CHF", Decimal("0.99"), rated.today - timedelta(10))
    assert doubt_rate(rated, "CHF", Decimal("1.01"), rated.today) is None
