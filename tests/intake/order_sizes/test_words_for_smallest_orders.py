"""What vendors call the smallest order."""

from decimal import Decimal

import pytest

from tests.intake.readings import offer_below
from tests.intake.sheets import lines


def offer(note):
    (line,) = lines([["Board", "g/m²", "µm", "EUR/t"], ["GC2", 250, 410, 1098], [note]]).values()
    return line.offer


@pytest.mark.parametrize(
    ("note", "kg"),
    [
        ("20,000 kg making minimum", 20000), ("No release shall be smaller than 20 tonnes", 20000),
        ("Release of 20 tonnes", None),
    ],
)  # fmt: skip
def test_smallest_orders(note, kg):
    assert offer(note).minimum_kg == kg


@pytest.mark.parametrize(
    "said",
    [
        "No item below 500 kg",
        "Pas de commande sous 500 kg.",
        "Keine Position unter 500 kg",
        "Ingen post under 500 kg",
        "Ningún pedido por debajo de 500 kg",
    ],
)
def test_smallest_orders_now_and_then(said):
    assert offer_below(said, apart=True).minimum_kg == 500


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("Delivered. Two tonnes is the least we ship.", 2000), ("We supply from 1.000 kg upwards", 1000),
        ("We do not enter orders under 5 tonnes", 5000), ("Preise frei Haus, kleinste Bestellmenge 1,5 t", 1500),
        ("Pas de frais. Plus petite commande 3 t", 3000), ("No aceptamos pedidos de menos de 2 t", 2000),
        ("Smallest drop 500 kg", 500), ("Carriage paid. Minimum delivery 1 tonne", 1000),
        ("Free delivery from 5 tonnes", None), ("Minimum delivery 2 weeks", None),
        ("Two tonnes is what a pallet truck carries", None),
    ],
)  # fmt: skip
def test_words_for_the_smallest_order(text, kg):
    assert offer_below(text).minimum_kg == (None if kg is None else Decimal(kg))


@pytest.mark.parametrize(
    "note",
    ["to = 1000 kg; Mindestabn. 2 to", "Mind.-Abn. 2 t", "Mindestbestellm. 2 t", "Min. ord. 2 t", "Cde mini. : 2 t",
     "Pedido mín. 2 t", "Min. kvant. 2 t"],
)  # fmt: skip
def test_words_cut_short_for_the_smallest_order(note):
    assert offer(note).minimum_kg == 2000
