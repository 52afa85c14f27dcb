"""The unit of a smallest order in a column of its own that changes from row to row; smallest orders in sentences."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.orders.minimum import find_minimum

LB = Decimal("0.45359237")
_BOARDS = [
    ("SBS C1S", 18, "PT", 77, "LB/MSF", 1139, "ST", 20000, "LB"),
    ("GC1", 450, "UM", 300, "G/M2", 1208, "MT", 5000, "KG"),
]


def _least(last_head):
    head = ("Board", "Caliper", "Cal unit", "Basis wt", "BW unit", "Price USD", "Per", "Min qty", last_head)
    found = lines([head, *_BOARDS])
    return [found[at].offer.minimum_kg for at in ("F2", "F3")]


@pytest.mark.parametrize("head", ["Min unit", "Min UoM"])
def test_each_smallest_order_is_in_the_unit_beside_it(head):
    assert _least(head) == [20000 * LB, 5000]


@pytest.mark.parametrize(
    ("least", "unit", "price"),
    [
        ("Min qty", "Min unit", "Price EUR/t"),
        ("Mindestmenge", "ME Mindestmenge", "Preis EUR/t"),
        ("Qté min", "Unité min", "Prix EUR/t"),
        ("Cant. mín.", "Unidad mín.", "Precio EUR/t"),
        ("Min kvantitet", "Min enhet", "Pris EUR/t"),
    ],
)
def test_so_it_is_where_the_price_s_head_says_its_own_unit(least, unit, price):
    boards = [("GC1", 250, 430, 5000, "kg", 1228), ("GD2", 300, 385, 2, "t", 1010)]
    found = lines([("Board", "g/m²", "µm", least, unit, price), *boards])
    assert [(str(line.state), str(line.offer.basis), line.offer.minimum_kg) for line in found.values()] == [
        ("accepted", "tonne", 5000),
        ("accepted", "tonne", 2000),
    ]


@pytest.mark.parametrize("unit", ["Unit", "Price unit"])
def test_a_unit_that_may_be_the_price_s_is_no_smallest_order_s(unit):
    boards = [("GC1", 250, 430, 5000, "kg", 1.2), ("GD2", 300, 385, 2, "t", 1010)]
    found = lines([("Board", "g/m²", "µm", "Min qty", unit, "Price EUR"), *boards])
    assert [(line.offer.basis, line.offer.minimum_kg) for line in found.values()] == [("kg", None), ("tonne", None)]


def test_no_smallest_order_is_counted_in_what_is_no_unit():
    assert _least("Remarks") == [None, None]


@pytest.mark.parametrize(
    ("text", "amount"),
    [
        ("Rolls only, 10,000 lb minimum order", "10,000 lb"),
        ("Bestellungen ab 500 kg (Mindestmenge)", "500 kg"),
        ("Commandes à partir de 500 kg (minimum)", "500 kg"),
        ("Order från 500 kg (minimum)", "500 kg"),
    ],
)
def test_a_weight_ahead_of_the_words_is_the_smallest_order(text, amount):
    found = find_minimum(text)
    assert found is not None
    assert found.words == amount


@pytest.mark.parametrize(
    "text", ["Rolls of 1,500 lb minimum", "Pallets 2,000 lb minimum", "Truckload, 40,000 lb minimum"]
)
def test_the_weight_of_a_roll_a_pallet_or_a_load_is_none(text):
    assert find_minimum(text) is None


@pytest.mark.parametrize(
    ("note", "kg"),
    [
        ("Minimum order 5 t, sheets see separate price list.", 5000),
        ("Mindestmenge 5 t, Formate siehe separate Preisliste.", 5000),
        ("Mill stock is sold by its own list, minimum 2 t.", None),
        ("Stock on a separate list with a minimum order of 5 t.", None),
    ],
)
def test_another_list_named_behind_a_smallest_order_leaves_it(note, kg):
    (line,) = lines([("Board", "g/m²", "µm", "Price EUR/t"), ("GC1", 250, 430, 1228), (), (note,)]).values()
    assert line.offer.minimum_kg == kg


@pytest.mark.parametrize(
    ("note", "kg"),
    [
        ("Minimum order (kg): 5,000", 5000),
        ("Minimum order qty per item (kg): 5,000", 5000),
        ("Smallest order (kg): 5,000", 5000),
        ("Mindestmenge je Sorte (kg): 5.000", 5000),
        ("Quantité minimale (t) : 5", 5000),
        ("Pedido mínimo (kg): 5000", 5000),
        ("Minsta order (kg): 5000", 5000),
        ("Minimum charge (kg): 5,000", None),
        ("Minimum stock (kg): 20,000", None),
        ("Minimum roll weight (kg): 650", None),
        ("Minimum weight per skid (kg): 900", None),
        ("Minimum order (1,000 kg): 5", None),
    ],
)
def test_the_unit_in_a_label_s_brackets_is_an_order_s_where_the_label_names_no_more(note, kg):
    (line,) = lines([("Board", "g/m²", "µm", "Price EUR/t"), ("GC1", 250, 430, 1228), (), (note,)]).values()
    assert line.offer.minimum_kg == kg
