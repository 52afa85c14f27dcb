"""Of several tables with a key each, every one hears its own."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines

_HEAD = ("G", "Caliper (pt)", "Price USD/short ton")
_FIRST, _SECOND = "G: 1 = SBS, 2 = CUK", "G: 1 = CRB, 2 = URB"


def _rows(first, second):
    return [(1, 18, first), (2, 20, second)]


def _grades(*rows):
    return [line.offer.grade for line in lines(rows).values()]


_UPPER, _LOWER = (_HEAD, *_rows(1200, 900)), (_HEAD, *_rows(700, 600))


def test_a_key_below_each_table_is_that_table_s():
    rows = [("Virgin grades",), *_UPPER, (_FIRST,), (), ("Recycled grades",), *_LOWER, (_SECOND,)]
    assert _grades(*rows) == ["SBS", "CUK", "CRB", "URB"]


@pytest.mark.parametrize("gap", [[], [()]])
def test_so_is_a_key_above_each(gap):
    rows = [(_FIRST,), *gap, *_UPPER, (), (_SECOND,), *gap, *_LOWER]
    assert _grades(*rows) == ["SBS", "CUK", "CRB", "URB"]


def test_so_is_a_key_with_empty_rows_around_it_that_follows_each_table():
    rows = [*_UPPER, (), (_FIRST,), (), *_LOWER, (), (_SECOND,)]
    assert _grades(*rows) == ["SBS", "CUK", "CRB", "URB"]


def test_so_is_a_key_below_each_of_two_tables_side_by_side():
    both = [(*left, None, *right) for left, right in zip(_UPPER, _LOWER, strict=True)]
    assert sorted(_grades(*both, (_FIRST, None, None, None, _SECOND))) == ["CRB", "CUK", "SBS", "URB"]
    found = lines([*both, (_FIRST, None, None, None, _SECOND)])
    assert [found[at].offer.grade for at in ("C2", "C3", "G2", "G3")] == ["SBS", "CUK", "CRB", "URB"]


def test_one_key_is_that_of_all_tables():
    lower = (_HEAD, (1, 24, 700), (2, 24, 600))
    assert _grades(*_UPPER, (), *lower, (), (_FIRST,)) == ["SBS", "CUK", "SBS", "CUK"]


@pytest.mark.parametrize(
    ("head", "first", "second"),
    [
        (("K", "g/m²", "EUR/t"), "K: 1 = GC1, 2 = GC2", "K: 1 = GD2, 2 = GT2"),
        (("Q", "g/m²", "EUR/t"), "Colonne Q : 1 = GC1 ; 2 = GC2", "Colonne Q : 1 = GD2 ; 2 = GT2"),
        (("C", "g/m²", "EUR/t"), "Columna C: 1 = GC1, 2 = GC2", "Columna C: 1 = GD2, 2 = GT2"),
        (("K", "g/m²", "SEK/t"), "Kolumn K: 1 = GC1, 2 = GC2", "Kolumn K: 1 = GD2, 2 = GT2"),
    ],
)
def test_in_other_languages(head, first, second):
    upper, lower = [head, (1, 250, 900), (2, 300, 890)], [head, (1, 300, 700), (2, 350, 690)]
    assert _grades(*upper, (first,), (), *lower, (second,)) == ["FBB", "FBB", "CRB", "CRB"]


def test_a_code_that_keys_as_near_explain_differently_is_asked():
    found = list(lines([*_UPPER, (), *_LOWER, (), (_FIRST,), ("G: 1 = CRB, 2 = CUK",)]).values())
    assert [line.offer.grade for line in found] == [None, "CUK", None, "CUK"]
    assert all("grade-unknown" in codes(found[place]) for place in (0, 2))


def test_a_table_without_a_key_between_two_that_have_other_ones_is_asked():
    rows = [("a",), *_UPPER, (_FIRST,), (), ("b",), *_LOWER, (), ("c",), _HEAD, (1, 24, 710), (2, 24, 610), (_SECOND,)]
    found = list(lines(rows).values())
    assert [line.offer.grade for line in found] == ["SBS", "CUK", None, None, "CRB", "URB"]


def test_units_and_freight_are_those_of_the_own_key():
    head = ("Grade", "Caliper (pt)", "U", "T", "Price USD")
    rows = [head, ("SBS", 18, "A", "D", 1200), ("CUK", 20, "B", "F", 60)]
    rows += [("U: A = per short ton, B = per cwt",), ("T: D = delivered, F = FOB mill",), ()]
    rows += [head, ("CRB", 18, "A", "D", 770), ("URB", 20, "B", "F", 600)]
    rows += [("U: A = per tonne, B = per short ton",), ("T: D = FOB dock, F = freight allowed",)]
    told = [(line.offer.basis, line.offer.delivered) for line in lines(rows).values()]
    assert told == [("short_ton", True), ("cwt", False), ("tonne", False), ("short_ton", True)]


_SIZED = ("Grade", "Caliper (pt)", "Class", "USD/cwt")
_SIZES = "A = under 20,000 lb, B = 20,000 lb and over", "A = under 5,000 lb, B = 5,000 lb and over"


def test_letters_of_order_sizes_are_those_of_the_own_key():
    rows = [("Rolls",), _SIZED, ("SBS", 18, "A", 66), ("SBS", 18, "B", 60), (_SIZES[0],), ()]
    rows += [("Sheets",), _SIZED, ("SBS", 18, "A", 70), ("SBS", 18, "B", 65), (_SIZES[1],)]
    bounds = [(line.offer.from_kg, line.offer.below_kg) for line in lines(rows).values()]
    most, least = Decimal("9071.8474"), Decimal("2267.96185")
    assert bounds == [(None, most), (most, None), (None, least), (least, None)]


def test_letters_of_order_sizes_that_two_keys_explain_are_asked():
    rows = [_SIZED, ("SBS", 18, "A", 66), ("SBS", 18, "B", 60), (), _SIZED, ("CUK", 18, "A", 70), ("CUK", 18, "B", 65)]
    found = lines([*rows, (), *([text] for text in _SIZES)])
    assert all("bracket-unread" in codes(line) for line in found.values())


def test_heads_of_prices_are_those_of_the_own_key():
    head = ("Grade", "Caliper (pt)", "Price A USD/cwt", "Price B USD/cwt")
    found = lines([head, ("SBS", 18, 66, 60), (_SIZES[0],), (), head, ("CUK", 18, 64, 58), (_SIZES[1],)])
    most, least = Decimal("9071.8474"), Decimal("2267.96185")
    assert [found[at].offer.below_kg for at in ("C2", "C6")] == [most, least]


def test_letters_behind_prices_are_those_of_the_own_key():
    head = ("Grade", "Caliper (pt)", "Price USD")
    rows = [head, ("SBS", 18, "1200 a"), ("CUK", 20, "60 b"), ("a = per short ton, b = per cwt",), ()]
    rows += [head, ("CRB", 18, "770 a"), ("URB", 20, "600 b"), ("a = per tonne, b = per short ton",)]
    assert [line.offer.basis for line in lines(rows).values()] == ["short_ton", "cwt", "tonne", "short_ton"]


@pytest.mark.parametrize(
    "keys",
    [
        ["G: 1 = SBS, 2 = CUK", "G: 3 = CRB, 4 = URB"],
        ["G: 1 = SBS", "G: 2 = CUK", "G: 3 = CRB", "G: 4 = URB"],
        ["G: 1 = SBS, 2 = CUK, 3 = CRB, 4 = URB; F: D = delivered, M = FOB mill"],
        ["G: 1 = SBS, 2 = CUK, 3 = CRB, 4 = URB, F: D = delivered, M = FOB mill"],
    ],
)
def test_a_key_in_several_texts_and_several_keys_in_one(keys):
    head = ("G", "Caliper (pt)", "F", "USD/short ton")
    rows = [(1, 18, "D", 1200), (2, 20, "M", 900), (3, 24, "M", 700), (4, 24, "D", 600)]
    found = list(lines([head, *rows, *([key] for key in keys)]).values())
    assert [line.offer.grade for line in found] == ["SBS", "CUK", "CRB", "URB"]
    freight = [True, False, False, True] if "F:" in keys[0] else [None] * 4
    assert [line.offer.delivered for line in found] == freight
