"""Sub-headings: a later one ends those that speak of the same, however long the list."""

from tracker.intake.grid import Cell
from tracker.intake.offers.notes.headings import HeadingsInForce
from tracker.intake.tables.table import Headings, Words


def _group(*texts: str, before: Headings | None = None) -> Headings:
    return Headings(tuple(Words("List", 0, Cell(0, 0, text, text), text) for text in texts), before)


def _in_force(headings: Headings | None) -> list[str]:
    return [words.text for words in HeadingsInForce().at(headings)]


def test_a_grade_ends_the_grade_before_it_and_what_came_after_that():
    first = _group("SBS C1S", "Prices per cwt")
    assert _in_force(first) == ["SBS C1S", "Prices per cwt"]
    assert _in_force(_group("CRB", before=first)) == ["CRB"]


def test_what_is_said_of_something_else_goes_on():
    grade = _group("SBS C1S")
    assert _in_force(_group("Prices per cwt", before=grade)) == ["SBS C1S", "Prices per cwt"]


def test_no_heading_is_above_the_first_rows():
    assert _in_force(None) == []


def test_a_list_with_a_heading_for_every_board_is_as_deep_as_it_is_long():
    chain = None
    for number in range(2_000):
        chain = _group(f"Board {number}", before=chain)
    assert _in_force(chain) == ["Board 1999"]
