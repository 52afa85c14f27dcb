"""Prices told apart by a letter that a key explains: 'Price A', and 'A = EUR per tonne, EXW'."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import State

HEAD = ["Board", "g/m²", "µm"]
BOARDS = [["GC2", 240, 390, 1100, 1150], ["GD2", 310, 410, 800, 850]]


def listed(heads, *notes, title="Price list"):
    return lines([[title], [], [*HEAD, *heads], *BOARDS, [], *([note] for note in notes)])


def freights(found):
    return {cell: (line.offer.basis, line.offer.delivered) for cell, line in found.items() if cell.endswith("4")}


@pytest.mark.parametrize(
    ("heads", "notes"),
    [
        (("Precio A", "Precio B"), ("A = EUR por tonelada métrica, EXW", "B = EUR por tonelada métrica, DAP")),
        (("Preis A", "Preis B"), ("A = EUR je Tonne ab Werk", "B = EUR je Tonne frei Haus")),
        (("Prix A", "Prix B"), ("A : EUR la tonne départ usine ; B : EUR la tonne franco",)),
        (("Pris A", "Pris B"), ("A = EUR per 1000 kg fritt fabrik, B = EUR per 1000 kg levererat",)),
        (("Price A", "Price B"), ("Price A: EUR/t ex works", "Price B: EUR/t delivered")),
        (("Price (1)", "Price (2)"), ("(1) EUR/t ex works", "(2) EUR/t delivered")),
        (("EUR/t (1)", "EUR/t (2)"), ("(1) ex works", "(2) delivered")),
    ],
)
def test_a_key_says_in_what_and_at_whose_freight_each_price_is(heads, notes):
    found = listed(heads, *notes)
    assert {line.state for line in found.values()} == {State.ACCEPTED}
    assert freights(found) == {"D4": ("tonne", False), "E4": ("tonne", True)}


def test_a_key_beside_the_table_is_read_as_well():
    rows = [[*HEAD, "Price A", "Price B", None, "Key"], *BOARDS]
    rows[1] = [*rows[1], None, "A = EUR/t, EXW"]
    rows[2] = [*rows[2], None, "B = EUR/t, DAP"]
    assert {line.state for line in lines(rows).values()} == {State.ACCEPTED}


@pytest.mark.parametrize(
    ("heads", "notes"),
    [
        (("Price A", "Price B"), ("A = EXW",)),
        (("Price A", "Price B"), ("A = key accounts", "B = all other customers")),
        (("Price (1)", "Price (2)"), ("(1) freight included", "(2) brightness 84 %")),
    ],
)
def test_letters_that_are_not_all_explained_are_asked_about(heads, notes):
    found = listed(heads, *notes, title="Prices in EUR/t")
    assert {line.state for line in found.values()} == {State.QUESTION}
