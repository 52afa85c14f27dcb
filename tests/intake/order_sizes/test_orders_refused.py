"""Smallest orders that a sentence tells by what it refuses, and small orders that are taken on other terms."""

import pytest

from tests.intake.sheets import lines


def minimum(note):
    (line,) = lines([["Board", "g/m²", "µm", "EUR/kg"], ["GC2", 250, 410, 1.1], [note]]).values()
    return line.offer.minimum_kg


@pytest.mark.parametrize(
    "note",
    [
        "No order under 3,000 kg can be accepted.", "Bestellungen unter 3 t können wir nicht annehmen.",
        "Nous ne pouvons accepter de commande de moins de 3 t.", "No podemos aceptar pedidos de menos de 3 t.",
        "Order under 3 t kan inte tas emot.", "We make 3,000 kg as a minimum per caliper.",
    ],
)  # fmt: skip
def test_smaller_orders_are_refused(note):
    assert minimum(note) == 3000


@pytest.mark.parametrize(
    "note",
    [
        "We load 20,000 kg as a minimum per truck.", "For free freight 5,000 kg is the minimum.",
        "No order under 3,000 kg ships prepaid.", "No order under 3,000 kg rides on our truck.",
        "No order under 3,000 kg is taken at these prices.", "No order under 3,000 kg is made up with a discount.",
        "Fracht: Bestellungen unter 3 t werden nicht ausgeführt frei Haus.",
    ],
)  # fmt: skip
def test_smaller_orders_go_without_something(note):
    assert minimum(note) is None


@pytest.mark.parametrize(
    "note",
    [
        "Orders under 3,000 kg are not accepted, prices are net.", "Nothing under 3,000 kg is accepted.",
        "No order accepted under 3,000 kg, all prices delivered.",
        "We cannot accept orders of less than 3,000 kg per item",
        "Unter 3 t liefern wir nicht, Preise frei Haus.", "Les commandes de moins de 3 t ne peuvent être acceptées.",
        "We cannot run less than 3,000 kg of an item.", "On ne fabrique pas moins de trois tonnes d'une sorte.",
        "Pedidos inferiores a 3 t no se aceptan, precios netos.", "Vi tillverkar inte under 3 ton.",
    ],
)  # fmt: skip
def test_what_else_is_told_behind_a_comma_changes_nothing(note):
    assert minimum(note) == 3000


@pytest.mark.parametrize(
    "note",
    [
        "Rolls under 3,000 kg cannot be made.", "Returns under 300 kg cannot be taken.",
        "Claims under 300 kg are refused",
        "Reklamationen unter 300 kg können nicht angenommen werden.", "Retours de moins de 300 kg refusés.",
        "Devoluciones inferiores a 300 kg no se admiten.", "Reklamationer under 300 kg kan inte tas emot.",
    ],
)  # fmt: skip
def test_what_is_refused_and_is_no_order_bounds_none(note):
    assert minimum(note) is None


@pytest.mark.parametrize(
    "note",
    [
        "Orders under 3,000 kg cannot be made in less than 6 weeks.",
        "Orders under 3,000 kg cannot be taken on our truck.",
        "We cannot run less than 3,000 kg on our sheeter.",
        "Orders under 3,000 kg cannot be filled from the mill, only from stock.",
        "Kein Auftrag unter 3 t geht per Bahn.",
        "No podemos atender pedidos de menos de 3 t en 2 semanas.", "Ningún pedido inferior a 3 t viaja por tren.",
    ],
)  # fmt: skip
def test_orders_refused_on_some_terms_are_taken_on_others(note):
    assert minimum(note) is None


@pytest.mark.parametrize(
    ("note", "kg"),
    [
        ("We sell 3,000 kg as a minimum.", 3000), ("Wir fertigen 3 t als Mindestmenge je Sorte.", 3000),
        ("Commande de 3 t au minimum", 3000), ("Pedidos de 3 t como mínimo", 3000),
        ("Order om 3 ton som minimum", 3000),
        ("Annual volume 500 t as a minimum.", None), ("Rebate tier: 100 t as a minimum.", None),
        ("We keep 20,000 kg as a minimum of each grade in stock.", None), ("3,000 kg is the minimum charge.", None),
        ("Core strength 500 kg as a minimum", None), ("3,000 kg is a minimum, less on request.", None),
        ("Abnahme von 500 t als Mindestmenge pro Jahr.", None), ("Volume annuel de 500 t au minimum", None),
        ("Contrato anual de 500 t como mínimo", None), ("Årsvolym 500 ton som minimum", None),
        ("Annual volume 500 t minimum", None),
    ],
)  # fmt: skip
def test_only_an_order_is_a_minimum_of_orders(note, kg):
    assert minimum(note) == kg
