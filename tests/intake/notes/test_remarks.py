"""What the remarks of a row say of its price comes before what the sheet says of all."""

from dataclasses import replace
from datetime import date

import pytest

from tests.intake.readings import by_cell, pounds, read_rows
from tests.intake.sheets import book, codes, grid, lines
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

HEAD = ["Grade", "pt", "lb/MSF"]
BOARD = ["SBS C1S", 18, 75]


def test_a_lead_time_and_a_smallest_order_among_the_remarks():
    rows = [
        [*BOARD, 1165, "4 to 5 weeks; min 10,000 lb"],
        ["CRB", 20, 79, 880.5, "In stock, min 2 t"],
        ["CUK", 18, 74, 990, "30 days"],
    ]
    found = by_cell(read_rows([[*HEAD, "USD/ST", "Remarks"], *rows]))
    assert [line.offer.lead_days for line in found.values()] == [(28, 35), (0, 0), None]
    assert found["D2"].offer.minimum_kg == pounds(10_000)


REMARK_HEAD = ["Sorte", "g/m²", "µm", "Preis", "Hinweis"]


def remarked(text, title="EUR/t frei Haus"):
    """The line with the remark; a second row without one shows that nothing else changed."""
    rows = [[title], REMARK_HEAD, ["GC1", 250, 405, 1290, text], ["GD2", 350, 465, 880, "FSC Mix"]]
    found = lines(rows)
    other = found["D4"].offer
    assert (other.delivered, other.valid_until, other.from_kg, other.charges) == (True, None, None, ())
    return found["D3"]


@pytest.mark.parametrize(("text", "delivered"), [("ab Werk", False), ("DAP", True), ("nur Restmengen", True)])
def test_delivery(text, delivered):
    assert remarked(text).offer.delivered is delivered


def test_validity():
    assert remarked("gültig bis 31.10.2026").offer.valid_until == date(2026, 10, 31)


@pytest.mark.parametrize(
    ("text", "bounds"),
    [
        ("ab 5 t", (5000, None)),
        ("nur bis 10 t", (None, 10000)),
        ("Palette 5 t", (None, None)),
        ("Mindestmenge 5 t", (None, None)),
    ],
)
def test_an_order_size_and_nothing_else(text, bounds):
    offer = remarked(text).offer
    assert (offer.from_kg, offer.below_kg) == bounds


@pytest.mark.parametrize("text", ["in CHF", "USD", "USD/t", "Preis in CHF"])
def test_another_currency_contradicts_the_title(text):
    line = remarked(text)
    assert str(line.state) == "question"
    assert "currency-unknown" in codes(line)


@pytest.mark.parametrize(("text", "charges"), [("zzgl. 25 EUR/t FSC-Zuschlag", [25]), ("FSC-Zuschlag auf Wunsch", [])])
def test_charges(text, charges):
    assert [charge.price for charge in remarked(text).offer.charges] == charges


def test_a_charge_of_the_row_beside_one_of_the_sheet():
    rows = [
        ["EUR/t frei Haus, zzgl. Maut 8 EUR/t"],
        REMARK_HEAD,
        ["GC1", 250, 405, 1290, "zzgl. 25 EUR/t FSC-Zuschlag"],
    ]
    (line,) = lines(rows).values()
    assert [charge.price for charge in line.offer.charges] == [25, 8]


def test_a_comment_on_a_head_or_a_price_says_what_it_is_in():
    plain = grid([["Board", "g/m²", "µm", "Price"], ["GC1", 250, 405, 1101], ["GC1", 300, 490, 1090]])
    noted = dict(plain.cells)
    noted[0, 3] = noted[0, 3]._replace(comment="GBP per tonne")
    said = read_workbook(book(replace(plain, cells=noted)), Answers()).lines
    assert [(line.state, line.offer.currency, line.offer.basis) for line in said] == [("accepted", "GBP", "tonne")] * 2
    noted[2, 3] = noted[2, 3]._replace(comment="EUR per tonne")
    said = read_workbook(book(replace(plain, cells=noted)), Answers()).lines
    assert [line.state for line in said] == ["accepted", "question"]


@pytest.mark.parametrize(
    "text",
    ["this one per cwt", "diese Position per cwt", "cette ligne par cwt", "esta línea por cwt", "denna rad per cwt"],
)
def test_a_unit_of_this_line_is_no_other_lines(text):
    head = ["Board", "pt", "lb/MSF", "Price", "Remarks"]
    rows = [["US dollars"], head, ["CRB C1S", 20, 78, 44.5, "per cwt"], ["CRB C1S", 28, 105, 44.2, text]]
    assert [line.offer.basis for line in lines(rows).values()] == ["cwt", "cwt"]
    rows[-1][-1] = "this one on pallets"
    assert [line.offer.basis for line in lines(rows).values()] == ["cwt", None]
