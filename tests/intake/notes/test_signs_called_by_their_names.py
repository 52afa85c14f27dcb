"""Lines that a letter tells from others by a star, and the currency of these and of the others."""

import pytest

from tests.intake.sheets import book, grid, lines, read_workbook
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


_BOARDS = [["Board", "g/m²", "µm", "EUR/t"], ["GC2", 250, 400, 1190], ["GD2 *", 350, 455, 815], ["SBS", 300, 390, 1410]]


def _terms(*notes):
    found = lines([*_BOARDS, [], *([note] for note in notes)]).values()
    return [(line.offer.minimum_kg, line.offer.lead_days) for line in found]


@pytest.mark.parametrize(
    "note",
    [
        "Minimum order 10 tonnes an item, starred items 2 tonnes.",
        "Minimum order 10 tonnes per item; starred items: 2 tonnes",
        "Minimum order 10 tonnes, items with a star 2 tonnes",
        "Mindestmenge 10 t je Artikel, Artikel mit Stern 2 t.",
        "Mindestmenge 10 t, mit Sternchen gekennzeichnete Artikel 2 t.",
        "Mindestmenge 10 t, besternte Artikel 2 t",
        "Commande minimum 10 t par article, articles marqués d'un astérisque 2 t.",
        "Pedido mínimo 10 t por artículo, los artículos con asterisco 2 t.",
        "Minsta order 10 ton per artikel, stjärnmärkta artiklar 2 ton.",
    ],
)
def test_a_smallest_order_of_starred_lines_is_theirs(note):
    assert [int(least) for least, _ in _terms(note)] == [10000, 2000, 10000]


@pytest.mark.parametrize(
    "note",
    [
        "Lead time 4 weeks, starred items 2 weeks.",
        "Lieferzeit 4 Wochen, besternte Artikel 2 Wochen.",
        "Délai de livraison 4 semaines, articles marqués d'un astérisque 2 semaines.",
        "Plazo de entrega 4 semanas, artículos con asterisco 2 semanas.",
        "Leveranstid 4 veckor, stjärnmärkta artiklar 2 veckor.",
    ],
)
def test_so_is_a_lead_time(note):
    assert [lead for _, lead in _terms(note)] == [(28, 28), (14, 14), (28, 28)]


def test_what_they_have_of_another_matter_is_no_smallest_order():
    assert _terms("Minimum order 10 tonnes, starred items 2 weeks from receipt of order.")[0][0] == 10000
    assert [least for least, _ in _terms("Lead time 4 weeks, starred items 2 tonnes.")] == [None] * 3
