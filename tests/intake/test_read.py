"""From a workbook to lines and questions: what is certain, what is asked, what is told."""

from datetime import date
from decimal import Decimal

import pytest

from tests.intake.sheets import book, codes, grid, lines, merged, read
from tracker.intake.grid import CellFault
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


def test_a_ton_among_points_and_grams_and_pounds_without_a_caliper_are_asked():
    assert codes(only([["Board", "pt", "g/m²", "USD/ton"], ["SBS", 18, 360, 1100]])) == {"basis-unknown"}
    assert "weight-basis-unknown" in codes(only([["Board", "lb", "USD/MSF"], ["URB", 130, 34]]))


@pytest.mark.parametrize(("weight", "gsm"), [(71, Decimal("346.652362183")), (213, Decimal("346.652362183"))])
def test_pounds_without_an_area_are_settled_by_physics_with_a_note(weight, gsm):
    line = only([["Board", "pt", "lb", "USD/ST"], ["CRB C1S", 18, weight, 905]])
    assert line.state is State.ACCEPTED
    assert line.offer.grammage_gsm == gsm
    assert codes(line) == {"weight-basis-unknown"}


def test_a_ton_is_short_among_pounds_and_inches_and_a_tonne_among_grams_and_microns():
    assert headed("USD/ton", 1100).offer.basis is Basis.SHORT_TON
    assert only([["Board", "µm", "g/m²", "USD/ton"], ["SBS", 457, 366, 1100]]).offer.basis is Basis.TONNE


def test_a_stated_ton_settles_every_ton():
    rows = [
        ["All tons are metric tons of 1,000 kg."],
        [],
        *[["Board", "pt", "lb/MSF", "USD/ton"], ["SBS", 18, 75, 1100]],
    ]
    assert only(rows).offer.basis is Basis.TONNE


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


def test_cents_are_given_in_the_main_unit():
    offer = headed("Price ¢/lb", 52.5).offer
    assert (offer.price, offer.currency, offer.basis) == (Decimal("0.525"), "USD", Basis.LB)


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


def test_brackets_across_end_where_the_next_begins():
    rows = [["Grade", "g/m²", "µm", "< 5 t", "5–20 t", "> 20 t"], ["GC2", 235, 380, 1260, 1205, 1165]]
    found = lines([["EUR per tonne"], [], *rows])
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found.values()] == [
        (None, 5000),
        (5000, 20000),
        (20000, None),
    ]


def test_a_place_once_holds_for_the_boards_below_it():
    boards = [["SBS C1S", 18, 75], ["CRB C1S", 18, 70]]
    places = [[place if first else None, *board, price + 1100] for place, price in (("Dayton", 0), ("Reno", 58))
              for first, board in zip((True, False), boards, strict=True)]  # fmt: skip
    found = lines([["Ship to", "Board", "Caliper (pt)", "lb/MSF", "USD/ST delivered"], *places])
    assert {cell: line.state for cell, line in found.items()} == dict.fromkeys(("E2", "E3", "E4", "E5"), State.ACCEPTED)


def test_brackets_down_hold_for_the_board_written_once_above():
    rows = [
        ["Grade", "µm", "g/m²", "Quantity", "EUR/t"],
        ["GC2", 380, 235, "from 3 t", 1260],
        [None, None, None, "from 10 t", 1205],
    ]
    found = lines(rows)
    assert [(line.offer.grade, line.offer.from_kg, line.offer.below_kg) for line in found.values()] == [
        ("FBB", 3000, 10000),
        ("FBB", 10000, None),
    ]


@pytest.mark.parametrize(
    ("note", "grade"),
    [("(stock sizes only)", "FBB"), ("not stocked, made to order", "FBB"), ("Marlow White", None), ("GD2", "CRB")],
)
def test_a_remark_between_the_rows_of_a_group_leaves_it_one(note, grade):
    rows = [["Grade", "µm", "g/m²", "EUR/t"], ["GC2", 380, 235, 1260], [note], [None, 400, 250, 1205]]
    assert [line.offer.grade for line in lines(rows).values()] == ["FBB", grade]


def test_an_order_size_that_is_no_weight_is_asked():
    line = lines([["USD per short ton"], [], ["Board", "pt", "lb/MSF", "Full truckload"], ["SBS", 18, 75, 1100]])["D4"]
    assert codes(line) == {"bracket-unread"}


def test_once_written_and_merged_grades_hold_but_a_blank_among_repeats_does_not():
    once = lines([HEAD, SBS, [None, 20, 83, 1150]])
    assert once["D3"].offer.grade == "SBS"
    together = lines([HEAD, SBS, [None, 20, 83, 1150]], merged=merged((1, 0, 2, 0)))
    assert together["D3"].offer.grade == "SBS"
    repeated = lines([HEAD, SBS, ["SBS C1S", 20, 83, 1150], [None, 24, 98, 1140]])
    assert codes(repeated["D4"]) == {"grade-unknown"}


def test_a_sub_heading_gives_the_grade_until_the_next():
    found = lines([["Caliper (pt)", "lb/MSF", "USD/ST"], ["SBS C1S"], [18, 75, 1165], ["CRB"], [18, 70, 900]])
    assert [(line.offer.grade, line.offer.coated_sides) for line in found.values()] == [("SBS", 1), ("CRB", None)]


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


@pytest.mark.parametrize("words", ["call", "n/q", "-", "on request"])
def test_words_that_offer_no_price_make_no_line(words):
    assert set(lines([HEAD, SBS, ["CRB", 18, 70, words]])) == {"D2"}


def test_totals_charges_and_freight_rates_are_no_offers():
    rows = [
        HEAD,
        SBS,
        CRB,
        ["Average", None, None, 1032.5],
        ["Freight", None, None, 60],
        [],
        ["Freight to", "USD/cwt"],
        ["Chicago", 1.85],
    ]
    reading = read(rows)
    assert [line.offer.source.cell for line in reading.lines] == ["D2", "D3"]
    assert {passed.why for passed in reading.passed_over} >= {"a total or an average", "a charge, no board"}


def test_a_superseded_table_and_a_sheet_of_an_earlier_year_are_passed_over():
    rows = [HEAD, SBS, [], ["Price list 2025, superseded"], HEAD, CRB]
    assert set(lines(rows)) == {"D2"}
    for of_others in ("All previous prices are void.", "Offer withdrawn if not accepted by June 30, 2026"):
        assert set(lines([["USD/ST"], [of_others], HEAD, SBS])) == {"D4"}
    assert set(lines([["Cancelled orders are charged at cost"], HEAD, SBS])) == {"D3"}
    assert set(lines([["These prices expire December 15, 2026."], HEAD, SBS])) == {"D3"}
    for title in ("SUPERSEDED - valid to 30 Jun", "No longer valid from 1 July 2026", "Ungültig ab 1. Juli 2026"):
        assert set(lines([HEAD, SBS, [], [title], HEAD, CRB])) == {"D2"}
    assert not lines([["SUPERSEDED by the list of 1 May 2026 – EUR per tonne DAP"], [], HEAD, SBS])
    years = book(grid([HEAD, SBS], "2026"), grid([HEAD, CRB], "2025"))
    assert [line.offer.source.sheet for line in read_workbook(years, Answers()).lines] == ["2026"]


def test_a_row_repeated_is_not_accepted_twice_and_one_with_another_price_is_asked():
    assert set(lines([HEAD, SBS, CRB, SBS])) == {"D2", "D3"}
    found = lines([HEAD, SBS, CRB, [*SBS[:3], 1190]])
    assert [line.state for line in found.values()] == [State.QUESTION, State.ACCEPTED, State.QUESTION]
    assert codes(found["D2"]) == {"prices-disagree"}


def test_faults_and_prices_of_nothing_are_refused():
    sheet = grid([HEAD, ["CRB", 16, 62, 1], ["CRB", 18, 70, 1], ["CRB", 20, 78, 0], ["CRB", 22, 86, -890]])
    cells = dict(sheet.cells)
    cells[1, 3] = cells[1, 3]._replace(value=None, text="=A1-A2", fault=CellFault.FORMULA_WITHOUT_VALUE)
    cells[2, 3] = cells[2, 3]._replace(value=None, text="#N/A", fault=CellFault.ERROR)
    reading = read_workbook(book(type(sheet)("Sheet1", cells)), Answers())
    assert all(line.state is State.REFUSED for line in reading.lines)
    assert [codes(line) for line in reading.lines] == [
        {"formula-without-value"}, {"error-cell"}, {"price-not-positive"}, {"price-not-positive"},
    ]  # fmt: skip


def test_hidden_rows_are_read_with_a_note():
    found = lines([HEAD, SBS, CRB], hidden_rows=frozenset({2}))
    assert codes(found["D2"]) == set()
    assert codes(found["D3"]) == {"hidden"}


def test_a_board_without_a_weight_has_a_marked_estimate():
    line = only([["Board", "Caliper (pt)", "USD/MSF"], ["SBS C1S", 18, 41.5]])
    assert line.state is State.ACCEPTED
    assert line.offer.grammage_from is GrammageFrom.ESTIMATED
    assert codes(line) == {"weight-estimated"}


def test_charges_stand_in_columns_and_notes_with_their_own_units():
    rows = [
        ["Freight $1.85/cwt extra."],
        [],
        ["Board", "pt", "lb/MSF", "US$/ST", "Energy surcharge %"],
        ["SBS", 16, 67, 1130, 3],
    ]
    charges = {charge.label.casefold(): charge for charge in only(rows).offer.charges}
    assert (charges["freight"].price, charges["freight"].basis, charges["freight"].freight) == (
        Decimal("1.85"),
        Basis.CWT,
        True,
    )
    assert (charges["energy surcharge"].price, charges["energy surcharge"].basis) == (3, None)


@pytest.mark.parametrize(
    "note", ["* includes 3 % energy surcharge", "Sheeting $4.50/cwt if ordered in sheets.", "Pallet deposit $15 each."]
)
def test_what_is_included_or_conditional_is_no_charge(note):
    line = only([HEAD, SBS, [], [note]])
    assert line.state is State.ACCEPTED
    assert line.offer.charges == ()


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


def test_one_decimal_sign_in_the_column_settles_the_others():
    rows = [["Sorte", "µm", "g/m²", "Preis €/t"], ["GC1", 400, 250, "1.234"], ["GD2", 400, 300, "840,50"]]
    assert lines(rows)["D2"].offer.price == 1234


def test_the_vendor_is_who_quotes_and_not_who_asked():
    rows = [["Quotation for Larkmoor Foods Inc."], ["From: Ferrowick Mills LLC"], [], HEAD, SBS]
    assert read(rows).vendor == "Ferrowick Mills LLC"


def test_an_empty_purpose_is_told_and_not_asked():
    reading = read([["Terms of sale"], ["Payment 1% 10 days, net 30."]])
    assert reading.lines == ()
    assert [passed.why for passed in reading.passed_over] == ["no prices"]


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
