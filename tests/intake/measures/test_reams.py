"""Basis weights on a ream that its sheet names: in a head, in a note, and what is asked about."""

from fractions import Fraction

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.boards.reams import ream_of

GSM_PER_LB_INCH2_500 = Fraction("0.45359237") * 1000 / 500 / (Fraction("0.0254") ** 2)


def _line(head, weight, *notes):
    rows = [["US$/ST"], *([note] for note in notes), ["Grade", "Caliper (pt)", head, "Price"]]
    found = lines([*rows, ["SBS C1S", 16, weight, 1190]])
    assert [cell[0] for cell in found] == ["D"]
    return next(iter(found.values()))


@pytest.mark.parametrize(
    "head", ["Basis weight (24x36)", "lb (24 x 36)", "Basis weight, lb/ream 24 x 36", "Basis wt lb/500 sheets 24x36"]
)
def test_the_usual_ream_is_known_by_its_sheet(head):
    offer = _line(head, 204).offer
    assert abs(Fraction(offer.grammage_gsm) - 204 * GSM_PER_LB_INCH2_500 / (24 * 36)) < Fraction(1, 10**6)


@pytest.mark.parametrize(
    ("head", "weight", "notes"),
    [
        ("Basis Wt (25x38-500)", 224, ()),
        ("lb/ream (25x38)", 224, ()),
        ("Basis weight", 224, ("Basis weights are on 25 x 38 - 500",)),
        ("Basis weight", "224 lb", ("Basis weights are on 25 x 38 - 500",)),
    ],
)
def test_another_ream_is_reckoned_exactly(head, weight, notes):
    offer = _line(head, weight, *notes).offer
    assert abs(Fraction(offer.grammage_gsm) - 224 * GSM_PER_LB_INCH2_500 / (25 * 38)) < Fraction(1, 10**6)


def test_a_sheet_without_a_count_is_asked_about():
    assert "weight-basis-unknown" in codes(_line("Basis weight 25 x 38", 224))


@pytest.mark.parametrize(
    "text", ["Sheet size 28 x 40", "Price US$/lb, 28 x 40 in sheets", "Basis weight, sheets 700 x 1000"]
)
def test_what_names_no_ream(text):
    assert ream_of(text) is None
