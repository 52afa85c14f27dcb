"""A sheet of a vendor's own costs offers nothing; what a buyer pays may be called so as well."""

import pytest

from tests.intake.sheets import book, grid, lines
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

_OFFERS = grid([["EUR/t"], ["Board", "g/m²", "µm", "Price"], ["GC2", 270, 440, 1190], ["GD2", 350, 470, 820]], "Prices")


def offering(title, head, **more):
    costs = grid([[title], ["Board", "g/m²", "µm", head], ["GC2", 270, 440, 1070], ["GD2", 350, 470, 700]], "B", **more)
    return {line.offer.source.sheet for line in read_workbook(book(_OFFERS, costs), Answers({})).lines}


@pytest.mark.parametrize(
    ("title", "head"),
    [
        ("Purchasing, internal, not for customers", "Purchase price EUR/t"),
        ("Einkauf intern, nicht für Kunden: unsere Einstandskosten", "EK EUR/t"),
        ("Usage interne, ne pas diffuser", "Prix d'achat EUR/t"),
        ("Uso interno: nuestros costes", "Precio EUR/t"),
        ("Endast internt: våra inköpspriser", "Pris EUR/t"),
    ],
)
def test_costs_kept_inside_are_no_offers(title, head):
    assert offering(title, head) == {"Prices"}


def test_a_hidden_sheet_of_costs_offers_nothing():
    assert offering("Boards", "EK EUR/t", hidden=True) == {"Prices"}
    assert offering("Boards", "EUR/t", hidden=True) == {"Prices", "B"}


@pytest.mark.parametrize(
    ("title", "head"),
    [("Boards for stock", "Purchase price EUR/t"), ("Internal", "Price EUR/t"), ("B", "Ihr EK EUR/t")],
)
def test_what_a_buyer_pays_stays_an_offer(title, head):
    assert offering(title, head) == {"Prices", "B"}


def test_a_buyers_own_comparison_of_vendors_is_read():
    head = ["Vendor", "Board", "g/m²", "µm", "Purchase price EUR/t"]
    rows = [["Larkhollow Board", "GC1", 250, 400, 1210], ["Marrabel Mills", "GD2", 300, 390, 905]]
    found = lines([["For internal use only"], head, *rows])
    assert [line.offer.vendor for line in found.values()] == ["Larkhollow Board", "Marrabel Mills"]
    assert not lines([["For internal use only"], head[1:], *(row[1:] for row in rows)])
