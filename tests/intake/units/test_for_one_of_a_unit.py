"""'For one tonne', in words."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.basis import Basis


def told(note):
    found = lines([[note], [], ["Board", "g/m²", "µm", "Price"], ["GC1", 240, 380, 1236], ["GD2", 320, 420, 872]])
    return {(line.offer.currency, line.offer.basis, line.offer.from_kg) for line in found.values()}


@pytest.mark.parametrize(
    "note",
    [
        "Prices in EUR for one metric tonne",
        "Preise in Euro für eine Tonne (1000 kg)",
        "Prix en euros pour une tonne",
        "Precios en euros por una tonelada métrica",
        "Priser i euro för ett ton (1000 kg)",
        "Price = euro for one tonne",
    ],
)
def test_a_unit_behind_one_in_words_is_what_prices_are_per(note):
    assert told(note) == {("EUR", Basis.TONNE, None)}


@pytest.mark.parametrize("note", ["Prices in EUR, packed for one pallet", "Prix en euros, livré par une palette"])
def test_one_package_is_none(note):
    assert told(note) == {("EUR", None, None)}


def test_prices_for_orders_of_a_weight_are_per_what_they_say():
    assert told("Prices for orders from 5 tonnes, EUR per tonne") == {("EUR", Basis.TONNE, 5000)}


def one_sheet(price):
    heads = ["Board", "g/m²", "µm", "Sheet, mm", "Price"]
    (line,) = lines([["Prices in EUR"], [], heads, ["GC1", 240, 380, "700 x 1000", price]]).values()
    return line.state, line.offer.price and f"{line.offer.price:f}", line.offer.basis


@pytest.mark.parametrize(
    "price",
    ["0.341 ea. sheet", "0.341 each", "0,341 je Bogen", "€0,341 jeder Bogen", "0,341 € chaque feuille", "€0,341 c/u",
     "0,341 cada una", "0,341 € varje ark"],
)  # fmt: skip
def test_each_sheet_is_priced_by_the_sheet(price):
    assert one_sheet(price) == ("accepted", "0.341", Basis.SHEET)


@pytest.mark.parametrize("price", ["44 ea. roll", "44 ea. ream", "44 each pallet", "44 € chaque rame"])
def test_each_of_another_thing_is_asked_about(price):
    assert one_sheet(price) == ("question", "44", None)
