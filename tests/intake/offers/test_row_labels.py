"""Boards whose names have a word for a charge, a term or a total in them are offers like those around them."""

import pytest

from tests.intake.sheets import lines, read
from tracker.trade.offer import State


def _listed(label, price, others=(("SBS C1S 20 pt", 1150), ("GC1 250 g/m²", 1090))):
    return [["Product", "Price USD/ST"], [label, price], *map(list, others)]


@pytest.mark.parametrize(
    "label",
    [
        "Premium SBS C1S 18 pt", "Extra white SBS 18 pt", "CRB packaging board 18 pt", "Energy drink carrier CUK 18 pt",
        "Payment-card SBS 18 pt", "Minimum-coat SBS 18 pt", "Discount-line CRB 18 pt", "Duplex extra GD2 300 g/m²",
        "Verpackungskarton GC1 300 g/m²", "Prime blanc GC1 300 g/m²", "Embalaje GC2 extra 300 g/m²",
        "Extra vit GC1 300 g/m²", "Emballagekartong GC2 300 g/m²",
    ],
)  # fmt: skip
def test_a_board_that_costs_what_the_others_do_is_an_offer_whatever_else_its_name_says(label):
    found = lines(_listed(label, 1145))
    assert found["B2"].state is State.ACCEPTED
    assert found["B2"].offer.product == label


@pytest.mark.parametrize("label", ["Premium for SBS 18 pt", "Sheeting charge SBS 18 pt", "Extra GC1 300 g/m²"])
def test_what_costs_far_less_than_the_boards_is_the_charge_that_its_name_says(label):
    reading = read(_listed(label, 45))
    assert [line.offer.source.cell for line in reading.lines] == ["B3", "B4"]
    assert [passed.rows for passed in reading.passed_over] == ["2"]


def test_a_total_like_the_prices_is_asked_about_where_its_name_is_a_whole_board():
    assert lines(_listed("Total Bleached SBS 18 pt", 1145))["B2"].state is State.QUESTION
    assert "B2" not in lines(_listed("Average SBS", 1120))


def test_without_other_prices_to_compare_a_whole_board_is_asked_about():
    assert lines(_listed("Premium SBS C1S 18 pt", 1145, ()))["B2"].state is State.QUESTION


@pytest.mark.parametrize("label", ["SBS Premium", "FBB Extra", "CRB Packaging Board", "SBS Food Packaging"])
def test_boards_in_a_cross_tab_are_told_by_their_grade_and_prices(label):
    rows = [["Prices in USD per short ton"], ["Grade", "16 pt", "18 pt"], ["SBS C1S", 1145, 1150], [label, 1185, 1190]]
    assert {"B3", "C3", "B4", "C4"} == lines(rows).keys()
    assert "B4" not in lines([*rows[:3], [label, 25, 25]])
