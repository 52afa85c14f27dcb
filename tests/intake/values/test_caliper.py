"""Calipers in every way vendors write them."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.intake.values.written import decimals, written
from tracker.intake.values.boards.caliper import bare_caliper, caliper_text, caliper_unit, find_calipers
from tracker.trade.quantities import CaliperUnit

SIGNS = st.sampled_from(["plain point", "plain comma"])

CALIPERS = {
    CaliperUnit.POINT: (["pt", " pt", " points", "-pt", " mil", " pts", " Punkt", " puntos"], decimals("8", "60", 1)),
    CaliperUnit.INCH: (['"', " in", " inch", "″", " Zoll", " tum"], decimals("0.008", "0.060", 3)),
    CaliperUnit.MILLIMETRE: (["mm", " mm"], decimals("0.20", "1.50", 2)),
    CaliperUnit.MICROMETRE: (
        ["µm", " µm", " μm", " um", " micron", " microns", " micras", " Mikrometer"],
        decimals("200", "999", 0),
    ),
}
EXACT_UM = {"pt": Decimal("25.4"), "in": Decimal(25400), "mm": Decimal(1000), "um": Decimal(1)}


@given(st.data(), st.sampled_from(list(CALIPERS)), SIGNS)
def test_every_caliper_reads_back_exactly(data, unit, form):
    endings, values = CALIPERS[unit]
    value = data.draw(values)
    text = written(value, form) + data.draw(st.sampled_from(endings))
    found = caliper_text(text)
    assert found is not None
    assert found.um == value * EXACT_UM[unit]
    assert [reading.um for reading in find_calipers(f"SBS C1S {text} board")] == [found.um]


@given(st.data(), st.sampled_from(list(CALIPERS)), SIGNS)
def test_a_bare_caliper_takes_its_headers_unit(data, unit, form):
    value = data.draw(CALIPERS[unit][1])
    found = caliper_text(written(value, form), unit)
    assert found is not None
    assert found.um == value * EXACT_UM[unit]


@given(decimals("0.0001", "5000", 4))
def test_a_bare_caliper_has_one_unit_or_none(value):
    found = bare_caliper(value)
    fits = [unit for unit, factor in EXACT_UM.items() if Decimal(153) <= value * factor <= Decimal(3040)]
    if len(fits) == 1:
        assert found is not None
        assert found.unit == fits[0]
    assert len(fits) < 2


@pytest.mark.parametrize(
    ("text", "um"),
    [
        ('12/1000"', "304.8"),
        ("1/32 in", "793.75"),
        ('3/64"', "1190.625"),
        ("1/16 Zoll", "1587.5"),
        ("1/32 pulg.", "793.75"),
        ("3/64 po", "1190.625"),
        ("1/16 tum", "1587.5"),
        ('.018"', "457.2"),
        ("18 pt (0.46 mm)", "457.2"),
        ("0.46", "460"),
        ("457", "457"),
        ("18", "457.2"),
        ("0.018", "457.2"),
        ("18 PT.", "457.2"),
        ('0,018"', "457.2"),
    ],
)
def test_calipers_as_vendors_write_them(text, um):
    found = caliper_text(text)
    assert found is not None
    assert found.um == Decimal(um)


@pytest.mark.parametrize("text", ["16-18 pt", "16/18 pt", "16/32", "0.4–0.5 mm", "18 pt (0.60 mm)"])
def test_two_calipers_are_not_one(text):
    found = caliper_text(text)
    assert found is not None
    assert found.um is None


@pytest.mark.parametrize("text", ["", "SBS", "SBS 18pt", "300 g/m²", "4 wks", '28 x 40"', "TBA"])
def test_what_is_no_caliper_cell(text):
    assert caliper_text(text) is None


def test_an_impossible_number_under_a_unit_is_not_certain():
    found = caliper_text("0.018", CaliperUnit.POINT)
    assert found is not None
    assert found.um is None


def test_roll_widths_and_sheets_are_no_calipers():
    assert find_calipers('CUK 40" rolls, 28 x 40 in, 24x36') == ()
    roll = "GD2 405 µm, Rollenbreite: 1.020 mm, 1,020 mm wide, max. Ø 1.200 mm, Hülse 1.500 mm"
    assert [reading.um for reading in find_calipers(roll)] == [405]


@pytest.mark.parametrize(
    ("text", "unit"),
    [
        ("Caliper (pt)", "pt"),
        ("Dicke in mm", "mm"),
        ("Cal. (in)", "in"),
        ("Dicke µm", "um"),
        ("Thickness, microns", "um"),
        ("Tjocklek µm", "um"),
        ("Caliper", None),
        ("Lieferzeit in Wochen", None),
        ("pt / mm", None),
    ],
)
def test_caliper_units_of_headers(text, unit):
    assert caliper_unit(text) == unit


def test_an_order_is_no_inch():
    assert caliper_unit("OPEN_PO") is None
    assert caliper_unit("Épaisseur (po)") is CaliperUnit.INCH


def test_thousandths_of_an_inch_without_a_sign():
    assert [reading.um for reading in find_calipers("CCNB .024 94 lb/MSF sheets 28x40")] == [Decimal("609.6")]
    for text in ("USD 0.585 /lb", "$.024/lb", "price .035 per lb", ".018 x 40", "0.012 in plus"):
        assert all(reading.said for reading in find_calipers(text))
