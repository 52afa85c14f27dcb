from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.orders.small_orders import dearer_if_small

LB = Decimal("0.45359237")


@pytest.mark.parametrize(
    "text",
    [
        "Orders under 10,000 lb: add $80/ton",
        "Smaller orders: +$40/ST",
        "20 ton minimum; below add 5 %",
        "Mindestmenge 5 t, darunter +8 %",
        "Less than truckload add 3%",
        "Mindermengenzuschlag unter 3 t: 45 €/t",
        "Majoration de 5 % pour les commandes de moins de 2 t",
        "Recargo del 4 % para pedidos inferiores a 1.000 kg",
        "Småordertillägg 500 SEK under 1 ton",
    ],
)
def test_small_orders_that_cost_more_are_told(text):
    assert dearer_if_small(text) is not None


@pytest.mark.parametrize(
    "text", ["Small orders on request", "Minimum order 5 t", "Add $25 for C2S", "Orders under 5 t: 1,250", "GD2 < 5 t"]
)
def test_what_says_nothing_of_small_orders_tells_nothing(text):
    assert dearer_if_small(text) is None


def test_the_price_stands_and_the_note_tells_of_small_orders():
    heads = ["Grade", "Caliper (pt)", "lb/MSF", "Price"]
    note = "Orders under 10,000 lb: add $80 per ton"
    line = lines([["USD per short ton"], heads, ["SBS C1S", 14, 58, 1225], [], [note]])["D3"]
    assert str(line.state) == "accepted"
    assert not line.offer.charges
    assert codes(line) == {"bracket-unread"}
    assert note in line.notes[0].text


def test_small_orders_are_told_of_beside_a_column_of_terms_too():
    heads = ["Grade", "Caliper (pt)", "lb/MSF", "Price USD/ST", "Lead time"]
    line = lines([heads, ["SBS C1S", 14, 58, 1225, "3 weeks"], [], ["Orders under 10,000 lb: add $80"]])["D2"]
    assert codes(line) == {"bracket-unread"}


@pytest.mark.parametrize(
    ("head", "cell"),
    [
        ("Remarks", "Min 5,000 lb, smaller orders +8 %"),
        ("Remarks", "Minimum 5,000 lb; below this a surcharge of 8 %"),
        ("Min order", "5,000 lb (less: +8 %)"),
    ],
)
def test_the_smallest_order_is_kept_and_dearer_ones_are_told_where_a_cell_of_the_row_says_both(head, cell):
    (line,) = lines([["Grade", "Caliper (pt)", "lb/MSF", "Price USD/ST", head], ["SBS", 14, 58, 1225, cell]]).values()
    assert (line.offer.minimum_kg, codes(line)) == (5000 * LB, {"bracket-unread"})
