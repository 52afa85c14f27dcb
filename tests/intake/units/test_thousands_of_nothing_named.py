"""A price 'per M' without any sheet size is asked about with the two units that it may be per."""

import pytest

from tests.intake.sheets import lines, read
from tracker.trade.basis import Basis

HEADS = ["Price USD per M", "USD/M", "USD per thousand"]


def _rows(head):
    return [["Tarn Board LLC"], ["Grade", "Pt", head], ["CRB", 18, 62.1], ["SBS", 20, 70]]


@pytest.mark.parametrize("head", HEADS)
def test_area_and_sheets_are_the_choices(head):
    (question,) = read(_rows(head)).questions
    assert {choice.value for choice in question.choices} == {Basis.MSF, Basis.THOUSAND_SHEETS}
    assert head in question.text


@pytest.mark.parametrize("head", HEADS)
def test_an_area_settles_it(head):
    (question,) = read(_rows(head)).questions
    found = lines(_rows(head), {question.key: Basis.MSF.value}).values()
    assert [(str(line.state), line.offer.basis) for line in found] == [("accepted", Basis.MSF)] * 2


def test_sheets_still_lack_their_size():
    (question,) = read(_rows("USD/M")).questions
    (other,) = read(_rows("USD/M"), {question.key: Basis.THOUSAND_SHEETS.value}).questions
    assert other.key == "sheet-size"


def test_a_size_told_leaves_nothing_to_ask():
    rows = [["Tarn Board LLC"], ["Grade", "Pt", "Size, in", "USD/M"], ["CRB", 18, "28 x 40", 262.1]]
    assert read(rows).questions == ()
