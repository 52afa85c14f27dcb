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
