"""Prices with the freight in them, each under an order size, are no charges of the prices beside them."""

import pytest

from tests.intake.sheets import lines


@pytest.mark.parametrize(
    ("unit", "works", "delivered"),
    [
        ("GBP per tonne", "FCA mill", "freight included"),
        ("EUR/t", "ab Werk", "Fracht inklusive"),
        ("EUR/t", "départ usine", "transport inclus"),
        ("EUR/t", "en fábrica", "transporte incluido"),
        ("EUR/ton", "fritt fabrik", "frakt ingår"),
    ],
)
def test_a_price_with_freight_in_it_is_a_delivered_one(unit, works, delivered):
    sizes = ["< 10 t", "> 10 t"]
    over = [[unit], ["", "", works, "", delivered, ""], ["Grade", "g/m²", *sizes, *sizes]]
    found = list(lines([["Tarn Board Ltd"], *over, ["GC1", 300, 1065, 1035, 1115, 1085]]).values())
    assert [line.offer.delivered for line in found] == [False, False, True, True]
    assert all(line.offer.charges == () for line in found)


def test_freight_alone_over_figures_stays_a_charge_that_nobody_knows():
    head = [["EUR/t"], ["", "", "ab Werk", "Fracht"], ["Sorte", "g/m²", "", "Preis lt. Liste"]]
    found = list(lines([["Tarnkarton GmbH"], *head, ["GC1", 300, 1065, 45]]).values())
    assert found[0].offer.charges or found[0].offer.delivered is None
