"""A currency of 'coated kraft' is that of no uncoated kraft."""

import pytest

from tests.intake.sheets import lines

_BOARDS = (["GD2", 300, 400, 1850], ["CUK", 320, 457, 1095], ["UUK", 320, 457, 1000], ["SBS", 300, 357, 2400])


def _currencies(note):
    found = lines([[note], ["Product", "g/m²", "µm", "Price per tonne"], *_BOARDS])
    return [line.offer.currency for line in found.values()]


@pytest.mark.parametrize(
    "note",
    [
        "Prices are in euros, except coated kraft, which is imported and quoted in US dollars.",
        "Preise in Euro, ausgenommen gestrichener Kraftkarton, der in US-Dollar berechnet wird.",
        "Prix en euros, sauf le kraft couché, qui est coté en dollars US.",
        "Los precios están en euros, salvo el kraft recubierto, que es importado y se cotiza en dólares de EE. UU.",
        "Priser i euro, utom bestruken kraft, som prissätts i USD.",
    ],
)
def test_it_is_that_of_the_coated_one(note):
    assert _currencies(note) == ["EUR", "USD", "EUR", "EUR"]


@pytest.mark.parametrize(
    ("note", "found"),
    [
        ("Prices are in euros, except uncoated kraft, which is quoted in US dollars.", ["EUR", "EUR", "USD", "EUR"]),
        ("Prices are in euros, except kraft, in US dollars.", ["EUR", "USD", "USD", "EUR"]),
        ("Prices are in euros, except coated board, in US dollars.", [None] * 4),
    ],
)
def test_others_are_meant_by_other_words(note, found):
    assert _currencies(note) == found


@pytest.mark.parametrize("board", ["Solid bleached board, C1S", "Coated recycled board, C1S"])
def test_a_coating_behind_a_comma_names_no_board_of_its_own(board):
    heading = [f"{board} - US$ per short ton - 4 weeks"]
    found = lines([["Caliper (pt)", "Weight (lb/MSF)", "Price"], heading, [16, 67, 1220], [18, 75, 1211]])
    assert [(str(line.state), line.offer.currency) for line in found.values()] == [("accepted", "USD")] * 2
