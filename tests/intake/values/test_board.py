"""Caliper, basis weight, sheet size and grade: what a description says of the board itself."""

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.intake.values.written import decimals, written
from tracker.intake.values.caliper import bare_caliper, caliper_text, caliper_unit, find_calipers
from tracker.intake.values.grade import find_grade, legend
from tracker.intake.values.sheetsize import LengthUnit, find_sheet_sizes, length_unit, sheet_text
from tracker.intake.values.weight import find_weights, possible, weight_text, weight_units
from tracker.trade.quantities import CaliperUnit, WeightUnit, grammage

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


@pytest.mark.parametrize("text", ["16-18 pt", "0.4–0.5 mm", "18 pt (0.60 mm)"])
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
        ("pt / mm", None),
    ],
)
def test_caliper_units_of_headers(text, unit):
    assert caliper_unit(text) == unit


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


GRADES = [
    ("SBS C1S", "SBS", 1),
    ("SBB C2S", "SBS", 2),
    ("Solid bleached sulfate, C2S", "SBS", 2),
    ("solid bleached sulphate", "SBS", None),
    ("GZ", "SBS", None),
    ("uncoated SBS", "SBS", 0),
    ("Zellstoffkarton einseitig gestrichen", "SBS", 1),
    ("Cartulina SBS estucada una cara", "SBS", 1),
    ("CUK", "CUK", None),
    ("Coated Unbleached Kraft", "CUK", None),
    ("unbleached kraft, coated one side", "CUK", 1),
    ("kraft écru couché une face", "CUK", 1),
    ("oblekt kraftkartong, bestruken ena sidan", "CUK", 1),
    ("UUK", "UUK", None),
    ("Uncoated unbleached kraft", "UUK", 0),
    ("ungestrichener Kraftkarton", "UUK", 0),
    ("kraft natural sin estucar", "UUK", 0),
    ("CCNB", "CRB", None),
    ("WLC", "CRB", None),
    ("white-lined chipboard", "CRB", None),
    ("GD2 Duplexkarton", "CRB", None),
    ("GT", "CRB", None),
    ("GT 2", "CRB", None),
    ("carton duplex", "CRB", None),
    ("cartoncillo dúplex", "CRB", None),
    ("clay coated newsback", "CRB", None),
    ("returkartong bestruken", "CRB", None),
    ("Chipboard (URB)", "URB", None),
    ("URB plain chip", "URB", None),
    ("greyboard", "URB", None),
    ("Graukarton", "URB", None),
    ("carton gris", "URB", None),
    ("cartón gris", "URB", None),
    ("gråkartong", "URB", None),
    ('Uncoated recycled board .030"', "URB", 0),
    ("FBB", "FBB", None),
    ("GC1 folding boxboard", "FBB", None),
    ("GC 2", "FBB", None),
    ("Faltschachtelkarton", "FBB", None),
    ("carton pliant", "FBB", None),
    ("falskartong bestruken ena sidan", "FBB", 1),
    ("UC1", "FBB", None),
    ("sbs c1s", "SBS", 1),
    ("Faltschachtelkarton zweiseitig gestrichen", "FBB", 2),
]


@pytest.mark.parametrize(("text", "grade", "sides"), GRADES)
def test_grades_and_coatings_in_five_languages(text, grade, sides):
    found = find_grade(text)
    assert found is not None
    assert (found.grade, found.coated_sides) == (grade, sides)


@pytest.mark.parametrize(
    "text",
    [
        "Unbleached kraft board",
        "Kraftkarton ungebleicht",
        "kraft sin blanquear",
        "kraft écru",
        "oblekt kraftkartong",
        "Recycled board",
        "Karton",
        "cartonboard",
    ],
)
def test_words_that_leave_the_grade_open(text):
    found = find_grade(text)
    assert found is not None
    assert found.grades == ()


@pytest.mark.parametrize("text", ["Fenlight White", "WEIGHT", "gt", "un prix", "Rolls", "", "Cut to size", "sub"])
def test_words_that_are_no_grade(text):
    assert find_grade(text) is None


@pytest.mark.parametrize(
    ("text", "grades"),
    [("SBS / FBB", {"SBS", "FBB"}), ("chipboard, coated one side", {"URB", "CRB"}), ("CUK uncoated", {"CUK", "UUK"})],
)
def test_contradictions_keep_both_grades(text, grades):
    found = find_grade(text)
    assert found is not None
    assert set(found.grades) == grades


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("Fenlight White = SBS C1S", [("Fenlight White", "SBS")]),
        (
            "Fenlight White = SBS C1S; Fenlight Brown: coated unbleached kraft",
            [("Fenlight White", "SBS"), ("Fenlight Brown", "CUK")],
        ),
        ("Fenlight White = SBS C1S, Fenlight Brown = CUK", [("Fenlight White", "SBS"), ("Fenlight Brown", "CUK")]),
        ("Fenlight White (SBS C1S)", [("Fenlight White", "SBS")]),
        ("Note: SBS only", []),
        ("GC1 (FBB)", []),
        ("Fenlight White = unbleached kraft", []),
        ("Prices: per ton", []),
    ],
)
def test_legends(text, expected):
    assert [(entry.name, entry.grade.grade) for entry in legend(text)] == expected


@pytest.mark.parametrize("text", ["280 ± 12 g/m²", "280 g/m² ± 5 %", "280 g/m² +/- 12"])
def test_a_tolerance_does_not_hide_the_weight(text):
    found = weight_text(text)
    assert found is not None
    assert found.gsm == 280


def test_caliper_and_weight_in_one_cell():
    for text in ("345 µm / 250 g/m²", "345µm/250g/m²", "250 g/m² / 345 µm"):
        assert [reading.um for reading in find_calipers(text)] == [345]
        assert [reading.gsm for reading in find_weights(text)] == [250]


def test_an_order_is_no_inch():
    assert caliper_unit("OPEN_PO") is None
    assert caliper_unit("Épaisseur (po)") is CaliperUnit.INCH


def test_thousandths_of_an_inch_without_a_sign():
    assert [reading.um for reading in find_calipers("CCNB .024 94 lb/MSF sheets 28x40")] == [Decimal("609.6")]
    for text in ("USD 0.585 /lb", "$.024/lb", "price .035 per lb", ".018 x 40", "0.012 in plus"):
        assert all(reading.said for reading in find_calipers(text))


@pytest.mark.parametrize("text", ["100x70 SB", "100 x 70 cm (BB)", "1000 x 700 mm long grain", "100x70, Schmalbahn"])
def test_the_way_of_the_fibres_behind_a_sheets_size(text):
    assert [size.mm for size in sheet_text(text)] == [(1000, 700)]


def test_a_name_of_sulphate_board_that_the_trade_uses_for_two_grades_is_asked():
    assert find_grade("Chromosulfatkarton") is None
