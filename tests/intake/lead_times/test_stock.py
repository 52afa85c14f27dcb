"""Boards sold from stock: all, some or one line; and stocks that say nothing of time."""

import pytest

from tests.intake.sheets import codes, lines


@pytest.mark.parametrize(
    ("said", "days"),
    [
        ("Plazo de entrega: 4 semanas salvo fin de existencias", (28, 28)), ("Plazo de entrega: existencias", (0, 0)),
        ("Délai : 4 semaines sauf rupture de stock", (28, 28)), ("Lead time 4 weeks, stock permitting", (28, 28)),
    ],
)  # fmt: skip
def test_as_long_as_there_is_stock_is_no_delivery_from_it(said, days):
    found = lines([["Board", "g/m²", "µm", "EUR/t"], ["GC2", 250, 410, 1098], [said]])
    assert [line.offer.lead_days for line in found.values()] == [days]


HEAD = ["Grade", "Caliper pt", "lb/MSF", "PRICE", "CCY", "PER"]
ROWS = [["SBS C1S", 18, 78, 1221, "USD", "STN"], ["CRB", 20, 79, 964, "USD", "STN"], ["URB", 28, 99, 723, "USD", "STN"]]


@pytest.mark.parametrize(
    "remark",
    ["from our warehouse stock", "aus unserem Lager", "de notre stock", "de nuestras existencias", "från vårt lager"],
)
def test_a_line_from_stock_does_not_wait_for_the_others(remark):
    found = lines([["Lead time 3 weeks unless noted."], [*HEAD, "Notes"], [*ROWS[0], remark], *ROWS[1:]])
    assert [line.offer.lead_days for line in found.values()] == [(0, 0), (21, 21), (21, 21)]


LEAD_HEAD = ["Grade", "µm", "g/m²", "EUR/t"]
GC1 = ["GC1", 450, 300, 1100]


def lead_beside(*texts):
    (line,) = lines([*([text] for text in texts), LEAD_HEAD, GC1]).values()
    return line.offer.lead_days, codes(line)


@pytest.mark.parametrize(
    "text",
    [
        "Small lots from stock, pence per sheet", "Warehouse stock, prices in EUR", "FOB our warehouse. Stock rolls.",
        "All items ex stock - week 47", "FOB our floor. Ready to ship (stock). First come first served.",
        "Abholpreise ab Lager (EXW) in Euro", "Lagerware, frei Haus",
        "Cartons disponibles sur stock, franco de port", "Material en existencias, EXW fábrica",
        "Lagerförda ark, från lager (EXW)",
    ],
)  # fmt: skip
def test_a_list_of_boards_from_stock(text):
    assert lead_beside(text)[0] == (0, 0)


@pytest.mark.parametrize(
    "text",
    [
        "Folding carton stock, EUR/t", "Stock sheets, € per tonne, delivered", "Preise ab Lager Kassel (EXW)",
        "24 pt from stock, delivered", "We hold 3,000 t in stock in Hamburg, EUR/t", "Not in stock, FOB mill",
        "Some sizes from stock, EUR/t", "GC1 ab Lager, EUR/t", "Vissa format från lager, EUR/ton",
    ],
)  # fmt: skip
def test_other_stocks_are_no_lead_time(text):
    assert lead_beside(text)[0] is None


@pytest.mark.parametrize(
    ("head", "cells"),
    [
        ("Stock status", ("In stock", "Ships in 10 days")), ("Stock", ("Stock", "10 days")),
        ("Bestand", ("ab Lager", "10 Tage")), ("Stock", ("sur stock", "10 jours")),
    ],
)  # fmt: skip
def test_a_column_of_stock_may_say_how_soon(head, cells):
    now, later = lines([[*LEAD_HEAD, head], [*GC1, cells[0]], ["GC2", *GC1[1:], cells[1]]]).values()
    assert (now.offer.lead_days, later.offer.lead_days) == ((0, 0), (10, 10))


def test_a_column_of_tons_in_stock_says_nothing_of_time():
    (line,) = lines([[*LEAD_HEAD, "Stock t"], [*GC1, 14]]).values()
    assert line.offer.lead_days is None


@pytest.mark.parametrize("heads", [("ab Lager", "ab Fabrik"), ("ab Lager", "Direktlieferung ab 10 t")])
def test_a_price_from_stock_is_not_left_out(heads):
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", *heads], ["GC1", 250, 405, 1290, 1270], ["GD2", 350, 465, 890, 870]]
    assert set(lines(rows)) == {"D3", "D4", "E3", "E4"}


_HEAD = ["Grade", "g/m²", "µm"]


@pytest.mark.parametrize("said", ["From stock.", "Ab Lager lieferbar.", "Sur stock.", "De stock.", "Från lager."])
def test_all_is_from_stock_where_a_note_says_no_more(said):
    (line,) = lines([["EUR per 1000 kg"], [*_HEAD, "Price"], ["GC1", 260, 415, 1345], [said]]).values()
    assert line.offer.lead_days == (0, 0)


@pytest.mark.parametrize("said", ["Not from stock.", "Some from stock.", "Stock lots on request."])
def test_not_all_is_from_stock_elsewhere(said):
    (line,) = lines([["EUR per 1000 kg"], [*_HEAD, "Price"], ["GC1", 260, 415, 1345], [said]]).values()
    assert line.offer.lead_days is None


BOARDS = [["Board", "g/m²", "µm", "EUR per 1000 kg"], ["GC1", 260, 415, 1287]]


def test_from_the_floor_is_from_stock():
    rows = [[*BOARDS[0], "Ready in"], [*BOARDS[1], "off the floor"]]
    (line,) = lines(rows).values()
    assert line.offer.lead_days == (0, 0)


HEADS = ["Board", "g/m²", "Price EUR/t"]
BOARD = ["GC1", 250, 1240]


def lead(title, note):
    (line,) = lines([[title], HEADS, BOARD, [note]]).values()
    return line.offer.lead_days


@pytest.mark.parametrize(
    ("title", "note", "days"),
    [
        ("Stock sheets from stock, net prices EUR/t", "Dispatch within 4 days. Net 30.", (4, 4)),
        ("Preise für Lagerware EUR/t, ab Lager", "Versand in 4 Tagen.", (4, 4)),
        ("Formats en stock, prix nets EUR/t", "Expédition sous 4 jours.", (4, 4)),
        ("Precios EUR/t, cartulina en stock", "Despacho en 4 días.", (4, 4)),
        ("Lagerförda ark, priser EUR/t", "Leverans inom 4 dagar.", (4, 4)),
        ("Stock sheets from stock, net prices EUR/t", "Special makings 4 weeks.", (0, 0)),
        ("Formats en stock, prix nets EUR/t", "Délai de fabrication 4 semaines.", (0, 0)),
    ],
)
def test_what_is_in_stock_takes_its_days_to_go_out(title, note, days):
    assert lead(title, note) == days


@pytest.mark.parametrize(
    ("title", "days"),
    [
        ("Papierhandel Ellerau – Formatware ab Lager", (0, 0)), ("Fenmoor Board Merchants – sheets from stock", (0, 0)),
        ("Papeterie Fontclaire – formats sur stock", (0, 0)), ("Papelera Altaluz – hojas en stock", (0, 0)),
        ("Alnäs Kartong AB – lagerförda ark", (0, 0)), ("Ellerau – Formatware ab Lager Kassel", None),
        ("Papierhandel Ellerau – einige Formate ab Lager", None), ("Papierhandel Ellerau – nicht ab Lager", None),
    ],
)  # fmt: skip
def test_a_firms_goods_from_stock_in_its_title(title, days):
    assert lead(title, "Net 30.") == days


@pytest.mark.parametrize("said", ["in stock", "ab Lager", "en stock", "i lager"])
@pytest.mark.parametrize("sign", [" – ", ", "])
def test_a_heading_of_boards_says_that_those_are_there(said, sign):
    head = ["g/m²", "µm", "EUR/tonne"]
    rows = [head, ["GC1"], [240, 390, 1288], [300, 490, 1266], [f"GD2{sign}{said}"], [300, 390, 866], [350, 455, 851]]
    assert [line.offer.lead_days for line in lines(rows).values()] == [None, None, (0, 0), (0, 0)]


def test_a_note_on_one_board_in_stock_says_nothing_of_the_others():
    rows = [
        ["Board", "g/m²", "µm", "EUR/tonne"],
        ["GC1", 240, 390, 1288],
        ["GD2", 300, 390, 866],
        [],
        ["GD2 – in stock"],
    ]
    assert [line.offer.lead_days for line in lines(rows).values()] == [None, (0, 0)]


@pytest.mark.parametrize(
    "label", ["in stock, tons", "In stock (tons)", "Bestand (t)", "en stock, t", "en existencias, t", "i lager, ton"]
)
def test_how_much_of_each_is_in_stock_says_nothing_of_time(label):
    rows = [["EUR/t"], ["g/m²", None, 230, 250, 300], [None, label, 30, 0, 20], ["GC1", None, 1250, 1240, 1230]]
    assert [line.offer.lead_days for line in lines(rows).values()] == [None] * 3
