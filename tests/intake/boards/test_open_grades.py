"""Words that name board and leave its grade open: what stands around settles them only where it agrees."""

import pytest

from tests.intake.sheets import codes, lines

HEADS = ["Product", "Caliper (pt)", "Price USD/ST"]


def grade_of(line):
    return line.offer.grade


def read_one(words, title):
    return lines([[title], HEADS, ["White top", 16, 1145], [words, 18, 990]])["C4"]


@pytest.mark.parametrize("title", ["SBS price list", "FBB price list"])
@pytest.mark.parametrize(
    "words",
    [
        "Unbleached kraft",
        "Natural kraft",
        "Recycled board",
        "Coated kraft",
        "Kraftkarton",
        "Recyclingkarton",
        "kraft écru",
        "carton recyclé",
        "cartulina kraft",
        "cartón reciclado",
        "oblekt kraftkartong",
        "returkartong",
    ],
)
def test_a_title_of_another_grade_says_nothing_of_them(words, title):
    line = read_one(words, title)
    assert grade_of(line) is None
    assert "grade-unknown" in codes(line)


@pytest.mark.parametrize(
    ("words", "title", "grade"),
    [
        ("Unbleached kraft", "CUK price list", "CUK"),
        ("Kraftkarton", "UUK Preisliste", "UUK"),
        ("kraft écru", "Tarif CUK", "CUK"),
        ("Recycled board", "Chipboard price list", "URB"),
        ("cartón reciclado", "Lista CRB", "CRB"),
        ("returkartong", "Prislista CRB", "CRB"),
        ("Bleached kraft", "SBS price list", "SBS"),
        ("Kraft back", "CRB price list", "CRB"),
        ("Cartonboard", "SBS price list", "SBS"),
        ("Karton", "FBB Preisliste", "FBB"),
        ("Ivory", "SBS price list", "SBS"),
    ],
)
def test_one_that_agrees_settles_them(words, title, grade):
    line = read_one(words, title)
    assert grade_of(line) == grade
    assert str(line.state) == "accepted"


def test_a_sheet_name_and_a_heading_count_like_a_title():
    named = lines([HEADS, ["White", 16, 1145], ["Unbleached kraft", 18, 990]], sheet="SBS")
    assert [grade_of(named[cell]) for cell in ("C2", "C3")] == ["SBS", None]
    headed = lines([HEADS, ["SBS C1S"], ["White", 16, 1145], ["Kraftkarton", 18, 990]])
    assert [grade_of(headed[cell]) for cell in ("C3", "C4")] == ["SBS", None]


def test_an_open_heading_keeps_a_title_off_the_rows_below_it_and_their_coating_settles_it():
    found = lines(
        [
            ["SBS price list"],
            ["Product", "Coating", "Caliper (pt)", "Price USD/ST"],
            ["Unbleached kraft"],
            ["Alder", "C1S", 18, 990],
            ["Birch", None, 18, 980],
            ["Cedar", "uncoated", 18, 970],
        ]
    )
    assert [grade_of(found[cell]) for cell in ("D4", "D5", "D6")] == ["CUK", None, "UUK"]


def test_prices_across_by_grade_or_coating():
    grades = lines([["Product", "Caliper (pt)", "SBS USD/ST", "CUK USD/ST"], ["Unbleached kraft", 18, 1100, 990]])
    assert [grade_of(grades[cell]) for cell in ("C2", "D2")] == [None, "CUK"]
    coated = lines([["Product", "Caliper (pt)", "C1S USD/ST", "Uncoated USD/ST"], ["Recycled board", 18, 890, 790]])
    assert [grade_of(coated[cell]) for cell in ("C2", "D2")] == ["CRB", "URB"]


@pytest.mark.parametrize(
    ("title", "words"),
    [("CUK price list", "Uncoated"), ("Graukarton", "einseitig gestrichen"), ("Carton gris", "couché une face")],
)
def test_a_coating_that_the_title_s_grade_does_not_have_is_asked(title, words):
    line = read_one(words, title)
    assert grade_of(line) is None
    assert "grade-unknown" in codes(line)


@pytest.mark.parametrize("none", ["none", "ohne", "aucune", "ninguna", "ingen", 0])
def test_a_column_of_coatings_may_say_that_there_is_none(none):
    heads = ["Grade", "Coating", "Caliper (pt)", "Price USD/ST"]
    rows = [["URB", none, 18, 700], ["SBS", none, 18, 990], ["Recycled board", none, 18, 690], ["CRB", none, 18, 800]]
    found = lines([heads, *rows])
    assert [(grade_of(found[cell]), found[cell].offer.coated_sides) for cell in ("D2", "D3", "D4", "D5")] == [
        ("URB", 0),
        ("SBS", 0),
        ("URB", 0),
        (None, 0),
    ]


def test_a_plain_surface_is_uncoated_where_the_grade_is():
    found = lines(
        [["Grade", "Surface", "Caliper (pt)", "Price USD/ST"], ["UUK", "plain", 18, 958], ["SBS", "plain", 18, 1158]]
    )
    assert [found[cell].offer.coated_sides for cell in ("D2", "D3")] == [0, None]


def test_so_is_one_in_a_column_of_its_own():
    heads = ["Grade", "Coating", "Caliper (pt)", "Price USD/ST"]
    found = lines([heads, ["URB", "C1S", 18, 700], ["URB", 0, 18, 690], ["CRB", 0, 18, 700], ["SBS", 0, 18, 990]])
    assert [grade_of(found[cell]) for cell in ("D2", "D3", "D4", "D5")] == [None, "URB", None, "SBS"]
