"""Where one header row heads two tables, and where it heads one with a price or a count in an odd place."""

import pytest

from tests.intake.sheets import codes, grid, lines
from tracker.intake.tables.find import find_tables
from tracker.intake.tables.view import view_of

TERMS = [["FOB mill, US dollars"], []]


def tables(rows):
    return [[column.text for column in table.columns] for table in find_tables(view_of(grid(rows))).tables]


def test_the_same_heads_again_begin_a_second_table():
    head = ["Grade", "pt", "$/ST", "Grade", "pt", "$/ST"]
    assert tables([head, ["SBS", 18, 1200, "CRB", 20, 900]]) == [head[:3], head[3:]]


@pytest.mark.parametrize("count", ["Stock (pallets)", "Stock"])
def test_a_count_of_stock_between_two_prices_of_a_board_begins_no_table(count):
    head = ["Description", "Cal. pt", "BW lb/MSF", "$/ST", count, "$/MSF"]
    row = ["CRB C1S", 18, 70, 855, 12, 34.02]
    assert tables([head, row]) == [head]
    found = lines([*TERMS, head, row])
    assert "prices-disagree" in codes(found["D4"])


def test_a_price_left_of_the_board_is_its_price():
    head = ["Lead Time", "Price (USD/short ton)", "Basis Wt (lb/MSF)", "Caliper (pt)", "Grade", "Item"]
    found = lines([head, ["4-6 wks", 1195, 51, 12, "SBS C1S", "QB-100"], ["3 wks", 1185, 59, 14, "SBS C1S", "QB-101"]])
    assert [line.state for line in found.values()] == ["accepted", "accepted"]
    assert found["B2"].offer.grade == "SBS"
    assert found["B2"].offer.lead_days == (28, 42)


def test_boards_by_another_word_begin_a_second_table_too():
    head, other = ["Board", "Cal. (pt)", "lb/MSF", "US$/ST"], ["Quality", "µm", "g/m²", "US$/MT"]
    rows = [[*head, *other], ["SBS C1S", 16, 67, 1215, "GC1", 410, 255, 1088]]
    assert tables([*rows, ["URB", 24, 86, 712, "GD3", 445, 325, 818]]) == [head, other]
    assert tables([["Board", "Stock", "US$/ST"], ["SBS", "reels", 1215]]) == [["Board", "Stock", "US$/ST"]]


def test_all_board_heads_again_begin_a_table_whatever_the_prices_are_called():
    left, right = ["Kind", "Pts", "lb/1000 sq ft", "Ask"], ["Kind", "Pts", "lb/1000 sq ft", "Size, in.", "Ask/M"]
    assert tables([[*left, *right], ["SBS", 12, 50, 1245, "SBS", 12, 50, "25 x 38", 228.5]]) == [left, right]


def test_one_board_head_again_is_the_same_table():
    head = ["Kind", "Pts", "lb/1000 sq ft", "Ask", "Kind", "Remarks"]
    assert tables([head, ["SBS", 12, 50, 1245, "SBS", "in stock"]]) == [head]
