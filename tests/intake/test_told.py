"""Nothing of a sheet goes without a word: each cell used is named, each row passed over has its reason."""

import pytest

from tests.intake.sheets import read

HEAD = ["Board", "pt", "lb/MSF", "USD/ST"]


@pytest.mark.parametrize(
    ("rows", "passed"),
    [
        ([["SBS", 16, 66, 1190], ["CUK", 18, 74, "call"]], [("3", "“call” is no price")]),
        ([["SBS", 16, 66, 1190], ["CUK", 18, 74, "n/q"], ["CRB", 20, 79, "n/q"]], [("3-4", "“n/q” is no price")]),
        ([["SBS", 16, 66, 1190], ["CUK", 18, 74, 1100]], []),
    ],
)
def test_a_board_without_a_price_is_passed_over_with_its_reason(rows, passed):
    found = read([HEAD, *rows])
    assert [(part.rows, part.why) for part in found.passed_over] == passed
    assert all(line.state == "accepted" for line in found.lines)


def test_the_cells_of_charges_and_of_the_boards_name_are_named():
    rows = [["Fenlight SBS", 16, 66, 1190, 2.1, 2.5], ["Marl CUK", 18, 74, 1100, None, 2.5]]
    found = read([[*HEAD, "Freight US$/cwt", "Energy surcharge %"], *rows])
    said = [{(each.field, each.said_by) for each in line.evidence} for line in found.lines]
    assert {("product", "A2"), ("charges", "E2"), ("charges", "F2")} <= said[0]
    assert {("product", "A3"), ("charges", "F3")} <= said[1]
    assert ("charges", "E3") not in said[1]
    (freight,) = (each for each in found.lines[0].evidence if each.said_by == "E2")
    assert freight.words == "Freight US$/cwt: 2.1"


def test_a_note_that_names_a_charge_is_a_cell_used():
    found = read([HEAD, ["SBS", 16, 66, 1190], ["CUK", 18, 74, 1100], [None], ["Freight $2.35/cwt extra"]])
    assert all(line.offer.charges for line in found.lines)
    assert all(("charges", "A5") in {(each.field, each.said_by) for each in line.evidence} for line in found.lines)
