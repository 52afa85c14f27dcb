"""'Each' in a cell of units is a sheet where the row has its size; in a head it contradicts a unit of weight."""

import pytest

from tests.intake.sheets import codes, lines

HEADS = ["Board", "Pt", "Sheet, in", "Price", "Per"]


def _read(unit, size="28 x 44"):
    rows = [["Tarn Sheeting Works LLC"], ["Prices in USD."], HEADS, ["CRB C1S", 20, size, 0.337, unit]]
    return next(iter(lines(rows).values()))


@pytest.mark.parametrize("unit", ["each", "Each", "ea", "per each", "Stück", "pièce", "c/u", "styck"])
def test_a_sheet_with_a_size_is_priced_each(unit):
    line = _read(unit)
    assert (str(line.state), str(line.offer.basis)) == ("accepted", "sheet")


def test_what_is_each_without_a_size_is_asked():
    assert "basis-unknown" in codes(_read("each", size=""))


@pytest.mark.parametrize("unit", ["a", "the", "ream", "bundle"])
def test_other_words_stay_asked_about(unit):
    assert "basis-unknown" in codes(_read(unit))


def test_each_in_a_head_stands_against_a_unit_of_weight():
    heads = ["Board", "Pt", "Price, $ each"]
    rows = [["Tarn Board LLC"], ["Prices in US$ per short ton"], heads, ["CRB C1S", 20, 870]]
    assert "basis-unknown" in codes(next(iter(lines(rows).values())))
