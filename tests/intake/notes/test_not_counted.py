"""What is said of money, or of a list out of force, and changes no line, is told with its words and asked of nobody."""

import pytest

from tests.intake.sheets import book, grid, read
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers, NoteCode, State

LIST = [["Board", "pt", "lb/MSF", "USD/ST"], ["SBS", 16, 66, 1190], ["CRB", 20, 79, 890]]


def told(*texts, rows=LIST):
    """Why parts were passed over, of a list with these lines below it; no line may be held back or noted by them."""
    found = read([*rows, [None], *([text] for text in texts)])
    assert all(line.state is State.ACCEPTED for line in found.lines)
    return [part.why.removesuffix(" was not counted") for part in found.passed_over]


@pytest.mark.parametrize(
    "text",
    [
        "Less 2% for truckloads.",
        "2% discount for truckloads",
        "Prices increase by $40 per ton from 1 January 2027.",
        "Old price list - superseded",
        "Pallets are charged at cost",
        "Fuel surcharge per index",
        "On allocation",
        "Abzüglich 2 % bei vollen Ladungen.",
        "Die Preise erhöhen sich zum 1. Januar 2027 um 40 EUR je Tonne.",
        "Paletten werden berechnet",
        "Nur auf Zuteilung",
        "Alte Preisliste - ungültig",
        "2 % de remise pour camion complet",
        "Les prix augmentent de 40 EUR la tonne au 1er janvier 2027.",
        "Palettes au prix coûtant",
        "Sur allocation",
        "2 % de descuento por camión completo",
        "Los precios suben 40 EUR por tonelada el 1 de enero de 2027.",
        "Los palés se facturan aparte",
        "Sujeto a asignación",
        "2 % rabatt för hel bil",
        "Priserna höjs med 40 EUR per ton den 1 januari 2027.",
        "Pallar debiteras",
        "Endast tilldelning",
    ],
)
def test_a_condition_that_no_rule_used_is_told(text):
    assert told(text) == [f"“{text.strip('.')}”"]


@pytest.mark.parametrize(
    "text",
    [
        "We thank you for your inquiry.",
        "Terms: net 30 days",
        "2% 10 days, net 30",
        "Payment within 14 days with 2 % discount",
        "Fenlight Board Inc, 12 Weir Road, Dayton OH 45402",
        "Tolerance on caliper 5 %",
        "Overrun/underrun +/-10%",
        "Recycled content 100 %",
        "Prices exclude 8 % sales tax",
        "No surcharges of any kind",
        "Late payments bear 1.5% per month",
        "Less than 5 tons on request",
        "Zahlung: 30 Tage netto, 14 Tage 2 % Skonto",
        "Mehr- oder Minderlieferung bis 10 % vorbehalten",
        "Alle Preise zzgl. 19 % MwSt.",
        "Wir danken für Ihre Anfrage",
        "Paiement à 30 jours, escompte 2 %",
        "Prix hors TVA 20 %",
        "Nous vous remercions de votre demande",
        "Pago a 30 días, 2 % por pronto pago",
        "Tarifa de cartón en hojas y bobinas",
        "Gracias por su consulta",
        "Betalning 30 dagar netto",
        "Över- och underleverans 10 %",
        "Tack för er förfrågan",
    ],
)
def test_an_ordinary_sentence_is_not(text):
    assert told(text) == []


@pytest.mark.parametrize(
    ("text", "left"),
    [
        ("Prices do not include freight. Less 2% for truckloads.", "Less 2% for truckloads"),
        ("Terms: net 30, FOB Fenlight, fuel surcharge per index", "fuel surcharge per index"),
        ("FOB mill, energy surcharge 4%. Pallets at cost.", "Pallets at cost"),
        ("Ab Werk. Abzüglich 2 % bei vollen Ladungen.", "Abzüglich 2 % bei vollen Ladungen"),
        ("Départ usine. Palettes au prix coûtant.", "Palettes au prix coûtant"),
        ("En fábrica. Los palés se facturan aparte.", "Los palés se facturan aparte"),
        ("Fritt fabrik. Pallar debiteras.", "Pallar debiteras"),
    ],
)
def test_of_a_text_that_is_used_in_part_only_the_rest_is_told(text, left):
    assert told(text) == [f"“{left}”"]


@pytest.mark.parametrize(
    "text",
    [
        "Energy surcharge 4% applies.",
        "FOB mill, energy surcharge 4%.",
        "Freight $45/ST extra",
        "Energiezuschlag 4 %, wird gesondert berechnet",
        "Surcharge énergie 4 %, facturée en sus sur toutes les qualités",
        "Sheeting $60/ST on request",
    ],
)
def test_what_lines_came_to_is_not_told_again(text):
    assert told(text) == []


def test_what_is_asked_about_is_not_told_as_well():
    found = read([*LIST, [None], ["All prices less 3%"]])
    assert {note.code for line in found.lines for note in line.notes} >= {NoteCode.NUMBER_AMBIGUOUS}
    assert found.passed_over == ()


def test_the_words_of_a_footnote_are_told_and_its_price_stays():
    rows = [LIST[0], ["SBS", 16, 66, 1190], ["CRB", 20, 79, "890*"]]
    assert told("* allocation only", rows=rows) == ["“allocation only”"]


def test_a_remark_beside_a_price_is_told_with_its_row():
    rows = [[*LIST[0], "Remarks"], [*LIST[1], "on allocation"], [*LIST[2], "stock"]]
    found = read(rows)
    assert [(part.rows, part.why) for part in found.passed_over] == [("2", "“on allocation” was not counted")]


def test_what_a_column_of_charges_is_in_is_no_condition_of_its_own():
    rows = [["Energy surcharge in % of the board price"], [*LIST[0], "Energy surcharge"], [*LIST[1], 4], [*LIST[2], 4]]
    assert told(rows=rows) == []


def test_what_marks_prices_as_old_is_told_once():
    old = [
        ["Old prices 2025, superseded"],
        ["Board", "pt", "lb/MSF", "USD/ST"],
        ["SBS", 16, 66, 1100],
        ["CRB", 20, 79, 800],
    ]
    found = read([["Prices 2026"], *LIST, [None], [None], *old])
    assert [part.why for part in found.passed_over] == ["marked as old"]


@pytest.mark.parametrize("text", ["Prices delivered dayton", "Delivered on request", "Delivered Dayton or FOB mill"])
def test_freight_that_is_left_open_is_told(text):
    assert told(text) == [f"“{text}”"]


@pytest.mark.parametrize(
    "text", ["Prices delivered Dayton", "FOB mill", "Board delivered in reels", "Delivered damaged"]
)
def test_freight_that_is_read_or_not_spoken_of_is_not(text):
    assert told(text) == []


def test_a_text_that_two_sheets_have_is_used_in_both():
    text, other = "FOB mill, energy surcharge 4%", [["Board", "pt", "lb/MSF", "USD/ST"], ["CUK", 18, 74, 1100]]
    sheets = (grid([*rows, [None], [text]], sheet=name) for name, rows in (("One", LIST), ("Two", other)))
    assert read_workbook(book(*sheets), Answers()).passed_over == ()


def test_a_sheet_of_terms_is_gone_over_as_well():
    terms = grid([["Terms"], ["Prices FOB mill."], ["Pallets are charged at cost."]], sheet="Terms")
    found = read_workbook(book(grid(LIST, sheet="List"), terms), Answers())
    assert [(part.sheet, part.rows, part.why) for part in found.passed_over if "counted" in part.why] == [
        ("Terms", "3", "“Pallets are charged at cost” was not counted")
    ]
