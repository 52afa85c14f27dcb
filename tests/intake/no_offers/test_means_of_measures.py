"""Rows that sum up a list and its measures too: a mean weight beside a mean price describes no board."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import State

ROWS = [["Grade", "g/m²", "EUR/t"], ["GC1", 240, 1200], ["GC2", 280, 1100], ["GD2", 350, 800]]


@pytest.mark.parametrize(
    "label",
    ["Average of list", "Durchschnitt der Liste", "Moyenne de la liste", "Media de la lista", "Snitt av listan"],
)
def test_a_mean_with_a_mean_weight_is_no_board(label):
    assert set(lines([*ROWS, [label, 290, 1033.33]])) == {"C2", "C3", "C4"}


@pytest.mark.parametrize(("label", "price"), [("Total", 3100), ("Minimum price", 800), ("Average", 950)])
def test_sums_bounds_and_means_of_the_last_are_told_by_their_figures(label, price):
    assert set(lines([*ROWS, [label, 290, price]])) == {"C2", "C3", "C4"}


def test_a_board_called_like_a_mean_is_kept_where_its_price_is_none():
    assert lines([*ROWS, ["Average White", 290, 990]])["C5"].state is State.QUESTION


def test_a_board_that_costs_as_much_as_the_mean_is_kept():
    assert lines([*ROWS, ["GC2", 290, 1033.33]])["C5"].state is State.ACCEPTED
