"""Lines that a letter tells from others by a star, and the currency of these and of the others."""

import pytest

from tests.intake.sheets import book, grid, read_workbook
from tracker.trade.offer import Answers

ROWS = [["Board", "g/m²", "µm", "Price"], ["GC2", 250, 400, 1690], ["GD2", 350, 455, 1215], ["SBS *", 300, 390, 1410]]


def currencies(*letter):
    sheets = grid([[text] for text in letter], sheet="Letter"), grid(ROWS, sheet="Prices")
    return [line.offer.currency for line in read_workbook(book(*sheets), Answers({})).lines]


@pytest.mark.parametrize(
    ("others", "marked", "found"),
    [
        ("Unless a row carries a star, the figures are Canadian dollars per tonne.",
         "The rows with a star are imported boards, which we invoice in US dollars per tonne.", "CAD CAD USD"),
        ("Prices are Canadian dollars per tonne.", "Lines with an asterisk are in US dollars a tonne.", "CAD CAD USD"),
        ("Sofern eine Zeile kein Sternchen trägt, gelten Preise in Euro je Tonne.",
         "Zeilen mit einem Stern berechnen wir in Schweizer Franken je Tonne.", "EUR EUR CHF"),
        ("Sauf si une ligne porte un astérisque, les prix sont en euros la tonne.",
         "Les lignes avec un astérisque sont facturées en francs suisses la tonne.", "EUR EUR CHF"),
        ("Salvo que una fila lleve un asterisco, los precios son euros por tonelada.",
         "Las filas con un asterisco se facturan en dólares estadounidenses por tonelada.", "EUR EUR USD"),
        ("Priserna är i SEK per ton.", "Rader med en stjärna faktureras i EUR per ton.", "SEK SEK EUR"),
    ],
)  # fmt: skip
def test_lines_with_a_star_have_the_currency_told_of_them(others, marked, found):
    assert currencies(others, marked) == found.split()


@pytest.mark.parametrize(
    "letter",
    [
        ("Rows in italics are invoiced in US dollars per tonne.",),
        ("Unless otherwise stated prices are euros per tonne.", "Rows in bold are invoiced in US dollars per tonne."),
        ("Kursiv gesetzte Zeilen berechnen wir in US-Dollar je Tonne.",),
        ("Les lignes en italique sont facturées en dollars américains la tonne.",),
        ("Las filas en cursiva se facturan en dólares estadounidenses por tonelada.",),
        ("Rader i kursiv faktureras i EUR per ton.",),
    ],
)
def test_of_lines_marked_unseen_the_currency_is_nobodys(letter):
    assert currencies(*letter) == [None] * 3


def test_a_star_in_a_name_marks_nothing():
    assert currencies("Prices for Star Board are euros per tonne.") == ["EUR"] * 3
