"""Prices per something misspelt, or that no list of units knows."""

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Grade", "Caliper (pt)", "Basis weight (lb/MSF)"]


def listed(price, *figures):
    boards = [["SBS C1S", 16, 68], ["CRB C1S", 18, 71]]
    rows = [["Prices in US dollars"], [*HEAD, price]]
    return lines(rows + [[*board, figure] for board, figure in zip(boards, figures, strict=True)])


@pytest.mark.parametrize(
    ("price", "basis"),
    [
        ("Pirce per hundredwt", "cwt"),
        ("Price per hundredwieght", "cwt"),
        ("Price / hunderdweight", "cwt"),
        ("Price per thousnd sq ft", "msf"),
    ],
)
def test_a_units_long_word_with_a_slip_in_it_is_read(price, basis):
    found = listed(price, 58.95, 44.7)
    assert [(str(one.state), str(one.offer.basis)) for one in found.values()] == [("accepted", basis)] * 2


@pytest.mark.parametrize(
    "price",
    ["Price per batch", "Price per", "Preis je Einheit", "Prix par lot", "Precio por lote", "Pris per parti"],
)
def test_prices_per_something_unknown_are_asked_about_and_not_passed_over(price):
    found = listed(price, 58.95, 44.7)
    assert [codes(one) for one in found.values()] == [{"basis-unknown"}] * 2


def test_counts_below_such_a_head_say_how_many_units_a_price_is_for():
    rows = [[*HEAD, "Price USD/lb", "Price per"], ["SBS C1S", 16, 68, 58.95, 100], ["CRB C1S", 18, 71, 44.7, 100]]
    assert {cell[0] for cell in lines(rows)} == {"D"}
