"""'2T 2026' is a quarter of a year in Spain and France, and no order of two tonnes."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.offer import State


def headed(*heads):
    return [
        ["Cartonajes Ribalta, S.A."],
        ["Calidad", "g/m²", "Espesor µm", *heads],
        ["GC1", 250, 415, 1290, 1315],
        ["GC2", 280, 470, 1240, 1268],
    ]


@pytest.mark.parametrize(("old", "new"), [("3T 2025", "2T 2026"), ("T3 2025", "T2 2026"), ("4T 2025", "1T 2026")])
def test_prices_of_two_quarters_are_asked_as_such(old, new):
    found = lines(headed(f"Precios anteriores €/t {old}", f"Precio vigente €/t {new}"))
    assert [found[cell].state for cell in ("E3", "E4")] == [State.ACCEPTED] * 2
    assert (found["E3"].offer.from_kg, found["E3"].offer.below_kg) == (None, None)
    assert "D3" not in found


def test_tonnes_before_a_year_that_is_none_stay_an_order_size():
    found = lines(headed("Precio €/t hasta 2 t", "Precio €/t desde 2 t"))
    assert [found[cell].offer.below_kg for cell in ("D3", "E3")] == [2000, None]


@pytest.mark.parametrize("head", ["{} EUR/t", "Precio {} EUR/t", "EUR/t {}", "Prix {} (EUR/t)"])
@pytest.mark.parametrize(("first", "second"), [("1T 2026", "2T 2026"), ("4T/2026", "1T/2027")])
def test_beside_the_unit_of_the_price_they_size_no_order(head, first, second):
    found = lines(headed(head.format(first), head.format(second)))
    assert found
    assert not any("bracket-unread" in codes(line) for line in found.values())
    assert {(line.offer.from_kg, line.offer.below_kg) for line in found.values()} == {(None, None)}


def test_tonnes_to_tonnes_beside_it_are_an_order_size():
    found = lines(headed("EUR/t 1-3 t", "EUR/t 4-20 t"))
    assert [found[cell].offer.from_kg for cell in ("D3", "E3")] == [1000, 4000]
