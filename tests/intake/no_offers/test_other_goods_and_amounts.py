"""Goods beside the board, and what quantities come to, are no prices of board."""

import pytest

from tests.intake.sheets import lines

_LIST = [
    ["Tamarrack Board Co."],
    ["Board, US$ per short ton"],
    ["Grade", "pt", "lb/MSF", "$/ST"],
    ["SBS C1S", 14, 59, 1215],
]


@pytest.mark.parametrize(
    "title", ["Other goods", "Sonstige Artikel", "Autres articles", "Otros artículos", "Övriga artiklar"]
)
def test_skids_and_cores_are_passed_over(title):
    goods = [["Skid, returnable", "40 x 48", 18.5], ["Paper core, 6 in", 60, 4.2], ["Slip sheet", "40 x 48", 1.85]]
    found = lines([*_LIST, [], [title], ["Article", "Size in", "$ each"], *goods])
    assert set(found) == {"D4"}


def test_boards_under_such_a_title_are_offered():
    boards = [["CUK carrier", 18, 73, 1031], ["URB", 30, 105, 711]]
    found = lines([*_LIST, [], ["Other products"], ["Article", "pt", "lb/MSF", "$/ST"], *boards])
    assert set(found) == {"D4", "D8", "D9"}


@pytest.mark.parametrize(
    ("quantity", "price", "rows"),
    [
        ("Quantity (short tons)", "Unit price (USD/cwt)", [(22, 62.1, 27324), (40, 61.4, 49120), (20, 61.05, 24420)]),
        ("Quantity (short tons)", "Unit price (USD/lb)", [(22, 0.621, 27324), (40, 0.614, 49120), (20, 0.6105, 24420)]),
        ("Quantity (tonnes)", "Unit price (USD/kg)", [(22, 1.26, 27720), (40, 1.21, 48400), (20, 0.85, 17000)]),
    ],
)
def test_what_a_quantity_comes_to_is_an_amount(quantity, price, rows):
    heads = ["Board", "Caliper (pt)", "Basis wt (lb/MSF)", quantity, price, "Amount (USD)"]
    boards = [["SBS C1S", 14, 59], ["SBS C1S", 18, 77], ["SBS C1S", 20, 85]]
    found = lines(
        [["Glenwick Paperboard Inc."], heads, *([*board, *row] for board, row in zip(boards, rows, strict=True))]
    )
    assert {(cell[0], str(line.state)) for cell, line in found.items()} == {("E", "accepted")}
