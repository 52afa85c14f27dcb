"""Sentences in a mail that say of a board that the price printed for it is wrong, or that its list's last day is."""

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Grade", "gsm", "Micron", "£ per tonne"]
BOARDS = [["GC2", 235, 370, 1139], ["GC2", 300, 495, 1181], ["GC2", 325, 545, 1111], ["GD2", 300, 400, 758]]
FOOT = ["Prices in pounds sterling, delivered. Valid until 31 March 2027."]


def told(note, *, above=True):
    rows = [HEAD, *BOARDS, FOOT]
    return lines([["Hallowby Board Sales Ltd"], [], [note], [], *rows] if above else [*rows, [note]])


def states(note, *, above=True):
    return "".join(str(line.state)[0] for line in told(note, above=above).values())


@pytest.mark.parametrize("above", [True, False])
@pytest.mark.parametrize(
    "note",
    [
        "1. GC2 300 gsm: the price in the table is a typing error. It should read 1,118.00, not 1,181.00.",
        "GC2 300 gsm: the price in the table is a typing error.",
        "GC2 300 gsm: an oversight of ours. It should read 1,118.00.",
        "It should read 1,118.00, not 1,181.00.",
        "The price of GC2 300 gsm is 1,118.00 and not 1,181.00 as printed.",
        "Please correct GC2 300 gsm to 1,118.00.",
        "Correction: GC2 300 gsm 1,118.00 (not 1,181.00)",
        "GC2 300 g/m²: der Preis in der Tabelle ist ein Tippfehler. Er muss 1.118,00 lauten, nicht 1.181,00.",
        "GC2 300 g/m²: bitte auf 1.118,00 korrigieren.",
        "GC2 300 g/m² : le prix du tableau est une faute de frappe. Il faut lire 1 118,00 et non 1 181,00.",
        "Veuillez corriger GC2 300 g/m² : 1 118,00",
        "GC2 300 g/m²: el precio de la tabla es una errata. Debe decir 1.118,00, no 1.181,00.",
        "Rogamos corregir GC2 300 g/m²: 1.118,00",
        "GC2 300 g/m²: priset i tabellen är ett skrivfel. Det ska vara 1 118,00, inte 1 181,00.",
        "Vänligen rätta GC2 300 g/m² till 1 118,00",
    ],
)
def test_the_price_of_the_board_is_asked_about_and_no_other(note, above):
    assert states(note, above=above) == "aqaa"


@pytest.mark.parametrize(
    "note",
    [
        "Everything else in the table is right.",
        "GC2 300 gsm: prices subject to errors and misprints.",
        "GC2 300 g/m²: Preise freibleibend, Druckfehler vorbehalten.",
        "GC2 300 g/m² : prix sauf erreur.",
        "GC2 300 g/m²: precios salvo error u omisión.",
        "GC2 300 g/m²: priser med reservation för fel.",
        "GC2 300 gsm is white, not grey. Weight tolerance 4 %, not 5 %.",
        "GC2 300 gsm: caliper error up to 15 µm",
        "GC2 300 gsm: wrong sheets are taken back at our cost.",
        "GC2 280 gsm: the price in the table is a typing error.",
        "GC2 300 gsm: our last list had a typing error in the price.",
    ],
)
def test_what_says_nothing_of_a_price_of_this_table_is_not(note):
    assert states(note) == "aaaa"


@pytest.mark.parametrize(
    "note",
    [
        "The foot of the table says 31 March 2027. The offer now closes earlier and is valid until 28 February 2027.",
        "The offer now closes earlier, on 28 February 2027.",
        "The validity below is a typing error.",
        "The validity date below (31 March 2027) is superseded. The offer is valid until 28 February 2027.",
        "Das Angebot endet nun früher, am 28.02.2027.",
        "Die Gültigkeit unten ist ein Tippfehler.",
        "Die Gültigkeit unter der Tabelle (31.03.2027) ist überholt. Das Angebot gilt jetzt bis 28.02.2027.",
        "L'offre se termine désormais plus tôt, le 28 février 2027.",
        "La validité ci-dessous est erronée.",
        "La oferta termina ahora antes, el 28 de febrero de 2027.",
        "La validez de abajo es errónea.",
        "Offerten slutar nu tidigare, den 28 februari 2027.",
        "Giltigheten nedan är felaktig.",
    ],
)
def test_a_last_day_that_is_corrected_is_left_open(note):
    found = told(note)
    assert [line.offer.valid_until for line in found.values()] == [None] * 4
    assert all("validity-unread" in codes(line) for line in found.values())
    assert {str(line.state) for line in found.values()} == {"accepted"}


@pytest.mark.parametrize(
    "note",
    ["Our mill closes on 24 December 2026.", "Unser Werk schließt am 24.12.2026.", "Usine fermée le 24/12/2026."],
)
def test_what_else_closes_on_a_day_moves_no_last_day(note):
    assert {str(line.offer.valid_until) for line in told(note).values()} == {"2027-03-31"}


@pytest.mark.parametrize("title", ["Gültigkeit abgelaufen.", "Gültigkeit abgelaufen. Neue Liste gilt bis 28.02.2027."])
def test_a_list_whose_time_is_over_offers_nothing(title):
    assert told(title) == {}
