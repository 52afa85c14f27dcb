"""Sizes of sheets, with and without their unit."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.intake.values.written import decimals
from tracker.intake.values.figures.sheetsize import LengthUnit, find_sheet_sizes, length_unit, sheet_text


@given(
    st.integers(300, 1600),
    st.integers(300, 1600),
    st.sampled_from([" x ", "x", " × ", "*"]),
    st.sampled_from([" mm", "mm", ""]),
)
def test_sheet_sizes_in_mm_read_back(width, length, between, unit):
    found = sheet_text(f"{width}{between}{length}{unit}")
    assert [size.mm for size in found] == [(width, length)]


@given(
    decimals("15", "60", 1),
    decimals("15", "60", 1),
    st.sampled_from(["{} x {} in", '{}" x {}"', "{}x{} inches", "{} x {}″"]),
)
def test_sheet_sizes_in_inches_read_back(width, length, shape):
    found = sheet_text(shape.format(width, length))
    assert [size.mm for size in found] == [(width * Decimal("25.4"), length * Decimal("25.4"))]


@pytest.mark.parametrize(
    ("text", "unit"),
    [
        ("28x40", "in"), ("70x100", "cm"), ("72 x 102", "cm"), ("720 x 1020", "mm"), ("72/102", "cm"),
        ("0,72 x 1,02", "m"), ("0.70 x 1.00", "m"),
    ],
)  # fmt: skip
def test_bare_sheet_sizes_go_by_what_a_sheet_can_be(text, unit):
    assert [size.unit for size in sheet_text(text)] == [LengthUnit(unit)]


@pytest.mark.parametrize("text", ["", "28", "4-6 wks", '12/1000"', "1/2", "03/04/2026", "24x36-500 basis"])
def test_what_is_no_sheet_size(text):
    assert sheet_text(text) == ()


def test_a_reams_size_is_no_sheet():
    assert find_sheet_sizes("190 lb (24x36-500)") == ()
    assert [size.mm for size in find_sheet_sizes("SBS 18 pt, 28 x 40 in sheets")] == [
        (Decimal("711.2"), Decimal("1016.0"))
    ]


@pytest.mark.parametrize(
    ("text", "unit"),
    [("Size (cm)", "cm"), ("Format mm", "mm"), ("Format in mm", "mm"), ("Size (in)", "in"), ("Size", None)],
)
def test_length_units_of_headers(text, unit):
    assert length_unit(text) == unit


@pytest.mark.parametrize("text", ["100x70 SB", "100 x 70 cm (BB)", "1000 x 700 mm long grain", "100x70, Schmalbahn"])
def test_the_way_of_the_fibres_behind_a_sheets_size(text):
    assert [size.mm for size in sheet_text(text)] == [(1000, 700)]
