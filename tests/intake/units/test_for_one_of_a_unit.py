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
