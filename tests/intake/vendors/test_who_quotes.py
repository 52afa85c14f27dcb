"""Who quotes: the firm that offers, not the one that asked, pays, stores or signs."""

import pytest

from tests.intake.sheets import book, grid, lines, read
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers


def test_lines_to_sign_on_name_nobody():
    found = lines(
        [["EUR/t"], ["Grade", "g/m²", "Price"], ["GC1", 250, 1210], [], ["Seller: ________   Buyer: ________"]]
    )
    assert found["C3"].offer.vendor is None


@pytest.mark.parametrize(
    ("head", "vendors"),
    [("Low bid", {"Alderby Board Co.", "Tarn Mills"}), ("Remark", {"Alderby Board Co.", "Tarn Mills"})],
)
def test_whom_the_buyer_would_take_is_not_who_quotes(head, vendors):
    rows = [["Delivered, USD per short ton"], []]
    rows += [
        ["Grade", "pt", "lb/MSF", "Alderby Board Co.", "Tarn Mills", head],
        [None, None, None, "Price", "Price", "Bidder"],
    ]
    rows += [["SBS C1S", 16, 67, 1242, 1251, "Alderby"], ["CRB C1S", 18, 71, 918, 911, "Tarn"]]
    found = lines(rows)
    assert {line.offer.vendor for line in found.values()} == vendors
    assert found["E5"].offer.vendor == "Tarn Mills"


HEAD = ["Board", "Caliper (pt)", "lb/MSF", "Price USD/ST"]
SBS, CRB = ["SBS C1S", 18, 75, 1165], ["CRB C1S", 18, 70, 900]


def test_the_vendor_is_who_quotes_and_not_who_asked():
    rows = [["Quotation for Larkmoor Foods Inc."], ["From: Ferrowick Mills LLC"], [], HEAD, SBS]
    assert read(rows).vendor == "Ferrowick Mills LLC"


def offer(rows, cell):
    """The one offer of a price cell, which must be accepted."""
    line = lines(rows)[cell]
    assert str(line.state) == "accepted", [note.text for note in line.notes]
    return line.offer


@pytest.mark.parametrize(
    ("letterhead", "vendor"),
    [
        ("Cartonneries du Val d'Ormoy SAS", "Cartonneries du Val d'Ormoy SAS"),
        ("Cartons Laurentie-Nord inc.", "Cartons Laurentie-Nord inc."),
        ("Emballages Rive-Saguenay ltée", "Emballages Rive-Saguenay ltée"),
        ("Papeterie de l'Aubrière", "Papeterie de l'Aubrière"),
        ("Cartons de la Vesdre", "Cartons de la Vesdre"),
        ("Cartulinas Sonora Desierto", "Cartulinas Sonora Desierto"),
        ("Cartons Couchés Recyclés", None),
        ("Cartulinas Plegables", None),
    ],
)
def test_who_quotes(letterhead, vendor):
    rows = [[letterhead], [], ["Qualité", "g/m²", "µm", "EUR/t"], ["GC1", 250, 400, 1230]]
    assert offer(rows, "D4").vendor == vendor


US, METRIC = ["Board", "pt", "lb/MSF"], ["Sorte", "g/m²", "µm"]


def of_book(*grids):
    return {
        (line.offer.source.sheet, line.offer.source.cell): line for line in read_workbook(book(*grids), Answers()).lines
    }


class TestVendors:
    def test_the_firm_that_the_offers_begin_with_behind_an_index(self):
        index = [["Índice de materias primas"], ["Mes", "Índice"], ["sep-26", 118.4]]
        offer = [["Cartonajes Riofrondo"], ["€/t"], [*METRIC, "Precio"], ["GC1", 250, 405, 1266]]
        other = [["Papelera Altamina"], ["€/t"], [*METRIC, "Precio"], ["GC1", 250, 405, 1255]]
        found = of_book(grid(index, "Índice"), grid(offer, "Oferta"))
        assert {line.offer.vendor for line in found.values()} == {"Cartonajes Riofrondo"}
        found = of_book(grid(index, "Índice"), grid(offer, "Oferta"), grid(other, "Otra"))
        assert found["Otra", "D4"].offer.vendor != "Cartonajes Riofrondo"

    def test_a_column_of_firms_says_who_offers_whatever_it_is_called(self):
        rows = [
            ["House", "Goods", "Ask"],
            ["Larkfell Board Inc.", "SBS C1S 18 pt 75 lb/MSF", "$1,145/ST"],
            ["Ostrander Chip Co.", "URB 30 pt 108 lb/MSF", "$687/ST"],
        ]
        assert {cell: line.offer.vendor for cell, line in lines(rows).items()} == {
            "C2": "Larkfell Board Inc.",
            "C3": "Ostrander Chip Co.",
        }


BOARD = ["SBS C1S", 18, 75]
CALIPER_HEAD = ["Board", "pt", "lb/MSF"]


def test_names_in_one_row_over_prices_are_all_vendors_where_one_surely_is():
    rows = [
        ["US$ per short ton, delivered"],
        [*CALIPER_HEAD, "Dunmere Mill", None, "Eastquill Board", None, "Pellgate Paperboard", None],
        [None, None, None, "Bid", "LT wks", "Bid", "LT wks", "Bid", "LT wks"],
        [*BOARD, 1172, 6, 1195, 4, 1180, 8],
        ["CRB C1S", 20, 79, 874, 3, 869, 3, 881, 2],
    ]
    found = lines(rows)
    vendors = ["Dunmere Mill", "Eastquill Board", "Pellgate Paperboard"]
    assert [line.offer.vendor for line in found.values()] == vendors * 2
    places = [["USD/ST"], [*CALIPER_HEAD, "Eastburn", "Westburn"], [*BOARD, 1172, 1195]]
    assert {line.offer.vendor for line in lines(places).values()} == {None}


_BOARDS = [["Grade", "Caliper pt", "Price USD/short ton"], ["SBS C1S", 18, 1240], ["CRB", 20, 820]]


def test_a_buyers_own_warehouse_is_no_vendors():
    found = lines([["Solicitud de oferta: precio puesto en nuestro almacén de Zaragoza"], *_BOARDS])
    assert [line.offer.delivered for line in found.values()] == [None, None]
