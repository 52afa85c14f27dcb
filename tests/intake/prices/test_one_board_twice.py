"""One board on two sheets with two prices: asked where it stands out, and two lists of everything are left alone."""

from tests.intake.sheets import book, codes, grid
from tracker.intake.offers.answered import key_about
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

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
