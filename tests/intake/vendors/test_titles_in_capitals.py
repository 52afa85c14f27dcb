"""Titles in capitals, in which the letters of a legal form are a word, and letterheads in pieces."""

import pytest

from tests.intake.readings import read_rows
from tracker.intake.values.firms.company import company_name, letterhead_name

HEAD = ["Grade", "pt", "lb/MSF"]
BOARD = ["SBS C1S", 18, 75]


@pytest.mark.parametrize(
    "title",
    [
        "REEL STOCK AS OF MARCH 4, 2027", "Reel Stock As At 4 March", "KRAFT REELS AS FOLLOWS", "BOARD SOLD AS IS",
        "ODD SHEETS AS LONG AS STOCK LASTS", "BOARD IN REELS INC VAT",
        "WHITE TOP BOARD INC FREIGHT", "SHEETED BOARD LIMITED QUANTITIES",
        "STOCK SIZES E.G. 70X100 CM",
        "LAGERKARTON AB 1. MÄRZ 2027", "KARTON AB 01.03.2027", "KARTON AB LAGER", "KARTON AB SOFORT", "KARTON AB 5 T",
        "KARTON AB 3 LKW", "BOGENKARTON AB 500 MM",
        "CARTONS EN FEUILLES SE COMMANDENT PAR PALETTE", "LE CARTON ET SA FEUILLE", "CARTONS DE SA GAMME",
        "CARTONCILLOS EN HOJA SE VENDEN POR PALET", "LAS HOJAS SE ENTIENDEN SIN IVA",
        "KARTONG I ARK SE BILAGA 2", "KARTONG SÅ LÄNGE LAGRET RÄCKER",
    ],
)  # fmt: skip
def test_the_letters_of_a_form_may_be_a_word_of_a_title(title):
    assert company_name(title) is None
    assert letterhead_name(title) is None


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("GRANVASSA KARTONG AB PRISLISTA", "GRANVASSA KARTONG AB"),
        ("GRANVASSA KARTONG AB 2027-03-01", "GRANVASSA KARTONG AB"),
        ("FJELLVIK KARTONG AS OFFER 2027", "FJELLVIK KARTONG AS"),
        ("Fjellvik Kartong AS per 1. mars 2027", "Fjellvik Kartong AS"),
        ("Granvassa Kartong AB 1. mars", "Granvassa Kartong AB"),
        ("CARTONNERIE DE LORVAIN SA", "CARTONNERIE DE LORVAIN SA"),
        ("HALLEN KARTON SE PREISLISTE", "HALLEN KARTON SE"),
        ("MARLOW BOARD LIMITED STOCK LIST", "MARLOW BOARD LIMITED"),
        ("MARLOW BOARD INC OFFER", "MARLOW BOARD INC"),
        ("MARLOW BOARD, INC.", "MARLOW BOARD, INC."),
        ("MARLOW BOARD INC FREIGHT TERMS", "MARLOW BOARD INC"),
        ("MARLOW BOARD INC ALL PRICES DELIVERED", "MARLOW BOARD INC"),
        ("Marlow Board Inc Freight", "Marlow Board Inc"),
        ("GRANVASSAKARTONG AB 1. PRISLISTA", "GRANVASSAKARTONG AB"),
        ("FJELLVIKKARTONG AS AS OF MARCH 1 2027", "FJELLVIKKARTONG AS"),
    ],
)
def test_a_form_that_ends_a_name_makes_a_firm_in_capitals_too(text, name):
    assert company_name(text) == name


@pytest.mark.parametrize("mark", ["  *  ", " • ", " | ", " · ", " :: ", "     "])
def test_the_first_piece_of_a_letterhead_is_the_firm(mark):
    letterhead = mark.join(["Tolbrook Sheet & Board", "Akron, Ohio", "wholesale paperboard in skids"])
    rows = [[None, letterhead], [None, "SKID STOCK AS OF MARCH 4, 2027"], [*HEAD, "USD/ST"], [*BOARD, 1165]]
    assert {line.offer.vendor for line in read_rows(rows).lines} == {"Tolbrook Sheet & Board"}


@pytest.mark.parametrize("mark", ["  *  ", " • ", " :: "])
def test_the_first_piece_of_a_title_is_no_firm_without_a_name_in_it(mark):
    rows = [[mark.join(["Coated Sheet & Board", "Spring stock"])], [*HEAD, "USD/ST"], [*BOARD, 1165]]
    assert {line.offer.vendor for line in read_rows(rows).lines} == {None}
