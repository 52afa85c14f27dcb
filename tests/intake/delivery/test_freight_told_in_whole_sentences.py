"""Freight that a sentence puts into the prices or leaves out of them, with where it goes or what is done instead."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.notes.statements import statements


def _delivered(note):
    return [one.delivered for one in statements(note) if isinstance(one, Delivery)]


@pytest.mark.parametrize(
    "note",
    [
        "Prices in EUR per tonne, freight to you is included.",
        "Preise in EUR/t, die Fracht zu Ihnen ist eingerechnet.",
        "Prix en EUR/t, le transport jusque chez vous est compris.",
        "Precios en EUR/t, el transporte hasta su casa está incluido.",
        "Priser i EUR/ton, frakten till er är inräknad.",
        "Precios en euros por tonelada, para mercancía puesta en destino dentro de la península.",
    ],
)  # fmt: skip
def test_freight_to_the_buyer_is_in_the_prices(note):
    assert _delivered(note) == [True]


@pytest.mark.parametrize(
    "note",
    [
        "Freight is not included but charged by weight and distance.",
        "Fracht ist nicht enthalten, sondern wird nach Gewicht und Entfernung berechnet.",
        "Le port n'est pas compris, mais facturé selon le poids et la distance.",
        "El transporte no está incluido, sino que se cobra según peso y distancia.",
        "Frakt ingår inte utan debiteras efter vikt och avstånd.",
        "Prix franco notre dépôt.",
        "Precios franco nuestro almacén.",
    ],
)
def test_freight_is_not_in_the_prices(note):
    assert _delivered(note) == [False]


def test_freight_that_is_free_from_some_weight_on_is_left_open():
    assert _delivered("Freight is not included but orders over 10 t are delivered free.") == [None]


@pytest.mark.parametrize("note", ["Ofertas recibidas, todas franco nuestro almacén.", "All bids FOB our plant."])
def test_our_place_is_the_buyers_where_he_writes_of_bids(note):
    assert _delivered(note) == [True]


def test_a_price_at_our_store_is_left_open():
    assert _delivered("Precio puesto en nuestro almacén de Zaragoza.") == []


LISTED = [
    ("Prices include: freight, energy surcharge", True), ("Included: freight", True),
    ("Included in prices: energy surcharge, freight", True), ("Enthalten: Fracht, Energie", True),
    ("Im Preis enthalten: Fracht", True), ("Inclus : transport, énergie", True), ("Incluido: flete", True),
    ("Ingår: frakt, energitillägg", True), ("Included: palletizing; not included: freight", False),
    ("Nicht enthalten: Fracht", False), ("Prices include: freight allowance", None),
    ("Samples include: freight", None), ("Included: palletizing", None),
]  # fmt: skip


@pytest.mark.parametrize(("note", "delivered"), LISTED)
def test_freight_in_a_list_of_what_prices_hold(note, delivered):
    rows = [["Tannegg 2027"], ["Grade", "g/m²", "Price EUR/t"], ["GC1", 250, 1200], [], [note]]
    assert [line.offer.delivered for line in lines(rows).values()] == [delivered]
