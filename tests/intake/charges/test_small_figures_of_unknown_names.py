"""A small sum under a name that nobody knows, beside the price, is left open: nothing calls it a charge."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.offer import OPEN


def charges(head, *below):
    rows = [["Grade", "Caliper", "USD/ST", head], ["SBS", "18 pt", 1200, below[0]], ["CUK", "20 pt", 1100, below[1]]]
    return [
        ([charge.price if charge.currency != OPEN else None for charge in line.offer.charges], codes(line))
        for line in lines(rows).values()
    ]


@pytest.mark.parametrize("head", ["Zorb USD/ST", "Quell USD/ST", "Roll width USD/ST"])
def test_it_is_charged_to_nobody_and_told(head):
    for amounts, noted in charges(head, 30, 32):
        assert amounts == [None]
        assert "number-ambiguous" in noted


@pytest.mark.parametrize(
    "head",
    ["Energy USD/ST", "Surcharge USD/ST", "Zuschlag USD/ST", "Supplément USD/ST", "Recargo USD/ST", "Tillägg USD/ST"],
)
def test_what_is_called_a_charge_is_one(head):
    assert [amounts for amounts, _ in charges(head, 30, 32)] == [[30], [32]]


@pytest.mark.parametrize("head", ["Zorb", "Zone", "Rating"])
def test_a_figure_without_money_is_nothing_of_the_kind(head):
    assert [amounts for amounts, _ in charges(head, 3, 4)] == [[], []]


def test_a_small_price_under_such_a_name_is_asked_about():
    rows = [["Grade", "Caliper", "USD/ST", "Zorb"], ["SBS", "18 pt", 1200, "$30/ST"], ["CUK", "20 pt", 1100, "$32/ST"]]
    states = {cell: str(line.state) for cell, line in lines(rows).items()}
    assert states == {"C2": "accepted", "D2": "question", "C3": "accepted", "D3": "question"}


def test_one_as_high_as_the_prices_beside_it_is_a_price():
    rows = [
        ["Grade", "Caliper", "USD/ST", "Kelm"],
        ["SBS", "18 pt", 1200, "$1230/ST"],
        ["CUK", "20 pt", 1100, "$1132/ST"],
    ]
    assert [str(line.state) for line in lines(rows).values()] == ["accepted"] * 4
