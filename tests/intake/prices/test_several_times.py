"""Prices of years, quarters and months beside each other: the one in force is offered, or it is asked which."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import State

HEAD = ["Board", "pt", "lb/MSF"]
SBS = ["SBS C1S", 18, 75]


def in_2026(*heads, title="Price list of 1 March 2026"):
    """The states of two prices under these heads, in a list of 2026."""
    rows = [[title], [*HEAD, *heads], [*SBS, 1100, 1000]]
    return {cell: line.state for cell, line in lines(rows).items()}


@pytest.mark.parametrize("dated", ["Price 2025", "Price 2025 USD/ST"])
def test_last_years_price_beside_the_plain_one_is_no_offer(dated):
    assert in_2026("Price USD/ST", dated) == {"D3": State.ACCEPTED}
    assert in_2026(dated, "Price USD/ST") == {"E3": State.ACCEPTED}


@pytest.mark.parametrize("dated", ["Price 2026 USD/ST", "Price 2027 USD/ST"])
def test_a_price_of_this_year_or_the_next_beside_the_plain_one_is_asked(dated):
    assert State.ACCEPTED not in in_2026("Price USD/ST", dated).values()


def test_this_years_price_beside_the_next_ones_is_asked_about():
    assert in_2026("Price 2026 USD/ST", "Price 2027 USD/ST") == {"D3": State.QUESTION}


@pytest.mark.parametrize(
    ("heads", "offered"),
    [
        (("Q4 2025 price", "Q1 2026 price"), {"E3": State.ACCEPTED}),
        (("Price January", "Price March"), {"E3": State.ACCEPTED}),
        (("Q1 2026 price", "Q2 2026 price"), dict.fromkeys(("D3", "E3"), State.QUESTION)),
        (("Q3 2025 price", "Q4 2025 price"), dict.fromkeys(("D3", "E3"), State.QUESTION)),
        (("2025", "2026"), {"E3": State.ACCEPTED}),
    ],
)
def test_the_lists_own_date_tells_which_period_is_the_last(heads, offered):
    assert in_2026(*heads, title="Price list of 1 March 2026, USD/ST") == offered


def test_a_list_without_a_date_does_not_tell_which_year_is_over():
    states = in_2026("Price USD/ST", "Price 2025 USD/ST", title="Price list")
    assert State.ACCEPTED not in states.values()
