"""Grades and coatings by their names in five languages."""

import pytest

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.legends import legend

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
    ("Graukart.", "URB", None),
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
    ("Ctd unblchd kraft", "CUK", None),
    ("Clay ctd news back", "CRB", None),
    ("Uncoatd recyc. board", "URB", 0),
    ("Sulfatkarton gebl. gestr.", "SBS", None),
    ("Solidkartong (blekt, bestruken 1 sida)", "SBS", 1),
    ("GC1 1 face 400 µm", "FBB", 1),
    ("GD2, 2 caras", "CRB", 2),
    ("GC1 400 µm 250 g/m² 1 face", "FBB", 1),
    ("Carton GC1 - 1 face", "FBB", 1),
    ("kraft écru frictionné 1 face", None, None),
    ("GC1 imprimé 1 face", "FBB", None),
    ("Faltschachtelkarton zweiseitig gestrichen", "FBB", 2),
    ("FBB GC2 C1S", "FBB", 1),
    ("GC1 C2S", "FBB", 2),
    ("GT2 C1S", "CRB", 1),
    ("GD2-C1S", "CRB", 1),
    ("GC 2 C1S", "FBB", 1),
    ("GZ2 C1S", "SBS", 1),
    ("GC1C1S", "FBB", 1),
    ("GC2 1F", "FBB", 1),
    ("GD2 2/C", "CRB", 2),
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
        ("A1 = solid bleached sulfate, coated one side", [("A1", "SBS")]),
        ("Note: SBS only", []),
        ("GC1 (FBB)", []),
        ("Fenlight White = unbleached kraft", []),
        ("Prices: per ton", []),
    ],
)
def test_legends(text, expected):
    assert [(entry.name, entry.grade.grade) for entry in legend(text)] == expected


def test_a_name_of_sulphate_board_that_the_trade_uses_for_two_grades_is_asked():
    assert find_grade("Chromosulfatkarton") is None


@pytest.mark.parametrize(
    ("text", "sides"),
    [
        ("SBS CLAY CTD 1 SIDE", 1), ("SBS CLAY CTD 2 SIDES", 2), ("FALSKARTONG GC1 1-S BESTR", 1),
        ("SBB 2-S BESTR", 2), ("SBS recubierto 1 lado", 1), ("Carte couchée 1 face GC1", 1), ("SBS CLAY CTD", None),
    ],
)  # fmt: skip
def test_sides_as_extracts_shorten_them(text, sides):
    reading = find_grade(text)
    assert reading is not None
    assert reading.coated_sides == sides
