"""Who pays the freight, in words; a term behind the time of delivery; and goods behind what is said of samples."""

import pytest

from tests.intake.lead_times.notes import BOARD
from tests.intake.sheets import lines


def delivered_over(text):
    return lines([*BOARD, [text]])["D2"].offer.delivered


@pytest.mark.parametrize(
    ("text", "delivered"),
    [
        ("We pay the freight.", True), ("Freight is paid by us.", True), ("Customer pays freight.", False),
        ("We deliver free of charge to your door.", True), ("Fracht geht zu unseren Lasten.", True),
        ("Wir tragen die Fracht.", True), ("Fracht trägt der Kunde.", False), ("Nous payons le transport.", True),
        ("Le client paie le transport.", False), ("Pagamos los portes.", True), ("El cliente paga los portes.", False),
        ("Frakten betalas av oss.", True), ("Kunden betalar frakten.", False), ("We pay the freight on samples.", None),
        ("We pay the freight from 10 t.", None),
    ],
)  # fmt: skip
def test_who_pays(text, delivered):
    assert delivered_over(text) is delivered


@pytest.mark.parametrize(
    ("text", "delivered"),
    [
        ("Delivery 3 weeks ex mill.", False), ("Lieferung 3 Wochen ab Werk.", False),
        ("Livraison 3 semaines départ usine.", False), ("Entrega 3 semanas en fábrica.", False),
        ("Leverans 3 veckor från bruk.", False), ("Lead time 3 weeks ex mill, prices delivered.", True),
        ("Leveranstiden från bruk är 3 veckor.", None),
    ],
)  # fmt: skip
def test_behind_the_time_of_delivery(text, delivered):
    assert delivered_over(text) is delivered


@pytest.mark.parametrize(
    ("text", "delivered"),
    [
        ("Samples delivered free, goods ex works.", False), ("Muster frei Haus, Ware ab Werk.", False),
        ("Échantillons franco, marchandise départ usine.", False),
        ("Muestras franco destino, mercancía en fábrica.", False),
        ("Prover fritt levererat, varor fritt bruk.", False), ("Samples delivered free, ex works.", None),
        ("Samples delivered free, returned goods ex works.", None),
    ],
)  # fmt: skip
def test_goods_behind_samples(text, delivered):
    assert delivered_over(text) is delivered
