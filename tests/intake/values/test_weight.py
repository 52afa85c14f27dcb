"""Basis weights, and pounds without an area."""

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.intake.values.written import decimals, written
from tracker.intake.values.boards.caliper import find_calipers
from tracker.intake.values.boards.weight import find_weights, possible, weight_text, weight_units
from tracker.trade.quantities import WeightUnit, grammage

SIGNS = st.sampled_from(["plain point", "plain comma"])

WEIGHTS = {
    WeightUnit.LB_MSF: [
        "#/MSF",
        " lb/MSF",
        " lbs/MSF",
        " lb/1000 ft²",
        " lbs / 1,000 sq ft",
        " lb per 1000 sq ft",
        " lb/M sq ft",
    ],
    WeightUnit.LB_3000FT2: [
        " lb/3000 ft²",
        " lbs/3,000 sq ft",
        "#/3000 ft2",
        " lb (24x36-500)",
        ' lb 24" x 36" - 500',
        "#/3MSF",
    ],
    WeightUnit.GSM: [" g/m²", " gsm", "gsm", " g/qm", " g/m2", " grs/m2", " gr/m²", " g"],
}
WEIGHT_VALUES = {
    WeightUnit.LB_MSF: decimals("35", "200", 1),
    WeightUnit.LB_3000FT2: decimals("100", "600", 1),
    WeightUnit.GSM: decimals("150", "900", 0),
}


@given(st.data(), st.sampled_from(list(WEIGHTS)), SIGNS)
def test_every_basis_weight_reads_back_exactly(data, unit, form):
    value = data.draw(WEIGHT_VALUES[unit])
    text = written(value, form) + data.draw(st.sampled_from(WEIGHTS[unit]))
    found = weight_text(text)
    assert found is not None
    assert found.gsm == grammage(value, unit)
    assert [reading.gsm for reading in find_weights(f"SBS C1S 18pt {text}")] == [found.gsm]


@given(st.data(), st.sampled_from(list(WEIGHTS)))
def test_a_bare_weight_takes_its_headers_unit(data, unit):
    value = data.draw(WEIGHT_VALUES[unit])
    found = weight_text(str(value), (unit,))
    assert found is not None
    assert found.gsm == grammage(value, unit)


@pytest.mark.parametrize("text", ["71 lb", "71#", "71 lbs", "71 lb/ream"])
def test_pounds_without_an_area_stay_two_things(text):
    found = weight_text(text)
    assert found is not None
    assert found.lb_without_area
    assert {reading.unit for reading in found.readings} == {WeightUnit.LB_MSF, WeightUnit.LB_3000FT2}


def test_a_header_or_physics_settles_pounds():
    assert weight_text("71 lb", (WeightUnit.LB_3000FT2,)).gsm == grammage(71, WeightUnit.LB_3000FT2)
    left = possible(weight_text("71 lb").readings, Decimal("457.2"))
    assert [reading.unit for reading in left] == [WeightUnit.LB_MSF]


def test_a_ream_of_another_size_is_its_own_area():
    # 1406.1391593 / (25 × 38) = 1.4801464835 g/m² a pound (Standards chapter 16 prints 1.48; trade.md 1.2).
    found = weight_text("70 lb 25x38-500")
    assert found is not None
    assert found.gsm == Fraction(70) * Fraction(45359237, 32258) / (25 * 38)


@pytest.mark.parametrize(
    ("text", "expected"), [("366 g/m² (75 lb/MSF)", 1), ("366 g/m² (85 lb/MSF)", 2), ("250-300 gsm", 2)]
)
def test_two_weights_in_one_cell(text, expected):
    assert len(weight_text(text).readings) == expected


@pytest.mark.parametrize("text", ["", "SBS", "300", "18 pt", "75 lb SBS", "4 wks"])
def test_what_is_no_weight_cell(text):
    assert weight_text(text) is None


@pytest.mark.parametrize(
    ("text", "units"),
    [
        ("Basis Wt (lb/MSF)", ["lb/MSF"]),
        ("Basis weight\n(lb/3000 ft²)", ["lb/3000ft2"]),
        ("Flächengewicht g/m²", ["g/m2"]),
        ("gsm", ["g/m2"]),
        ("basis_weight_lb_msf", ["lb/MSF"]),
        ("Basis wt (lb)", ["lb/MSF", "lb/3000ft2"]),
        ("Grade", []),
        ("g/m² (lb/MSF)", ["g/m2", "lb/MSF"]),
    ],
)
def test_weight_units_of_headers(text, units):
    assert sorted(weight_units(text)) == sorted(units)


@pytest.mark.parametrize("text", ["280 ± 12 g/m²", "280 g/m² ± 5 %", "280 g/m² +/- 12"])
def test_a_tolerance_does_not_hide_the_weight(text):
    found = weight_text(text)
    assert found is not None
    assert found.gsm == 280


def test_caliper_and_weight_in_one_cell():
    for text in ("345 µm / 250 g/m²", "345µm/250g/m²", "250 g/m² / 345 µm"):
        assert [reading.um for reading in find_calipers(text)] == [345]
        assert [reading.gsm for reading in find_weights(text)] == [250]
