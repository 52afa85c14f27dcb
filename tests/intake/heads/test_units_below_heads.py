"""'Price per' in one row of heads and what it is per in the next."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import State

SHEET = "Format 70 x 100 cm, EUR ab Werk"


@pytest.mark.parametrize(
    ("price", "mass", "sheets"),
    [
        ("Preis pro", "1.000 kg", "1.000 Bogen"),
        ("Preis je", "Tonne", "1000 Bogen"),
        ("Price per", "1,000 kg", "1,000 sheets"),
        ("Prix par", "tonne", "1 000 feuilles"),
        ("Precio por", "1.000 kg", "millar de hojas"),
        ("Pris per", "1 000 kg", "1 000 ark"),
    ],
)
def test_what_a_price_is_per_may_stand_in_the_row_below(price, mass, sheets):
    heads = [["Sorte", "g/m²", "µm", price, price], [None, None, None, mass, sheets]]
    found = lines([[SHEET], [], *heads, ["GC1", 250, 390, 1400, 245], ["GC1", 300, 470, 1380, "289.8"]])
    assert [(line.state, str(line.offer.basis), line.offer.from_kg) for line in found.values()] == [
        (State.ACCEPTED, "tonne", None)
    ] * 2
    assert [line.offer.source.also for line in found.values()] == [("E5",), ("E6",)]


@pytest.mark.parametrize("price", ["Price for", "Preis bei", "Prix pour"])
def test_weights_below_words_for_an_order_are_order_sizes(price):
    heads = [["Sorte", "g/m²", "µm", price, price], [None, None, None, "1000 kg", "5000 kg"]]
    found = lines([["EUR/t"], [], *heads, ["GC1", 250, 390, 1400, 1360]])
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found.values()] == [(1000, 5000), (5000, None)]
