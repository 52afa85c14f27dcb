"""What vendors call a board: misspelt, cut short, with a word for something else in it, and what names none."""

import pytest

from tests.intake.sheets import book, codes, grid, lines
from tracker.intake.read import read_workbook
from tracker.intake.values.boards.grade import find_grade
from tracker.trade.offer import Answers


def test_a_board_with_a_word_for_a_charge_in_its_name_is_offered():
    rows = [
        ["EUR/t"],
        ["Beschreibung", "Preis"],
        ["GC1, 250 g/m², 405 µm, FSC-C000000", 1204],
        ["FSC-Zuschlag GC1", 12],
    ]
    assert list(lines(rows)) == ["B3"]


def test_a_grade_written_once_holds_for_descriptions_of_the_coating_alone():
    head = ["Grade", "Description", "pt", "USD/short ton"]
    rows = [["SBS", "C1S, smooth", 14, 1232], [None, "C2S", 18, 1268], [None, "Fenlight White", 18, 1290]]
    found = lines([head, *rows, ["CRB", "C1S", 18, 921]])
    assert [line.offer.grade for line in found.values()] == ["SBS", "SBS", None, "CRB"]
    assert "grade-unknown" in codes(found["D4"])


@pytest.mark.parametrize(
    ("name", "grade"),
    [
        ("Kraft ungebl. gestrichen", "CUK"),
        ("Kraft ungebl. ungestr.", "UUK"),
        ("oblekt kraft bestruken", "CUK"),
        ("Kraft ungebl.", None),
    ],
)
def test_a_sheet_called_by_kraft_cut_short(name, grade):
    sheet = grid([["Gewicht g/m²", "Dicke µm", "EUR/t"], [310, 420, 1105]], sheet=name)
    (line,) = read_workbook(book(sheet), Answers({})).lines
    assert line.offer.grade == grade


@pytest.mark.parametrize(
    ("text", "grade"),
    [
        ("Solid bleeched sulfate C1S", "SBS"),
        ("Coated unbleeched kraft", "CUK"),
        ("Faltschachtelkarten", "FBB"),
        ("Carton gris-blanc (GD2)", "CRB"),
        ("Graukarton GD2", "CRB"),
        ("cartón gris GT2", "CRB"),
        ("carton gris", "URB"),
        ("gråkartong", "URB"),
    ],
)
def test_grades_misspelt_and_grey_on_the_back(text, grade):
    assert find_grade(text).grade == grade


@pytest.mark.parametrize(
    "text", ["Graukarton SBS", "carton gris GC1", "solid unbleeched kraft", "Solid blended sulfate"]
)
def test_words_that_contradict_each_other_or_are_others_name_no_grade(text):
    reading = find_grade(text)
    assert reading is None or reading.grade is None


def test_the_boards_name_in_the_corner_over_the_order_sizes():
    block = ["14 pt", "16 pt"], ["menos de 2.000 kg", 1390, 1381], ["más de 2.000 kg", 1310, 1301]
    rows = [["USD por tonelada métrica"], ["SBS C1S", *block[0]], *block[1:], [], ["CUK", *block[0]], *block[1:]]
    assert {line.offer.grade for line in list(lines(rows).values())[:4]} == {"SBS"}
    assert {line.offer.grade for line in list(lines(rows).values())[4:]} == {"CUK"}
    rows[1][0] = "SBS orders"
    assert None in {line.offer.grade for line in list(lines(rows).values())[:4]}


_BOARDS = [["Grade", "Caliper pt", "Price USD/short ton"], ["SBS C1S", 18, 1240], ["CRB", 20, 820]]


def test_obsolete_stock_is_sold():
    assert len(lines([["Obsolete card – clearance offer"], *_BOARDS])) == 2
