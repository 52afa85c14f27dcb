"""Heads that name the board and its measures: words of lists, and the names of fields that exports have."""

import pytest

from tests.intake.readings import accepted, read_rows
from tests.intake.sheets import lines
from tracker.intake.values.heads.header import header
from tracker.intake.values.heads.two_words import two_words


def test_an_item_column_that_names_the_board_is_the_product():
    reading = read_rows([["US$"], ["Item", "Unit", "Price"], ["18pt SBS C1S 75#/MSF rolls", "CWT", 58.4]])
    assert accepted(reading) == {"C3": ("SBS", "58.4", "USD", "cwt")}


def test_gramaje_is_in_grams_and_bobina_is_a_form():
    head = ["Artículo", "Gramaje", "Espesor (µm)", "Formato", "Más de 5 tm"]
    reading = read_rows(
        [["Precios en €/tm, franco fábrica"], [], head, ["Cartoncillo GC1", 250, 400, "bobina", 1098.5]]
    )
    assert accepted(reading) == {"E4": ("FBB", "1098.5", "EUR", "tonne")}


def test_a_head_that_shows_a_fault_leaves_the_others_heads():
    rows = [
        ["Board", "pt", "#NAME?", "lb/MSF", "USD/ST"],
        ["SBS C1S", 18, "x", 74, 1200],
        ["SBS C1S", 20, "y", 81, 1190],
    ]
    assert {str(line.state) for line in lines(rows).values()} == {"accepted"}


def test_heads_of_words_run_together_are_read_as_words():
    rows = [
        ["LevNr", "LevNamn", "Benämning", "Ytvikt_gm2", "Tjocklek_um", "Pris", "Valuta", "Prisenhet", "LedtidDagar"]
    ]
    rows += [["20418", "Kvarnhult Bruk AB", "GC2 rulle", "230", "370", "13,85", "SEK", "kg", "21"]]
    line = next(iter(lines(rows).values()))
    assert (str(line.state), line.offer.vendor, line.offer.lead_days) == ("accepted", "Kvarnhult Bruk AB", (21, 21))


FIELDS = ["MATNR", "MAKTX", "KBETR", "KONWA", "KPEIN", "KMEIN"]


def test_field_names_of_an_export_are_read():
    rows = [
        ["4711", "GC1 230 g/m² 380 µm", 1225, "EUR", 1, "TO"],
        ["4712", "GC2 250 g/m² 400 µm", 1190, "EUR", 1000, "KG"],
    ]
    found = lines([FIELDS, *rows])
    assert [(str(line.state), line.offer.basis.value) for line in found.values()] == [("accepted", "tonne")] * 2


def offer(rows, cell):
    """The one offer of a price cell, which must be accepted."""
    line = lines(rows)[cell]
    assert str(line.state) == "accepted", [note.text for note in line.notes]
    return line.offer


def test_a_misspelt_gramaje_is_still_in_grams():
    found = offer([["Qualite", "Gramage", "Epaiseur (mic)", "Prix EUR/T"], ["GD2", 350, 470, "843,50"]], "D2")
    assert (found.grammage_gsm, found.basis) == (350, "tonne")


@pytest.mark.parametrize(("head", "role"), [("ZZGRAMM", "weight"), ("ZZDICKE", "caliper"), ("U_CALIPER", "caliper")])
def test_a_field_that_a_firm_added_is_called_by_what_stands_behind_its_sign(head, role):
    assert header(head).role == role
    assert header("ZZTOP").role is None


RUN_TOGETHER = ["ITDSC", "CALPT", "BSWT_LBMSF", "UNTPRC", "PRCUM", "EFFDT", "EXPDT"]
SOLD_BY = [
    ["SBS C1S 16PT ROLL", "16", "68", "63.40", "CWT", "20270101", "20270331"],
    ["CUK 18PT ROLL", "18", "74", "40.95", "MSF", "20270101", "20270331"],
]


def test_two_cut_words_run_together_are_read_as_two():
    rows = [["prices in USD"], RUN_TOGETHER, *SOLD_BY]
    assert accepted(read_rows(rows)) == {"D3": ("SBS", "63.40", "USD", "cwt"), "D4": ("CUK", "40.95", "USD", "msf")}
    assert {str(line.offer.valid_until) for line in lines(rows).values()} == {"2027-03-31"}


def test_an_earlier_price_run_together_is_none_offered():
    beside = [["prices in USD"], [*RUN_TOGETHER, "LASTPRC"], *([*row, "61.10"] for row in SOLD_BY)]
    assert set(accepted(read_rows(beside))) == {"D3", "D4"}
    alone = [["prices in USD"], ["LASTPRC" if head == "UNTPRC" else head for head in RUN_TOGETHER], *SOLD_BY]
    assert not accepted(read_rows(alone))


@pytest.mark.parametrize("name", ["CALIPER", "SOLIDBOARD", "Untprc", "DICKE", "PRC"])
def test_a_word_of_a_list_and_one_that_no_two_words_make_stay_as_they_are(name):
    assert two_words(name) == name
