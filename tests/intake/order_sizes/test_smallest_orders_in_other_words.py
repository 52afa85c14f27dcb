"""Smallest orders that are told as what orders must be at least, or as what is not made."""

import pytest

from tests.intake.order_sizes.test_smallest_orders_of_each_board import leasts


@pytest.mark.parametrize(
    "text",
    [
        "Orders must be at least 5 t.", "We require orders of at least 5 t.", "Please order at least 5 t.",
        "At least 5 t per order.", "We will not make less than 5 t.", "Quantities under 5 t cannot be supplied.",
        "M.O.Q. 5 t", "Mindestfertigungsmenge 5 t.", "Wir liefern nicht unter 5 t.", "Mindestens 5 t je Auftrag.",
        "Au moins 5 t par commande.", "Fabrication minimum 5 t.", "Fabricación mínima 5 t.", "Al menos 5 t por pedido.",
        "Åtminstone 5 t per order.", "Vi levererar inte under 5 t.",
    ],
)  # fmt: skip
def test_it_is_read(text):
    assert leasts(text) == [5000] * 3


@pytest.mark.parametrize(
    "text",
    [
        "Discount of 2 % for orders of at least 5 t.", "Freight prepaid on orders of at least 5 t.",
        "Prices for orders of at least 5 t.", "Rolls weigh at least 500 kg.", "Orders of at least 5 t are welcome.",
        "Fracht frei bei Aufträgen von mindestens 5 t.", "Remise de 2 % pour au moins 5 t par commande.",
    ],
)  # fmt: skip
def test_other_things_that_begin_at_a_weight(text):
    assert leasts(text) == [None] * 3
