"""Smallest orders of each price column, told in a row above or below the prices, or under a head in many words."""

import pytest

from tests.intake.sheets import lines


def _leasts(*rows):
    found = list(lines([["EUR/t"], *rows]).values())
    assert {str(line.state) for line in found} == {"accepted"}
    return [line.offer.minimum_kg for line in found]


@pytest.mark.parametrize("label", ["Min kg", "Min. order kg", "Mindestmenge kg", "Mínimo kg", "Minsta order kg"])
def test_the_unit_may_stand_in_the_label(label):
    axis, row, prices = ["g/m²", 230, 250, 300], [label, 500, 500, 1000], ["GC1", 1250, 1240, 1230]
    assert _leasts(axis, row, prices) == [500, 500, 1000]
    assert _leasts(axis, prices, row) == [500, 500, 1000]


@pytest.mark.parametrize(
    "label", ["Minimum order", "Mindestmenge", "Commande minimale", "Pedido mínimo", "Minsta order"]
)
def test_weights_right_below_the_axis_head_no_prices(label):
    axis, prices = ["g/m²", 230, 250, 300], ["GC1", 1250, 1240, 1230]
    assert _leasts(axis, [label, "500 kg", "500 kg", "1000 kg"], prices) == [500, 500, 1000]
    assert _leasts(axis, prices, [label, "500 kg", "500 kg", "500 kg"]) == [500, 500, 500]


@pytest.mark.parametrize(
    ("head", "first", "second"),
    [("Minimum", "min. 5 t", "min. 10 t"), ("MOQ", "from 5 t", "from 10 t"), ("Mindestmenge", "ab 5 t", "ab 10 t"),
     ("Minimum", "dès 5 t", "dès 10 t"), ("Mínimo", "desde 5 t", "desde 10 t")],
)  # fmt: skip
def test_under_a_word_for_them_they_are_no_order_sizes(head, first, second):
    heads = ["Board", "g/m²", head, "EUR/t"]
    assert _leasts(heads, ["GC1", 300, first, 1200], ["GD2", 350, second, 900]) == [5000, 10000]
    found = [line.offer for line in lines([heads, ["GC1", 300, first, 1200], ["GC1", 300, second, 1150]]).values()]
    assert [(one.from_kg, one.below_kg) for one in found] == [(5000, 10000), (10000, None)]


@pytest.mark.parametrize("word", ["minimum", "min.", "minimum order"])
def test_so_are_those_that_a_key_explains(word):
    heads, key = ["Board", "g/m²", "Group", "EUR/t"], [f"A = {word} 5 t, B = {word} 10 t"]
    found = lines([heads, ["GC1", 300, "A", 1200], ["GD2", 350, "B", 900], key]).values()
    assert [(line.offer.minimum_kg, line.offer.from_kg) for line in found] == [(5000, None), (10000, None)]
    found = lines([heads, ["GC1", 300, "A", 1200], ["GC1", 300, "B", 1150], key]).values()
    assert [line.offer.from_kg for line in found] == [5000, 10000]


def test_sizes_that_a_key_explains_stay_sizes():
    heads, key = ["Board", "g/m²", "Group", "EUR/t"], ["A = under 5 t, B = 5 t and over"]
    found = lines([heads, ["GC1", 300, "A", 1200], ["GD2", 350, "B", 900], key]).values()
    assert [(line.offer.minimum_kg, line.offer.from_kg) for line in found] == [(None, None), (None, 5000)]
