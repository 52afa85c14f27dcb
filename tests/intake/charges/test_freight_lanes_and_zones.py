"""Freight that leads to a town, and tables of freight by zone beside the boards of a list."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import OPEN

ROWS = [["CUK", 440, 350, 1058], ["CUK", 490, 380, 1050], ["CRB C1S", 590, 450, 868]]


def below(*notes):
    title = ["Harwick Board Inc."], ["USD per tonne, FOB mill"], []
    head = ["Board", "µm", "g/m²", "Price"]
    return lines([*title, head, *ROWS, [], *[[note] for note in notes]])["D5"].offer


@pytest.mark.parametrize(
    ("note", "price"),
    [
        ("Freight to Dorwell: add US$ 41.90 per tonne.", "41.90"),
        ("Freight to your plant in Dorwell: US$ 41.90 per tonne", "41.90"),
        ("Fracht nach Bad Orlau 32 USD/t", "32"), ("Transport à Lanvoy : 45 USD/t en sus", "45"),
        ("Transport en sus : 45 USD/t jusqu'à votre usine de Lanvoy.", "45"),
        ("Flete a Zoralba: 38 USD/t", "38"), ("Frakt till Norvik 35 USD/ton tillkommer", "35"),
    ],
)  # fmt: skip
def test_freight_to_a_town_is_a_charge(note, price):
    (charge,) = below(note).charges
    assert f"{charge.price:f}" == price


@pytest.mark.parametrize(
    "notes",
    [
        ["Freight to Dorwell US$ 41/t; to Boswick US$ 52/t"], ["Freight to Alaska: add US$ 80/t"],
        ["Freight to Canada US$ 80/t"], ["Freight to Zone 1: US$ 41/t"],
    ],
)  # fmt: skip
def test_freight_to_several_towns_or_to_a_whole_country_is_none_that_is_known(notes):
    assert below(*notes).charges == ()


def test_two_notes_of_two_towns_leave_the_delivered_cost_open():
    offer = below("Freight to Dorwell: add US$ 41 per tonne.", "Freight to Boswick: add US$ 52 per tonne.")
    assert [charge.currency for charge in offer.charges] == [OPEN]


ZONES = [
    ("Freight zone", "States", "US$/cwt"), ("Frachtzone", "PLZ", "EUR/t"), ("Zone de transport", "Départements", "€/t"),
    ("Zona de portes", "Provincias", "€/t"), ("Fraktzon", "Län", "SEK/ton"),
]  # fmt: skip


@pytest.mark.parametrize("heads", ZONES)
@pytest.mark.parametrize("price", ["Price", "Base price"])
def test_zones_with_their_rates_beside_boards_are_no_offers(heads, price):
    rates = [[1, "OH, IN", 1.2], [2, "PA, NY", 1.75], [3, "TX, OK", 2.9]]
    rows = [[*board, None, None, *rate] for board, rate in zip(ROWS, rates, strict=True)]
    head = ["Board", "µm", "g/m²", price, None, None, *heads]
    found = lines([["Harwick Board Inc."], ["Prices in USD per tonne, FOB mill"], [], head, *rows])
    assert [(cell, line.state, f"{line.offer.price:f}") for cell, line in found.items()] == [
        ("D5", "accepted", "1058"), ("D6", "accepted", "1050"), ("D7", "accepted", "868"),
    ]  # fmt: skip


def test_a_price_delivered_to_a_place_beside_the_boards_is_an_offer():
    rows = [[*board[:3], None, "Dorwell", 1090 + place] for place, board in enumerate(ROWS)]
    found = lines([["USD per tonne"], ["Board", "µm", "g/m²", None, "Destination", "USD/t"], *rows])
    assert list(found) == ["F3", "F4", "F5"]
