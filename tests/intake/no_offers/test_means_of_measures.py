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


@pytest.mark.parametrize("word", ["avg.", "Average", "Ø", "Mittel", "Ø-Wert", "moyenne", "media", "snitt"])
def test_a_row_with_the_word_in_the_place_of_a_measure_is_a_mean(word):
    heads = ["Grade", "µm", "g/m²", "EUR/t"]
    two = [["GC1", 400, 250, 1140], ["GC1", 500, 350, 1100]]
    others = [["GD2", 400, 290, 820], ["GD2", 500, 350, 800]]
    rows = [heads, *two, ["GC1", word, 300, 1120], *others, ["GD2", None, word, 810]]
    assert set(lines(rows)) == {"D2", "D3", "D5", "D6"}


def test_where_the_figure_is_no_mean_of_those_above_it_is_asked_about():
    found = lines([["Grade", "µm", "g/m²", "EUR/t"], ["GC1", 400, 250, 1140], ["GC1", "avg.", 300, 1200]])
    assert {cell: line.state for cell, line in found.items()} == {"D2": State.ACCEPTED, "D3": State.QUESTION}
