"""Three cells of a row below the boards: what is charged, how much, and per what."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import OPEN, State

BOARDS = [["Board", "pt", "lb/MSF", "Price USD/ST"], ["SBS", 18, 77, 1228], ["CUK", 21, 84, 1010]]


def charged(*row):
    found = lines([["All prices delivered"], *BOARDS, row])
    assert found["D3"].state is State.ACCEPTED
    return [(one.label, None if one.currency == OPEN else one.price, one.basis) for one in found["D3"].offer.charges]


@pytest.mark.parametrize(
    ("name", "unit", "label"),
    [
        ("Freight to you", "USD/ST", "Freight"),
        ("Freight:", "per ST", "Freight"),
        ("Sheeting", "per short ton", "Sheeting"),
        ("Energy surcharge", "USD/ST", "Energy surcharge"),
    ],
)
def test_a_charge_is_read_from_them(name, unit, label):
    assert charged(name, 45, unit) == [(label, 45, "short_ton")]


@pytest.mark.parametrize("name", ["Small order", "Roll wrap"])
def test_the_unit_of_something_else_is_not_that_of_the_prices(name):
    assert all(price is None for _, price, _ in charged(name, 1.2, "$/cwt"))


def test_a_head_of_freight_included_is_the_price_with_freight():
    head, *boards = BOARDS
    for words in ("Incl. freight $45/ST", "$45/ST freight included"):
        found = lines([[*head, words], *([*board, board[-1] + 45] for board in boards)])
        assert [(line.state, line.offer.delivered) for line in found.values()] == [
            (State.ACCEPTED, None),
            (State.ACCEPTED, True),
        ] * 2
