"""Figures in money per unit are paid, whatever the words above them measure elsewhere."""

import pytest

from tests.intake.sheets import codes, lines

_BOARDS = [["SBS C1S", 12, 52, 62.4, 2.5, 3.1], ["SBS C1S", 14, 60, 63.1, 2.5, 3.1], ["CCNB", 18, 71, 45.2, 2, 2.75]]


def charged(word, unit="US$/cwt"):
    rows = [
        ["FOB mill"],
        ["Board", "Caliper", "Basis weight", "Price", word, "Freight to you"],
        [None, "pt", "lb/MSF", "US$/cwt", unit, "US$/cwt"],
        *_BOARDS,
    ]
    return {cell: [charge.price for charge in line.offer.charges] for cell, line in lines(rows).items()}


@pytest.mark.parametrize("word", ["Guillotine trim", "Roll width", "Width", "Core", "Gloss", "Sheet size"])
def test_a_small_sum_beside_the_price_is_charged(word):
    found = charged(word)
    assert list(found) == ["D4", "D5", "D6"]
    assert all(len(prices) == 2 for prices in found.values())


@pytest.mark.parametrize(("word", "unit"), [("Roll width", "in"), ("Core", "in"), ("Gloss", "%")])
def test_a_width_or_a_property_in_its_own_unit_is_not(word, unit):
    assert all(len(prices) == 1 for prices in charged(word, unit).values())


def test_a_loose_trim_may_as_well_be_allowed_and_is_asked():
    rows = [
        ["FOB mill"],
        ["Board", "Caliper pt", "lb/MSF", "Price US$/cwt", "Trim US$/cwt"],
        *(row[:5] for row in _BOARDS),
    ]
    assert all("number-ambiguous" in codes(line) for line in lines(rows).values())


def test_a_unit_of_caliper_that_looks_like_one_heads_calipers():
    rows = [["USD per short ton, fob mill"], ["Sort", "Caliper", "Weight", "Price"], [None, ".001 in", "lb/MSF"]]
    found = lines([*rows, ["SBS C1S", 10, 46, 1215], ["SBS C1S", 12, 52, 1209]])
    assert [float(line.offer.caliper_um) for line in found.values()] == [254, 304.8]
