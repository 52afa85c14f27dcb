"""One amount behind two charges named in one breath is no sum for the second alone."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.freight.charges import find_charges
from tracker.trade.offer import OPEN

BOARDS = [["Grade", "pt", "lb/MSF", "Price USD/ST"], ["SBS C1S", 16, 67, 1230]]


def charged(note):
    """What the board is charged, by label; None for what is not certain."""
    (line,) = lines([*BOARDS, [], [note]]).values()
    return {one.label: float(one.price) if one.currency != OPEN else None for one in line.offer.charges}


@pytest.mark.parametrize(
    ("note", "label"),
    [
        ("FREIGHT AND FUEL $25/ST", "FREIGHT AND FUEL"),
        ("Freight and energy surcharge $25/ST", "Freight and energy surcharge"),
        ("Freight & energy surcharge $25/ST", "Freight & energy surcharge"),
        ("Freight + fuel $25/ST", "Freight + fuel"),
        ("Fracht und Energiezuschlag 25 USD/ST", "Fracht und Energiezuschlag"),
        ("Transport et supplément énergie 25 USD/ST", "Transport et supplément énergie"),
        ("Transporte y recargo energético 25 USD/ST", "Transporte y recargo energético"),
        ("Frakt och energitillägg 25 USD/ST", "Frakt och energitillägg"),
    ],
)
def test_what_either_comes_to_is_not_certain(note, label):
    assert charged(note) == {label: None}


@pytest.mark.parametrize(
    ("note", "told"),
    [
        ("FREIGHT $30/ST AND FUEL $25/ST", {"FREIGHT": 30, "FUEL": 25}),
        ("Freight $30/ST and energy surcharge $25/ST", {"Freight": 30, "energy surcharge": 25}),
        ("Energy and fuel surcharge $20/ST", {"Energy / fuel surcharge": 20}),
        ("Packing and strapping $12/ST", {"Packing and strapping": 12}),
        ("Freight included and energy surcharge $25/ST", {"energy surcharge": 25}),
        ("plus freight and 3 % energy surcharge", {"energy surcharge": 3}),
    ],
)
def test_charges_with_amounts_of_their_own_and_of_one_kind_are_certain(note, told):
    assert charged(note) == told


@pytest.mark.parametrize(
    "text",
    [
        "Energy and raw material surcharge $25/ST",
        "Surcharge énergie et CO2 : 25 EUR/t",
        "Recargo por energía y CO2 25 EUR/t",
    ],
)
def test_one_surcharge_for_two_things_comes_to_what_it_says(text):
    assert [reading.value for charge in find_charges(text) for reading in charge.amounts] == [25]


def test_which_of_freight_and_a_surcharge_an_amount_is_for_stays_open():
    assert [charge.amounts for charge in find_charges("Freight and energy surcharge $25/ST")] == [()]
