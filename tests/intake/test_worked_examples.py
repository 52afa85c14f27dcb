"""What only shows how a list is read is no offer: pages, tables, groups and rows that say so."""

import pytest

from tests.intake.sheets import book, grid, lines
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

HEADS = ["Board", "pt", "lb/MSF", "USD/ST"]
BOARDS = [["SBS C1S", 18, 76, 1165], ["CUK", 21, 86, 1058]]
SHOWN = ["SBS C1S", 24, 99, 1200]


def with_a_page(title, name="Notes"):
    prices = grid([["USD per short ton, FOB mill"], HEADS, *BOARDS], sheet="Prices")
    page = grid([[title] if title else [], [], HEADS, SHOWN], sheet=name)
    return read_workbook(book(prices, page), Answers())


@pytest.mark.parametrize(
    ("title", "name"),
    [
        ("How to read this list - an example, not an offer", "Notes"),
        ("Worked example", "Notes"),
        ("Sample calculation (not an offer)", "Notes"),
        ("Rechenbeispiel", "Notes"),
        ("So lesen Sie diese Liste – Beispiel", "Notes"),
        ("Exemple de calcul", "Notes"),
        ("Comment lire ce tarif : exemple", "Notes"),
        ("Ejemplo de cálculo", "Notes"),
        ("Räkneexempel", "Notes"),
        ("", "How to read"),
        ("", "Lesehilfe"),
    ],
)
def test_a_page_that_shows_how_to_read_the_list_is_passed_over_and_told(title, name):
    found = with_a_page(title, name)
    assert [line.offer.source.sheet for line in found.lines] == ["Prices", "Prices"]
    assert [passed.why for passed in found.passed_over] == ["it shows how to read the list"]


@pytest.mark.parametrize(
    "title",
    [
        "Price list with worked examples",
        "Worked example: see page 3",
        "Rechenbeispiel siehe Rückseite",
        "Worked example: 1,150 x 92 / 2,000 = $52.90 per MSF",
        "How to read this list",
        "Sample room prices",
    ],
)
def test_a_list_that_only_speaks_of_an_example_is_offered(title):
    assert len(with_a_page(title).lines) == 3


def test_rows_below_a_worked_example_are_passed_over_until_the_next_heading():
    found = lines([HEADS, BOARDS[0], ["Worked example"], SHOWN, ["Coated unbleached kraft"], [*BOARDS[1]]])
    assert sorted(found) == ["D2", "D6"]


def test_a_row_that_may_be_an_example_is_asked_about():
    found = lines([HEADS, *BOARDS, ["Example: SBS C1S", 24, 99, 1200]])
    assert [str(line.state) for line in found.values()] == ["accepted", "accepted", "question"]
