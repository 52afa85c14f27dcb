"""From a workbook to lines and questions: what is certain, what is asked, what is told."""

from datetime import date
from decimal import Decimal

import pytest

from tests.intake.sheets import book, codes, grid, lines, read
from tracker.intake.read import read_sheet, read_workbook
from tracker.trade.basis import Basis
from tracker.trade.offer import Answers, GrammageFrom, State

HEAD = ["Board", "Caliper (pt)", "lb/MSF", "Price USD/ST"]
SBS, CRB = ["SBS C1S", 18, 75, 1165], ["CRB C1S", 18, 70, 900]


def only(rows, answers=None, **more):
    (line,) = lines(rows, answers, **more).values()
    return line


def headed(head, value, **more):
    """The one line of a list whose price column is headed so."""
    return only([["Board", "Caliper (pt)", "lb/MSF", head], ["SBS C1S", 18, 75, value]], **more)


def test_a_plain_line_is_accepted_with_what_said_each_field():
    offer = headed("Price (USD/short ton)", 1195).offer
    assert (offer.grade, offer.coated_sides, offer.caliper_um) == ("SBS", 1, Decimal("457.2"))
    assert (offer.price, offer.currency, offer.basis) == (1195, "USD", Basis.SHORT_TON)
    assert offer.grammage_from is GrammageFrom.QUOTED
    said = {evidence.field: evidence for evidence in headed("Price (USD/short ton)", 1195).evidence}
    assert said["currency"].said_by == "D1"
    assert said["grade"].words == "SBS C1S"


def test_a_line_rests_on_nothing_but_what_the_sheet_says():
    line = headed("Price", 1195)
    assert line.state is State.QUESTION
    assert codes(line) == {"currency-unknown", "basis-unknown"}


OPEN = {
    "the format names another currency": (["USD/ST"], ["SBS", 18, 75, 1100], "currency-unknown"),
    "kr is four countries' money": (["kr/tonne"], ["SBS", 18, 75, 11000], "currency-unknown"),
    "a ream has no fixed area": (["USD/ream"], ["SBS", 18, 75, 60], "basis-unknown"),
    "the unit column contradicts the header": (["USD/ST", "Unit"], ["SBS", 18, 75, 1100, "MT"], "basis-unknown"),
    "a trade name that nothing explains": (["USD/ST"], ["Fenlight White", 18, 75, 1100], "grade-unknown"),
    "unbleached kraft, coated or not": (["USD/ST"], ["Unbleached kraft board", 18, 75, 1100], "grade-unknown"),
    "no board is so dense": (["USD/ST"], ["SBS", 18, 350, 1100], "weight-implausible"),
    "two calipers": (["USD/ST"], ["SBS 20pt", 18, 75, 1100], "caliper-unknown"),
    "two basis weights": (["g/m²", "USD/ST"], ["SBS", 18, 75, 450, 1100], "weight-implausible"),
    "a range": (["USD/ST"], ["SBS", 18, 75, "1,210–1,240"], "number-ambiguous"),
    "a thousand or a decimal": (["Price"], ["SBS", 18, 75, "1,234 USD/ST"], "number-ambiguous"),
    "list or net": (["List price USD/ST", "Discount %"], ["SBS", 18, 75, 1100, 5], "number-ambiguous"),
}


@pytest.mark.parametrize("why", OPEN)
def test_what_the_sheet_leaves_open_or_contradicts_is_asked(why):
    heads, row, code = OPEN[why]
    formats = {(1, 3): "[$€-407] #,##0.00"} if "format" in why else {}
    line = only([["Board", "pt", "lb/MSF", *heads], row], formats=formats)
    assert line.state is State.QUESTION
    assert code in codes(line)


@pytest.mark.parametrize(
    ("note", "head", "code"),
    [
        ("Prices in USD per tonne", "EUR/tonne", "currency-unknown"),
        ("Prices in USD per tonne", "USD/ST", "basis-unknown"),
        ("Boardwell Mills, Hamilton, Ontario", "$/ST", "currency-unknown"),
    ],
)
def test_a_title_that_contradicts_the_header_is_asked(note, head, code):
    line = only([[note], [], ["Board", "pt", "lb/MSF", head], ["SBS", 18, 75, 1100]])
    assert line.state is State.QUESTION
    assert code in codes(line)


def test_an_answer_settles_what_the_sheet_leaves_open_and_overrules_nothing():
    rows = [["Board", "pt", "g/m²", "USD/ton"], ["SBS", 18, 360, 1100]]
    assert only(rows, {"ton": "metric"}).offer.basis is Basis.TONNE
    assert headed("Price USD/ST", 1100, answers={"ton": "metric", "currency": "EUR"}).offer.currency == "USD"
    trade_name = [HEAD, ["Fenlight White", 18, 75, 1085]]
    assert only(trade_name, {"grade:fenlight white": "SBS"}).offer.grade == "SBS"


def test_one_cause_is_one_question_with_all_its_cells():
    rows = [["Board", "pt", "g/m²", "USD/ton"], ["SBS", 18, 360, 1100], ["CRB", 18, 350, 900]]
    (question,) = read(rows).questions
    assert question.key == "ton"
    assert [choice.value for choice in question.choices] == ["short", "metric"]
    assert question.cells == (("Sheet1", "D2"), ("Sheet1", "D3"))


def test_a_price_on_another_basis_is_the_same_offer_and_must_agree():
    rows = [["Board", "pt", "lb/MSF", "$/ST", "$/MSF"], ["SBS", 16, 66, 1245, 41.08], ["CRB", 18, 70, 855, 34.02]]
    found = lines(rows)
    assert found["D2"].offer.source.also == ("E2",)
    assert found["D2"].state is State.ACCEPTED
    assert codes(found["D3"]) == {"prices-disagree"}


def test_a_second_currency_and_a_delivered_price_are_offers_of_their_own():
    assert set(lines([["Board", "pt", "lb/MSF", "USD/ST", "CAD/ST"], ["SBS", 18, 75, 1100, 1500]])) == {"D2", "E2"}
    both = lines([["Board", "pt", "lb/MSF", "FOB mill USD/ST", "Delivered USD/ST"], ["SBS", 18, 75, 1100, 1160]])
    assert [line.offer.delivered for line in both.values()] == [False, True]


def test_the_sheets_name_and_another_sheets_terms_count():
    terms = grid([["Prices in US dollars per cwt (100 lb), FOB mill."], ["Valid until 12/31/2026."]], "Terms")
    sheet = grid([["Caliper, pt", "lb/MSF", "Price"], [14, 60, 57.75]], "SBS C1S")
    (line,) = read_workbook(book(terms, sheet), Answers()).lines
    offer = line.offer
    assert (offer.grade, offer.basis, offer.delivered, offer.valid_until) == (
        "SBS",
        Basis.CWT,
        False,
        date(2026, 12, 31),
    )


def test_terms_beside_the_price_are_read_and_what_is_not_plain_stays_open_with_a_note():
    rows = [
        ["Minimum order 10,000 lb. FOB mill. Offer valid until 03/04/2026"],
        [],
        [*HEAD, "Lead time"],
        [*SBS, "TBA"],
    ]
    line = only(rows)
    offer = line.offer
    assert (offer.minimum_kg, offer.delivered, offer.valid_until, offer.lead_days) == (
        Decimal("4535.9237"),
        False,
        None,
        None,
    )
    assert line.state is State.ACCEPTED
    assert codes(line) == {"date-ambiguous", "lead-time-unread"}


def test_reading_is_pure():
    rows = [HEAD, SBS, CRB]
    assert read(rows) == read(rows)


def test_a_file_that_is_no_sheet_is_told_in_one_sentence(tmp_path):
    path = tmp_path / "sheet.xlsx"
    path.write_bytes(b"PK\x03\x04 broken")
    reading = read_sheet(path, Answers())
    assert reading.unreadable
    assert reading.lines == ()


def test_a_file_is_read_in_its_own_process(tmp_path):
    path = tmp_path / "list.csv"
    path.write_text("Board,Caliper (pt),lb/MSF,Price USD/ST\nSBS C1S,18,75,1165\n", encoding="utf-8")
    (line,) = read_sheet(path, Answers()).lines
    assert (line.offer.source.cell, line.offer.price) == ("D2", 1165)
