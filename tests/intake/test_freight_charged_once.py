"""Freight that a note gives small orders beside free delivery is one charge, whichever way it is said."""

import pytest

from tests.intake.sheets import lines

_HEAD = ["Board", "g/m²", "µm", "under 6 t EUR/t", "from 6 t EUR/t"]


def charges(said):
    found = lines([[said], _HEAD, ["GC2", 280, 450, 1190, 1140]])
    return [[str(charge.price) for charge in found[cell].offer.charges] for cell in ("D3", "E3")]


@pytest.mark.parametrize(
    "said",
    [
        "Delivered from 6 t. Under 6 t plus freight 52 EUR/t",
        "Free delivery from 6 t; orders under 6 t: freight 52 EUR/t",
        "Frei Haus ab 6 t; Aufträge unter 6 t: Fracht 52 EUR/t",
        "Franco à partir de 6 t ; commandes de moins de 6 t : transport 52 EUR/t",
        "Orders under 6 t: freight 52 EUR/t",
    ],
)
def test_freight_of_small_orders_is_charged_once(said):
    assert charges(said) == [["52"], []]


def test_what_else_small_orders_bear_is_charged_too():
    said = "Free delivery from 6 t; orders under 6 t: freight 52 EUR/t; orders under 6 t: energy surcharge 15 EUR/t"
    assert sorted(charges(said)[0]) == ["15", "52"]
