"""Counts, weights of lots, sums of lines and days beside boards are no prices."""

import pytest

from tests.intake.readings import accepted, read_rows
from tests.intake.sheets import lines
from tracker.trade.offer import State

HEAD = ["Grade", "pt", "lb/MSF"]
BOARD = ["SBS C1S", 18, 75]


def test_counts_order_weights_and_line_amounts_are_no_prices():
    head = ["Rolls", *HEAD, "Weight lb", "$/cwt", "Amount"]
    reading = read_rows([head, [12, *BOARD, 21600, 58.5, 12636], [30, None, None, None, None, "Total", 12636]])
    assert [line.offer.source.cell for line in reading.lines] == ["F2"]
    assert accepted(reading) == {"F2": ("SBS", "58.5", "USD", "cwt")}


METRIC_HEAD = ["Grade", "g/m²", "µm", "EUR/t"]


def states(rows):
    """Cell -> state and price."""
    return {cell: (str(line.state), str(line.offer.price)) for cell, line in lines(rows).items()}


@pytest.mark.parametrize("label", ["g/m²", "Gewicht g/m²", "lb/MSF"])
def test_measures_in_the_line_of_a_board_are_no_prices(label):
    rows = [["EUR/t"], ["Grade", "350 µm", "400 µm"], [f"GC1 {label}", 215, 245], ["GC1", 1115, 1105]]
    assert set(states(rows)) == {"B4", "C4"}


def test_a_quantity_in_short_tons_is_no_price():
    rows = [["USD"], ["Description", "Qty (ST)", "Unit price /ST"], ["SBS C1S 16 pt 68 lb/MSF", 20, 1210]]
    assert states(rows) == {"C3": ("accepted", "1210")}


@pytest.mark.parametrize("words", ["Exchange rate EUR/USD", "Price index May", "Sheets per pallet", "Gesamttotal"])
def test_a_rate_a_count_or_a_sum_below_the_offers_is_none(words):
    assert set(states([["EUR/t"], METRIC_HEAD, ["GC1", 250, 400, 1240], [], [words, None, None, 1150]])) == {"D3"}


def test_figures_that_do_not_move_with_the_prices_are_no_prices():
    rows = [
        ["Board", "pt", "lb/MSF", "Price USD/ST", "Phone ext."],
        ["SBS", 18, 75, 1150, 1000],
        ["CRB", 18, 70, 900, 1001],
    ]
    assert set(lines(rows)) == {"D2", "D3"}


def test_a_table_of_months_is_no_offer():
    history = [["Recovered paper, USD/ST"], ["Month", "Board", "OCC"], ["Jan 2026", 1210, 95], ["Feb 2026", 1205, 92]]
    assert lines([["SBS C1S 18 pt list of Harlow Bend Board"], [], *history]) == {}
    named = [["USD/ST"], ["Month", "Board", "Price"], ["Jan 2026", "SBS 18 pt", 1210], ["Feb 2026", "CRB 20 pt", 905]]
    assert len(lines(named)) == 2


def test_an_amount_beside_a_price_is_what_the_line_comes_to():
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", "Menge t", "Preis", "Betrag"], ["GC2", 250, 405, 5, 1240, 6200]]
    assert list(lines(rows)) == ["E3"]


def test_samples_that_were_sent_are_no_offers():
    rows = [["Pris SEK/ton"], ["Kvalitet", "g/m²", "µm", "Pris"], ["GC1", 250, 405, 13200], [], ["Skickade prover"]]
    assert list(lines([*rows, ["Kvalitet", "g/m²", "Antal ark"], ["GC1", 250, 25]])) == ["D3"]


def test_lots_of_several_widths_are_no_order_sizes_of_one_board():
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", "Breite mm", "Menge kg", "Preis"], ["GC2", 250, 405, 820, 4200, 990]]
    offers = [line.offer for line in lines([*rows, ["GC2", 250, 405, 1020, 2600, 960]]).values()]
    assert [offer.below_kg for offer in offers] == [None, None]


def sheets_by_orders(title, heads):
    rows = [["GC1", 300, 250, "720 x 1020", 500, 118.2, 107.4], ["GC1", 400, 260, "700 x 1000", 250, 297.5, 271.9]]
    return [[title], [], heads, *rows]


@pytest.mark.parametrize(
    ("title", "heads"),
    [
        ("Prices in EUR per 1000 sheets",
         ["Stock", "µm", "g/m²", "Size mm", "Per carton", "Up to 4,999 sheets", "5,000 sheets and up"]),
        ("Preise in EUR je 1000 Bogen",
         ["Sorte", "µm", "g/m²", "Format mm", "Je Paket", "bis 4.999 Bogen", "ab 5.000 Bogen"]),
        ("Prix en EUR les 1000 feuilles",
         ["Qualité", "µm", "g/m²", "Format mm", "Par paquet", "jusqu'à 4 999 feuilles", "dès 5 000 feuilles"]),
        ("Precios en EUR por 1000 hojas",
         ["Calidad", "µm", "g/m²", "Formato mm", "Por paquete", "hasta 4.999 hojas", "desde 5.000 hojas"]),
        ("Priser i EUR per 1000 ark",
         ["Kvalitet", "µm", "g/m²", "Format mm", "Per paket", "upp till 4 999 ark", "från 5 000 ark"]),
    ],
)  # fmt: skip
def test_how_many_sheets_a_package_holds_is_no_price(title, heads):
    found = lines(sheets_by_orders(title, heads))
    assert {cell: str(line.state) for cell, line in found.items()} == dict.fromkeys(
        ["F4", "G4", "F5", "G5"], "accepted"
    )


def test_such_counts_are_told_in_an_export_too():
    """Where every figure is text."""
    heads = ["Stock", "µm", "g/m²", "Size mm", "Per carton", "Up to 4,999 shts", "5,000 shts and up"]
    rows = sheets_by_orders("EUR per M sheets", heads)
    found = lines([[str(value) for value in row] for row in rows])
    assert {cell: str(line.state) for cell, line in found.items()} == dict.fromkeys(
        ["F4", "G4", "F5", "G5"], "accepted"
    )


@pytest.mark.parametrize("prices", [[59.1, 74.4], [100, 125]])
def test_a_price_by_the_package_is_asked_about(prices):
    heads = ["Stock", "µm", "g/m²", "Size mm", "Per carton"]
    rows = [["GC1", 300, 250, "720 x 1020", prices[0]], ["GC1", 400, 260, "700 x 1000", prices[1]]]
    found = lines([["Prices in EUR"], [], heads, *rows])
    assert {str(line.state) for line in found.values()} == {"question"}
    assert len(found) == 2


@pytest.mark.parametrize(
    ("weight", "price"),
    [("Kg", "Pris"), ("kg", "Preis"), ("Net lbs", "Price"), ("Nettogewicht kg", "Preis"), ("kg nets", "Prix")],
)
def test_a_lot_s_weight_beside_its_price_is_no_price(weight, price):
    rows = [["EUR per kg"], ["Lot", "Board", "g/m²", "µm", weight, price], ["B-17", "GC1", 250, 400, 3150, 0.92]]
    assert list(lines([*rows, ["B-18", "GC1", 300, 490, 1890, 0.88]])) == ["F3", "F4"]


def test_a_price_by_its_unit_alone_stays_one():
    found = lines([["EUR, ex works"], ["Board", "g/m²", "µm", "kg"], ["GC1", 250, 400, 0.92], ["GC1", 300, 490, 0.88]])
    assert list(found) == ["D3", "D4"]


@pytest.mark.parametrize("label", ["Tons shipped 2025", "Offererad volym, ton", "Planmenge (t)", "Toneladas previstas"])
def test_a_quantity_below_the_boards_is_no_price(label):
    rows = [["EUR/tonne"], ["Grade", "g/m²", "µm", "Net"], ["GC1", 250, 410, 1250], ["GC2", 300, 500, 1210]]
    assert list(lines([*rows, [], [label, None, None, 420]])) == ["D3", "D4"]
    assert "D6" in lines([*rows, [], ["Brownboard 7", None, None, 420]])


def test_a_calendar_of_makings_offers_nothing():
    rows = [["Calidad", "Gramaje g/m²", "Semana de fabricación", "Toneladas previstas"], ["GC1", 235, 24, 310]]
    assert lines(rows) == {}
    assert list(lines([[*rows[0][:2], "Precio EUR/t", rows[0][3]], ["GC1", 235, 1240, 310]])) == ["C2"]


def test_tons_bought_and_what_they_come_to_are_no_prices():
    rows = [
        ["Grade", "pt", "Price USD/ST", "Tons (short)", "Amount USD"], ["SBS C1S", 16, 1125, 40, 45000],
        ["SBS C1S", 22, 1190, 20, 23800], ["Subtotal", None, 1146.67, 60, 68800],
    ]  # fmt: skip
    assert {cell: line.state for cell, line in lines(rows).items()} == {"C2": State.ACCEPTED, "C3": State.ACCEPTED}


@pytest.mark.parametrize(
    ("heads", "unit", "sums"),
    [
        (("Description", "Unit", "Qty", "Price (€)", "Amount"), "kg", ("Subtotal", "Net total", "Total incl. VAT")),
        (
            ("Bezeichnung", "Einheit", "Menge", "Preis (€)", "Betrag"),
            "kg",
            ("Zwischensumme", "Summe netto", "Gesamt inkl. MwSt."),
        ),
        (("Désignation", "Unité", "Quantité", "P.U. HT (€)", "Montant"), "kg", ("Sous-total", "Total HT", "Total TTC")),
        (("Descripción", "Unidad", "Cantidad", "Precio (€)", "Importe"), "kg", ("Suma", "Total neto", "Total con IVA")),
        (
            ("Benämning", "Enhet", "Kvantitet", "Pris (€)", "Belopp"),
            "kg",
            ("Delsumma", "Summa netto", "Summa inkl. moms"),
        ),
    ],
)
def test_sums_below_the_last_board_make_no_form_of_it(heads, unit, sums):
    boards = [
        ["GC1 karton 250 g/m², 400 µm", unit, 9000, 1.25, 11250],
        ["GD2 carton 300 g/m², 390 µm", unit, 8000, 0.75, 6000],
    ]
    found = lines([list(heads), *boards, *([label, None, None, None, 17250] for label in sums)])
    assert {cell: str(line.state) for cell, line in found.items()} == {"D2": "accepted", "D3": "accepted"}
