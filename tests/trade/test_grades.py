from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.trade.quantities_for_tests import calipers_um, decimals
from tracker.trade.datafile import WrongDataFile
from tracker.trade.grades import (
    DENSEST_BOARD,
    LIGHTEST_BOARD,
    Stuff,
    estimate_grammage,
    grade,
    grade_named,
    grades,
    plausible_density,
    read_grades,
    usual_density,
)
from tracker.trade.quantities import CaliperUnit, density, micrometres
from tracker.trade.resources import resource
from tracker.trade.sourced import SourceKind

CODES = ("SBS", "CUK", "UUK", "CRB", "URB", "FBB")
codes = st.sampled_from(CODES)


def test_there_are_the_six_grades():
    assert tuple(grades()) == CODES
    with pytest.raises(KeyError):
        grade("XYZ")


@pytest.mark.parametrize("code", CODES)
def test_every_statement_says_where_it_comes_from(code):
    described = grade(code)
    single = (described.name, described.pulp, described.plies, described.coating, described.recycled_content)
    many = described.other_names + described.strengths + described.weaknesses + described.uses + described.cautions
    for statement in (*single, described.colour_front, described.colour_back, *many):
        assert isinstance(statement.source.kind, SourceKind)
        if statement.source.kind in (SourceKind.STANDARD, SourceKind.HANDBOOK):
            assert statement.source.reference, f"{statement.says!r} names no title"


@pytest.mark.parametrize("code", CODES)
def test_no_grade_is_called_safe_for_food_and_each_sends_the_reader_to_a_letter(code):
    said = " ".join(str(part) for part in (*grade(code).cautions, *grade(code).strengths, *grade(code).uses)).casefold()
    assert "safe" not in said
    assert "recorded letter" in said
    assert "competent person" in said


@pytest.mark.parametrize("code", CODES)
def test_layers_fill_the_board_with_the_coat_on_the_sides_that_have_one(code):
    described = grade(code)
    assert sum(layer.part for layer in described.layers) == 1
    coats = [layer for layer in described.layers if layer.stuff is Stuff.COAT]
    assert len(coats) == described.coated_sides
    assert not described.coated_sides or described.layers[0].stuff is Stuff.COAT


@given(codes, calipers_um)
def test_an_estimate_lies_in_its_own_range_and_has_a_density_board_can_have(code, um):
    estimate = estimate_grammage(code, um)
    assert estimate.low <= estimate.grammage_gsm <= estimate.high
    low, high = usual_density(code, um)
    assert LIGHTEST_BOARD <= low < high <= DENSEST_BOARD
    assert low - Fraction(1, 1000) <= density(estimate.grammage_gsm, um) <= high + Fraction(1, 1000)


@given(codes, decimals("8", "40", 1), decimals("0.1", "4", 1))
def test_thicker_board_of_one_grade_weighs_more_and_is_no_denser(code, pt, more):
    thin, thick = (micrometres(value, CaliperUnit.POINT) for value in (pt, pt + more))
    assert estimate_grammage(code, thin).grammage_gsm < estimate_grammage(code, thick).grammage_gsm
    assert usual_density(code, thin) >= usual_density(code, thick)


@pytest.mark.parametrize("code", CODES)
def test_three_times_the_usual_weight_is_never_usual(code):
    """What lets the reader tell a weight per 1,000 ft² from one per 3,000 ft²."""
    for pt in grade(code).calipers_pt:
        low, high = usual_density(code, micrometres(pt, CaliperUnit.POINT))
        assert 3 * low > high


def test_between_two_rows_the_density_lies_on_the_straight_line():
    points = grade("SBS").densities
    first, second = points[2], points[3]
    middle = (first.caliper_um + second.caliper_um) / 2
    expected = (first.typical + second.typical) / 2 * middle
    assert estimate_grammage("SBS", middle).grammage_gsm == Decimal(round(expected * 10)) / 10


@pytest.mark.parametrize(
    ("value", "plausible"), [("0.449", False), ("0.45", True), ("0.8", True), ("1.25", True), ("1.251", False)]
)
def test_bounds_of_plausible_density(value, plausible):
    assert plausible_density(Decimal(value)) is plausible


@pytest.mark.parametrize(
    ("written", "instead", "complaint"),
    [
        ('[SBS]\nname = { says = "Solid bleached sulphate"', "[SBS]\nname = { says = 7", r"SBS\.name\.says is 7"),
        ("[SBS]\nname =", "[SBS]\nnane =", r"SBS\.nane is not a known key"),
        ("sides = 1", "sides = 3", r"SBS\.coating\.sides: a board has 0, 1 or 2 coated sides"),
        ("sides = 1", 'sides = "one"', r"SBS\.coating\.sides is 'one'; it should be a whole number"),
        ("points = [8, ", "points = [true, ", r"SBS\.calipers\.points is \[True, .*a list of numbers"),
        ("{ pt = 10,", "{ pt = 7,", r"SBS\.density\.at: the calipers must rise"),
        ("low = 0.80", "low = 0.99", r"SBS\.density\.at\[1\]\.typical: densities must rise"),
        (
            'stuff = "coat"',
            'stuff = "gold"',
            r"SBS\.layers\.from_front\[1\]\.stuff is 'gold'; it should be one of: coat",
        ),
        ("part = 6 }", "part = 0 }", r"SBS\.layers\.from_front: every layer needs a part above 0"),
        ('source = "from memory"', 'source = "a friend"', r"source is 'a friend'; it should be one of: standard"),
        ("[SBS.calipers]", "[SBS.caliper]", r"SBS\.caliper is not a known key"),
        ("[SBS]", "[SBS", r"is not written as TOML should be"),
    ],
)
def test_a_slip_in_the_file_is_told_in_a_sentence_with_its_key(tmp_path, written, instead, complaint):
    text = resource("grades.toml").read_text(encoding="utf-8")
    assert written in text
    wrong = tmp_path / "grades.toml"
    wrong.write_text(text.replace(written, instead, 1), encoding="utf-8")
    with pytest.raises(WrongDataFile, match=complaint) as told:
        read_grades(wrong)
    assert str(told.value).startswith("grades.toml")
    assert "\n" not in str(told.value)


def test_a_missing_file_is_told_in_a_sentence(tmp_path):
    with pytest.raises(WrongDataFile, match=r"The data file grades\.toml can't be read"):
        read_grades(tmp_path / "grades.toml")


@pytest.mark.parametrize(
    ("words", "code"),
    [
        ("sbs", "SBS"),
        ("GC1", "FBB"),
        ("gc 2", "FBB"),
        ("GD2", "CRB"),
        ("Folding boxboard", "FBB"),
        ("SBX", None),
        ("", None),
        ("board", None),
    ],
)
def test_a_grade_is_known_by_the_names_of_the_trade(words, code):
    assert grade_named(words) == code


def test_a_name_that_two_grades_share_names_neither():
    shared = {}
    for code, each in grades().items():
        for name in each.other_names:
            shared.setdefault(name.says.casefold(), set()).add(code)
    for name, codes in shared.items():
        assert grade_named(name) == (codes.pop() if len(codes) == 1 else None)
