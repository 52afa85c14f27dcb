"""Order sizes that rows name by a letter and a key explains."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines

_HEADS = ("Board", "Caliper (pt)", "lb/MSF", "Class", "USD/cwt")


def _bounds(found, *cells):
    return [(found[at].offer.from_kg, found[at].offer.below_kg) for at in cells]


@pytest.mark.parametrize(
    "key",
    [
        ["S = under 10,000 lb", "L = 10,000 lb and over"],
        ["S: under 10,000 lb; L: 10,000 lb and over"],
        ["Key: S = under 10,000 lb; L = 10,000 lb and over"],
    ],
)
def test_a_letter_in_a_column_is_the_order_size_that_the_key_gives_it(key):
    rows = [_HEADS, ("SBS C1S", 18, 77, "S", 61.5), ("SBS C1S", 18, 77, "L", 58.25), (), *([text] for text in key)]
    kg = Decimal("4535.9237")
    assert _bounds(lines(rows), "E2", "E3") == [(None, kg), (kg, None)]


@pytest.mark.parametrize(
    ("head", "key"),
    [
        ("Staffel", ("A = unter 5 t", "B = ab 5 t")),
        ("Tranche", ("A = moins de 5 t", "B = à partir de 5 t")),
        ("Tramo", ("A = menos de 5 t", "B = desde 5 t")),
        ("Klass", ("A = under 5 ton", "B = från 5 ton")),
    ],
)
def test_so_it_is_in_other_languages(head, key):
    rows = [("GC1", "µm", "g/m²", head, "EUR/t"), ("GC1", 450, 300, "A", 1120), ("GC1", 450, 300, "B", 1085)]
    assert _bounds(lines([*rows, (), *([text] for text in key)]), "E2", "E3") == [(None, 5000), (5000, None)]


def test_a_letter_that_the_key_leaves_out_makes_none_of_them_an_order_size():
    rows = [_HEADS, ("SBS C1S", 18, 77, "S", 61.5), ("CUK", 21, 84, "X", 58.25), (), ["S = under 10,000 lb; L = over"]]
    assert _bounds(lines(rows), "E2", "E3") == [(None, None), (None, None)]


def test_a_key_of_grades_is_none_of_sizes():
    rows = [("Item", "Caliper (pt)", "lb/MSF", "Class", "USD/cwt"), ("X", 18, 77, "S", 61.5), ("Y", 21, 84, "K", 58.25)]
    found = lines([*rows, (), ["S = SBS C1S"], ["K = coated unbleached kraft"]])
    assert _bounds(found, "E2", "E3") == [(None, None), (None, None)]


_SIZES = "A = orders under 10,000 lb; B = 10,000 lb and over"


@pytest.mark.parametrize(
    "head", ["Finish", "Finish (A/B)", "Oberfläche", "Finition", "Acabado", "Yta", "Mill", "Region"]
)
def test_letters_of_a_finish_or_a_place_are_no_order_sizes(head):
    rows = [("Board", "Caliper (pt)", "lb/MSF", head, "USD/cwt"), ("SBS", 18, 77, "A", 61.5), ("SBS", 20, 84, "B", 58)]
    found = lines([*rows, (), [_SIZES]])
    assert _bounds(found, "E2", "E3") == [(None, None), (None, None)]


@pytest.mark.parametrize("head", ["Class", "Order class", "Size", "Code"])
def test_nor_are_those_of_any_column_where_the_heads_of_prices_have_them(head):
    rows = [("Board", "Caliper (pt)", "lb/MSF", head, "Price A USD/cwt", "Price B USD/cwt")]
    rows += [("SBS", 18, 77, "A", 61.5, 60), ("SBS", 20, 84, "B", 58, 57)]
    kg = Decimal("4535.9237")
    found = lines([*rows, (), [_SIZES]])
    assert _bounds(found, "E2", "F2", "E3", "F3") == [(None, kg), (kg, None)] * 2
    one = [row[:5] for row in rows]
    one[0] = (*one[0][:4], "Price USD/cwt")
    assert _bounds(lines([*one, (), [_SIZES]]), "E2", "E3") == [(None, kg), (kg, None)]


@pytest.mark.parametrize("head", ["Price $/T", "Price USD/S.T.", "Price USD / S T"])
def test_the_letters_of_a_unit_tell_no_prices_apart(head):
    rows = [("Board", "Caliper (pt)", "lb/MSF", "Class", head), ("SBS", 18, 77, "S", 1300), ("SBS", 18, 77, "T", 1228)]
    found = lines([["Prices per short ton"], *rows, (), ["S = under 10,000 lb; T = 10,000 lb and over"]])
    kg = Decimal("4535.9237")
    assert _bounds(found, "E3", "E4") == [(None, kg), (kg, None)]


@pytest.mark.parametrize(
    "head", ["Note", "Remarks", "Terms", "Bemerkung", "Price code", "Price level", "Nivel de precio"]
)
def test_letters_below_a_note_or_a_level_of_prices_are_order_sizes(head):
    rows = [("Board", "Caliper (pt)", "lb/MSF", "Price USD/ST", head)]
    rows += [("SBS", 18, 77, 1300, "A"), ("SBS", 18, 77, 1228, "B")]
    kg = Decimal("4535.9237")
    assert _bounds(lines([*rows, (), [_SIZES]]), "D2", "D3") == [(None, kg), (kg, None)]
