"""Basis weights on one area for some grades and on another for others: each grade's holds for its own rows."""

import pytest

from tests.intake.sheets import lines

# No caliper stands beside them, so that physics settles nothing.
BOARDS = [["SBS C1S", 174, 1172], ["CUK", 216, 988], ["CRB C1S", 71, 872], ["URB", 98, 702]]
BY_3000, BY_1000 = {"SBS": 283, "CUK": 352}, {"CRB": 347, "URB": 478}


def weights(said, head="Basis wt", note=None):
    """Grade -> g/m², '?' where it is asked."""
    rows = [[said], ["$ per short ton"], ["Board", head, "Price"], *BOARDS, [], [note]]
    found = lines(rows).values()
    asked = {line.offer.grade for line in found if str(line.state) != "accepted"}
    return {line.offer.grade: "?" if line.offer.grade in asked else round(line.offer.grammage_gsm) for line in found}


@pytest.mark.parametrize(
    "said",
    [
        "Basis weights: SBS and CUK in lb per 3,000 sq ft; CRB and URB in lb per 1,000 sq ft.",
        "Basis weights: SBS and CUK in lb per 3,000 sq ft, CRB and URB in lb per 1,000 sq ft.",
        "Basis weight lb/3,000 sq ft for SBS and CUK, lb/1,000 sq ft for CRB and URB",
        "Basis weights in lb per 3,000 sq ft, except CRB and URB, which are in lb per 1,000 sq ft.",
        "Weights are in lb per 3,000 sq ft (CRB and URB: lb per 1,000 sq ft).",
        "Basis weights: SBS and CUK in lb per 3,000 sq ft; all others in lb per 1,000 sq ft.",
        "Weights: SBS lb/3000 ft², CUK lb/3000 ft² and CRB lb/MSF; URB lb/MSF",
        "Flächengewichte: SBS und CUK in lb je 3000 sq ft; CRB und URB in lb je 1000 sq ft",
        "Grammages : SBS et CUK en lb/3000 pi², CRB et URB en lb par 1000 pi²",
        "Gramajes: SBS y CUK en lb/3000 ft²; CRB y URB en lb/1000 ft²",
        "Ytvikter: SBS och CUK i lb per 3000 sq ft; CRB och URB i lb per 1000 sq ft",
    ],
)
def test_each_grades_weights_are_on_its_own_area(said):
    assert weights(said) == BY_3000 | BY_1000


def test_a_note_on_some_grades_goes_before_the_title_and_the_head():
    note = "CRB and URB weights are lb per 1,000 sq ft."
    assert weights("Weights lb per 3,000 sq ft", note=note) == BY_3000 | BY_1000
    assert weights("Price list", "Basis wt (lb/3,000 sq ft)", note) == BY_3000 | BY_1000


def test_a_note_in_pounds_leaves_a_head_in_grams():
    rows = [
        ["EUR per tonne"],
        ["Board", "g/m²", "Price"],
        ["CRB", 300, 872],
        [],
        ["CRB weights are lb per 1,000 sq ft."],
    ]
    assert [line.offer.grammage_gsm for line in lines(rows).values()] == [300]


def test_what_is_said_of_some_grades_is_of_no_others():
    asked = dict.fromkeys(("CRB", "URB"), "?")
    assert weights("Basis weights of SBS and CUK are lb per 3,000 sq ft") == BY_3000 | asked


@pytest.mark.parametrize(
    "said",
    [
        "Basis weights in lb per 3,000 sq ft, except CRB and URB.",
        "Basis weights in lb per 3,000 sq ft; CRB and URB in lb per 1,000 sq ft before lamination.",
    ],
)
def test_an_exception_that_is_not_understood_leaves_its_grades_open(said):
    assert weights(said) == BY_3000 | dict.fromkeys(("CRB", "URB"), "?")
