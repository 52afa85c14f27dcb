"""Charges that a sentence calls by 'it', behind the one that names them: 'Freight is extra. We bill it at €48 per
tonne'."""

import pytest

from tests.intake.sheets import lines


def _charges(note):
    found = lines([["Tarnwell Board Ltd"], ["Grade", "g/m²", "µm", "EUR/tonne"], ["GC1", 300, 490, 1180], [note]])
    (line,) = found.values()
    return [(charge.freight, f"{charge.price:f}", str(charge.basis)) for charge in line.offer.charges]


@pytest.mark.parametrize(
    "note",
    [
        "Freight is not in these prices; we bill it at 48 EUR per tonne.",
        "Freight is extra. It is billed at €48 per tonne.",
        "Freight is not included, we charge it at €48 per tonne.",
        "Die Fracht ist nicht enthalten; wir berechnen sie mit 48 EUR je Tonne.",
        "Die Fracht ist nicht enthalten, sie wird mit 48 EUR je Tonne berechnet.",
        "Le transport n'est pas compris dans les prix ; nous le facturons 48 EUR par tonne.",
        "El transporte no está incluido en los precios; lo facturamos a 48 EUR por tonelada.",
        "Frakten ingår inte i priserna; vi debiterar den med 48 EUR per ton (1 000 kg).",
    ],
)
def test_what_it_comes_to(note):
    assert _charges(note) == [(True, "48", "tonne")]


@pytest.mark.parametrize(
    "note",
    [
        "Sheeting is available on request; we bill it at 42 EUR/t.",
        "Freight is not in these prices; we bill it at cost.",
        "Freight is not in these prices for orders under 5 t; we bill it at €30 per tonne.",
        "Freight is included in the prices; we bill it at €30 per tonne for less than 5 t.",
        "Freight is not included; we bill pallets at €15 each.",
        "Freight is not included. We bill in EUR per tonne.",
    ],
)
def test_no_charge_of_every_order(note):
    assert _charges(note) == []
