"""One board in two rows or on two sheets: repeated, told apart by its price, or asked about."""

from tests.intake.sheets import book, codes, grid, lines
from tracker.intake.offers.answered import key_about
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers, State

HEAD = ["Grade", "Caliper pt", "lb/MSF", "US$/ST"]
ONE = [["CRB C1S", 16, 63, 912], ["CRB C1S", 18, 71, 905], ["CRB C1S", 24, 93, 890]]
OTHER = [["CRB C1S", 24, 93, 935], ["URB", 24, 85, 701], ["URB", 30, 105, 692]]


def found(one, other, answers=None, names=("Folding", "All grades")):
    grids = (grid([HEAD, *one], sheet=names[0]), grid([HEAD, *other], sheet=names[1]))
    return read_workbook(book(*grids), Answers(answers or {})).lines


def test_a_board_that_two_sheets_price_differently_is_asked():
    lines = found(ONE, OTHER)
    assert [str(line.state) for line in lines] == ["accepted"] * 2 + ["question"] * 2 + ["accepted"] * 2
    assert codes(lines[2]) == codes(lines[3]) == {"prices-disagree"}


def test_the_price_that_a_person_confirms_holds():
    lines = found(ONE, OTHER, {key_about("price", "Folding!D4"): "890"})
    assert [str(line.state) for line in lines][2:4] == ["accepted", "question"]


def test_the_same_price_twice_is_asked_about_nowhere():
    assert {str(line.state) for line in found(ONE, [["CRB C1S", 24, 93, 890], *OTHER[1:]])} == {"accepted"}


def test_two_lists_of_the_same_boards_disagree_about_nothing():
    dearer = [[*row[:3], row[3] + 40] for row in ONE]
    assert {str(line.state) for line in found(ONE, dearer)} == {"accepted"}


def test_rolls_and_sheets_are_two_offers():
    assert {str(line.state) for line in found(ONE, OTHER, names=("Rolls", "Sheets"))} == {"accepted"}


def test_a_running_number_does_not_make_two_offers_of_a_repeated_row():
    rows = [["No.", "Grade", "pt", "USD/ST"], [1, "SBS", 14, 1240], [2, "SBS", 18, 1215], [3, "SBS", 14, 1240]]
    assert list(lines(rows)) == ["D2", "D3"]


DOLLAR_HEAD = ["Board", "Caliper (pt)", "lb/MSF", "Price USD/ST"]
SBS, CRB = ["SBS C1S", 18, 75, 1165], ["CRB C1S", 18, 70, 900]


def test_a_row_repeated_is_not_accepted_twice_and_one_with_another_price_is_asked():
    assert set(lines([DOLLAR_HEAD, SBS, CRB, SBS])) == {"D2", "D3"}
    found = lines([DOLLAR_HEAD, SBS, CRB, [*SBS[:3], 1190]])
    assert [line.state for line in found.values()] == [State.QUESTION, State.ACCEPTED, State.QUESTION]
    assert codes(found["D2"]) == {"prices-disagree"}
