"""Smallest orders in sentences that ask for them: 'Wir bitten um Bestellungen von mindestens 5 t je Sorte'."""

import pytest

from tracker.intake.values.notes.statements import SaysMinimum, statements


def _least(note):
    return [one.mass.words for one in statements(note) if isinstance(one, SaysMinimum)]


@pytest.mark.parametrize(
    "note",
    [
        "Orders must be at least 4 t per item.",
        "Wir bitten um Bestellungen von mindestens 4 t je Sorte und Grammatur.",
        "Les commandes doivent être d'au moins 4 t par qualité.",
        "Los pedidos han de ser de al menos 4 t por calidad y gramaje.", "Beställningar måste vara på minst 4 t.",
    ],
)  # fmt: skip
def test_the_orders_that_are_asked_for_are_the_smallest(note):
    assert _least(note) == ["4 t"]


@pytest.mark.parametrize(
    "note",
    [
        "Orders must be at least 10 t to be delivered free.", "Orders of at least 10 t earn 2 % discount.",
        "Aufträge müssen mindestens 10 t umfassen, um frei geliefert zu werden.",
        "Les commandes doivent être d'au moins 10 t pour bénéficier d'une remise de 2 %.",
        "Los pedidos han de ser de al menos 10 t para tener un descuento del 2 %.",
    ],
)  # fmt: skip
def test_orders_that_earn_something_are_not(note):
    assert _least(note) == []
