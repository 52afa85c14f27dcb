"""Prices that nobody offers beside those that somebody does: quoted mails, deals done, diaries of changes."""

import pytest

from tests.intake.sheets import book, grid, lines, read
from tracker.intake.read import read_workbook
from tracker.intake.values.changes.no_offers import offers_nothing
from tracker.trade.offer import Answers

OFFERS = ["SBS C1S 16 pt, 67 lb/MSF - $1,205.00 per short ton", "CUK 21 pt, 86 lb/MSF - $1,092.00 per short ton"]
OLD = ["SBS C1S 16 pt, 67 lb/MSF - $1,165.00 per short ton", "CUK 21 pt, 86 lb/MSF - $1,058.00 per short ton"]
RULES = [
    "-----Original Message-----", "-----Ursprüngliche Nachricht-----", "---- Message d'origine ----",
    "_____Mensaje original_____", "-----Ursprungligt meddelande-----",
]  # fmt: skip
WROTE = [
    "On Wed, Jul 8, 2026 at 4:12 PM, Dana Orvik wrote:", "Am 8. Juli 2026 um 16:12 schrieb Dana Orvik:",
    "Le 8 juil. 2026 à 16:12, Dana Orvik a écrit :", "El 8 jul 2026, a las 16:12, Dana Orvik escribió:",
    "Den 8 juli 2026 kl. 16:12 skrev Dana Orvik:",
]  # fmt: skip


def mail(*texts):
    return [[text] for text in texts]


def offered(rows):
    return [line.offer.source.cell for line in lines(rows).values() if str(line.state) == "accepted"]


@pytest.mark.parametrize("rule", [*RULES, *WROTE])
def test_what_stands_below_an_earlier_message_s_line_is_no_offer(rule):
    reading = read(mail("All FOB mill.", *OFFERS, "", rule, "July prices, lead time 9 weeks:", *OLD))
    assert [line.offer.source.cell for line in reading.lines] == ["A2", "A3"]
    assert [line.offer.lead_days for line in reading.lines] == [None, None]
    assert [passed.rows for passed in reading.passed_over] == ["5-8"]


def test_lines_with_a_sign_of_quotation_are_none_wherever_they_stand():
    assert offered(mail(WROTE[0], *(f"> {text}" for text in OLD), "New prices, FOB mill:", *OFFERS)) == ["A5", "A6"]
    assert offered(mail(*OFFERS, f">> {OLD[0]}")) == ["A1", "A2"]


@pytest.mark.parametrize("rule", [RULES[0], WROTE[0]])
def test_an_offer_that_is_handed_on_is_one(rule):
    assert offered(mail("Please see below.", rule, "Prices FOB mill:", *OFFERS)) == ["A4", "A5"]
    assert offered(mail("Please see below.", *(f"> {text}" for text in OFFERS))) == ["A2", "A3"]


def test_a_sentence_about_who_wrote_is_no_such_line():
    assert offered(mail(OFFERS[0], "As I wrote on 8 July 2026, mills are full.", OFFERS[1])) == ["A1", "A3"]


HEAD = ["Offered", "Caliper", "lb/MSF", "$/ST"]
ROWS = [["SBS C1S", "16 pt", 67, 1145], ["CUK", "18 pt", 73, 998]]
DEALS = [
    "Traded last week (for information, not offers)", "Letzte Woche gehandelt",
    "Transactions récentes (pas des offres)", "Operaciones de la semana pasada",
    "Förra veckans avslut (inga erbjudanden)",
]  # fmt: skip


@pytest.mark.parametrize("heading", DEALS)
def test_a_section_of_deals_done_offers_nothing(heading):
    rows = [HEAD, *ROWS, [], [heading], ["SBS C1S", "16 pt", 67, 1139], ["CRB", "20 pt", 78, 818]]
    assert list(lines(rows)) == ["D2", "D3"]


@pytest.mark.parametrize("heading", DEALS)
def test_and_so_does_a_table_of_its_own(heading):
    rows = [HEAD, *ROWS, [], [heading], HEAD, ["SBS C1S", "16 pt", 67, 1139], ["CRB", "20 pt", 78, 818]]
    assert list(lines(rows)) == ["D2", "D3"]


def test_an_order_size_is_no_quoted_line():
    rows = [["Board", "lb/MSF", "pt", "$/ST"], ["> 10 short tons"], ["SBS C1S", 67, 16, 1145], ["CUK", 73, 18, 998]]
    assert [line.offer.from_kg is not None for line in lines(rows).values()] == [True, True]


@pytest.mark.parametrize("title", ["Indicative, not an offer", "Price list (not an offer), US$/ST", "Kein Angebot"])
def test_what_a_title_says_of_the_whole_list_leaves_its_prices(title):
    assert len(lines([[title], HEAD, *ROWS])) == 2


@pytest.mark.parametrize("heading", ["Traded grades, rolls", "This price list is not an offer", "Surplus, sold as is"])
def test_other_headings_do_not_say_so(heading):
    assert not offers_nothing(heading)
    assert len(lines([HEAD, *ROWS, [heading], ["CRB", "20 pt", 78, 818]])) == 3


PRICES = grid([["US$/MSF"], ["Board", "pt", "lb/MSF", "Price"], ["SBS C1S", 12, 51, 33.1], ["CRB", 18, 71, 31.95]])
LOGS = {
    "log": ["date", "who", "change"], "Protokoll": ["Datum", "wer", "Änderung"],
    "journal": ["date", "qui", "modification"], "historial": ["fecha", "quién", "cambio"],
    "logg": ["datum", "vem", "ändring"],
}  # fmt: skip


def states(*grids):
    return [str(line.state) for line in read_workbook(book(*grids), Answers()).lines]


@pytest.mark.parametrize("name", LOGS)
def test_a_diary_of_changes_changes_no_price(name):
    said = ["2026-10-01", "rk", "v9: all SBS +3.5 %"]
    assert states(PRICES, grid([LOGS[name], said], sheet="Sheet2")) == ["accepted"] * 2
    assert states(PRICES, grid([said, ["2026-10-06", "rk", "CRB 18: was 31.50"]], sheet=name)) == ["accepted"] * 2


def test_another_sheet_s_words_of_a_change_still_ask():
    assert "question" in states(PRICES, grid([["All SBS +3.5 %"]], sheet="Notes"))
