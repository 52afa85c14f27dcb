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


@pytest.mark.parametrize(
    "title",
    [
        "How to use this price list, with example",
        "How we calculate: list price plus energy surcharge",
        "Sample calculation: energy surcharge 4 % is added to all prices",
        "How the price is calculated: FOB mill, freight prepaid",
    ],
)
def test_a_file_with_one_list_offers_it_whatever_its_title_explains(title):
    assert [str(line.state) for line in lines([[title], HEADS, *BOARDS]).values()] == ["accepted", "accepted"]
    assert len(lines([HEADS, [title], *BOARDS])) == 2


@pytest.mark.parametrize("title", ["Worked example", "How to read this list - an example, not an offer"])
def test_a_file_with_an_example_alone_is_asked_about(title):
    assert [str(line.state) for line in lines([[title], HEADS, *BOARDS]).values()] == ["question", "question"]


def test_an_example_is_passed_over_beside_the_list_on_its_sheet():
    found = lines([["Worked example"], HEADS, SHOWN, [], ["Coated board"], HEADS, *BOARDS])
    assert sorted(found) == ["D7", "D8"]


def test_a_long_list_is_no_example_beside_another():
    many = [["SBS C1S", points, 4 * points, 1165] for points in (14, 16, 18, 20)]
    sheets = [grid([HEADS, *BOARDS], sheet="Prices"), grid([["How we calculate"], HEADS, *many], sheet="More")]
    assert len(read_workbook(book(*sheets), Answers()).lines) == 6
