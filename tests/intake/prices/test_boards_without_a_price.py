"""A board whose price is left blank or withheld is told, and heads no other board."""

import pytest

from tests.intake.sheets import lines, merged, read
from tracker.trade.offer import State

HEAD = ["Board", "Caliper (pt)", "lb/MSF", "Price USD/ST", "Remarks"]
SBS, CRB, OTHER = ["SBS C1S", 18, 75, 1100], ["CRB", 18, 72, None], ["Marlow White", 20, 80, 900]


def test_it_is_passed_over_with_its_rows_and_heads_no_other_board():
    reading = read([HEAD, SBS, [*CRB, "delivered, lead time 3 weeks"], OTHER, ["UUK", 20, 80], ["UUK", 22, 88]])
    assert [(passed.rows, passed.why) for passed in reading.passed_over] == [
        ("3", "no price stands beside these boards"), ("5-6", "no price stands beside these boards"),
    ]  # fmt: skip
    first, other = (line for line in reading.lines)
    assert first.state is State.ACCEPTED
    assert (other.offer.grade, other.offer.lead_days, other.offer.delivered) == (None, None, None)


@pytest.mark.parametrize(
    ("row", "grade", "lead"),
    [
        (["CRB grades"], "CRB", None), (["1", "CRB"], "CRB", None), (["Lead time (days)", 15], None, (15, 15)),
        (["Lead time", "15 days"], None, (15, 15)),
    ],
)  # fmt: skip
def test_rows_of_words_stay_headings_and_terms(row, grade, lead):
    reading = read([HEAD, SBS, row, ["Marlow White", 20, 80, 900]])
    last = reading.lines[-1].offer
    assert (last.grade, last.lead_days) == (grade, lead)


@pytest.mark.parametrize(
    ("rows", "block", "cells"),
    [
        ([HEAD, SBS, CRB, OTHER], (1, 3, 2, 3), {"D2": 1100, "D3": 1100, "D4": 900}),
        ([["Board", *HEAD[3:]], ["SBS 18 pt", 1100], ["SBS 20 pt"], ["CRB 20 pt", 900]], (1, 1, 2, 1),
         {"B2": 1100, "B3": 1100, "B4": 900}),
        ([[*HEAD[:3], "USD/ST < 9 ST", "USD/ST 9 ST+"], SBS, [*CRB[:3], 900, 880]], (1, 3, 1, 4),
         {"D2": 1100, "E2": 1100, "D3": 900, "E3": 880}),
        ([["Board", "SBS", "SBS"], ["pt", 18, 20], ["USD/ST", 1100]], (2, 1, 2, 2), {"B3": 1100, "C3": 1100}),
    ],
)  # fmt: skip
def test_a_price_merged_over_several_boards_or_order_sizes_is_the_price_of_each(rows, block, cells):
    assert {cell: line.offer.price for cell, line in lines(rows, merged=merged(block)).items()} == cells


def test_a_price_that_has_expired_in_a_row_of_boards_heads_nothing():
    rows = [["Price list of 3 March 2026, EUR per tonne"], ["Grade", "g/m²", "µm", "Price 2025", "Price 2026"]]
    found = lines([*rows, ["GC1", 240, 385, "expired", 1320], ["GC2", 300, 490, 1220, 1250]])
    assert [line.offer.price for line in found.values()] == [1320, 1250]


@pytest.mark.parametrize("withheld", ["no disponible", "no quote", "call"])
def test_a_row_that_withholds_its_price_is_no_header(withheld):
    rows = [
        ["Description", "Caliper", "Weight", "Price"],
        ["GD2", "310 µm", "230 g/m²", "955,00 EUR/t"],
        ["GD2", "360 µm", "280 g/m²", withheld],
        ["GD2", "385 µm", "300 g/m²", "920,00 EUR/t"],
        ["GD2", "450 µm", "350 g/m²", "905,00 EUR/t"],
    ]
    assert list(lines(rows)) == ["D2", "D4", "D5"]
