"""Prices of several rounds of bids beside each other: the last is the offer, or it is asked."""

import pytest

from tests.intake.sheets import lines

HEAD, SBS, CRB = ["Board", "pt", "lb/MSF"], ["SBS C1S", 18, 75], ["CRB C1S", 20, 79]


def states(*heads):
    rows = [["USD/ST"], [*HEAD, *heads], [*SBS, 1210, 1190], [*CRB, 894, 874]]
    return {cell: str(line.state) for cell, line in lines(rows).items()}


@pytest.mark.parametrize(
    ("first", "last"),
    [
        ("Initial offer", "Revised offer"), ("First offer", "Best and final"), ("Original", "Revised 11/15"),
        ("Opening price USD/ST", "Agreed price USD/ST"), ("Erstangebot", "Nachverhandelt"),
        ("1. Angebot", "Schlussangebot"), ("Offre initiale", "Offre révisée"), ("Oferta inicial", "Oferta revisada"),
        ("Första anbud", "Slutbud"), ("Offert 1", "Förhandlat pris"),
    ],
)  # fmt: skip
def test_the_last_round_is_the_offer(first, last):
    assert states(first, last) == {"E3": "accepted", "E4": "accepted"}


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("1. Angebot", "2. Angebot"), ("Round 1", "Round 2"), ("Première offre", "Contre-offre"),
        ("1ª oferta", "2ª oferta"), ("Första bud", "Motbud"), ("Original price", "Revised price from 1 Jan 2027"),
    ],
)  # fmt: skip
def test_of_rounds_without_a_last_one_it_is_asked(first, second):
    assert set(states(first, second).values()) == {"question"}


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("20 ST", "5 ST"), ("Original mill USD/ST", "Second mill USD/ST"),
        ("Rolls, final price", "Sheets, first price"), ("Rolle", "Bogen"), ("Bobines", "Formats"),
        ("Bobinas", "Hojas"), ("Rulle", "Ark"),
    ],
)  # fmt: skip
def test_other_prices_beside_each_other_are_all_offered(one, other):
    assert list(states(one, other)) == ["D3", "E3", "D4", "E4"]


def test_of_three_rounds_the_one_agreed_is_the_offer():
    rows = [["USD/ST"], [*HEAD, "Opening", "Counter", "Agreed"], [*SBS, 1210, 1150, 1190], [*CRB, 894, 850, 874]]
    assert {cell: str(line.state) for cell, line in lines(rows).items()} == {"F3": "accepted", "F4": "accepted"}


@pytest.mark.parametrize(
    ("first", "last"),
    [
        ("Initial offer Oct 1", "Revised offer Nov 15"), ("Erstangebot", "Schlussangebot"),
        ("Offre initiale", "Offre révisée"), ("Oferta inicial", "Oferta final"), ("Första anbud", "Slutanbud"),
    ],
)  # fmt: skip
def test_rows_below_an_earlier_round_are_asked_about(first, last):
    rows = [[*HEAD, "USD/ST"], [first], [*SBS, 1210], [last], [*CRB, 874]]
    assert {cell: str(line.state) for cell, line in lines(rows).items()} == {"D3": "question", "D5": "accepted"}
    alone = [[first], [*HEAD, "USD/ST"], [*SBS, 1210]]
    assert {cell: str(line.state) for cell, line in lines(alone).items()} == {"D3": "accepted"}
