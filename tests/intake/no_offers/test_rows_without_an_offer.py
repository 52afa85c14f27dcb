"""Rows of totals, counts, faults and words, and sheets that hold no board, offer nothing and ask nothing."""

import pytest

from tests.intake.sheets import book, codes, grid, lines, read
from tracker.intake.grid import CellFault
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers, State

HEAD = ["Board", "Caliper (pt)", "lb/MSF", "Price USD/ST"]
SBS, CRB = ["SBS C1S", 18, 75, 1165], ["CRB C1S", 18, 70, 900]


@pytest.mark.parametrize("words", ["call", "n/q", "-", "on request"])
def test_words_that_offer_no_price_make_no_line(words):
    assert set(lines([HEAD, SBS, ["CRB", 18, 70, words]])) == {"D2"}


def test_totals_charges_and_freight_rates_are_no_offers():
    rows = [
        HEAD,
        SBS,
        CRB,
        ["Average", None, None, 1032.5],
        ["Freight", None, None, 60],
        [],
        ["Freight to", "USD/cwt"],
        ["Chicago", 1.85],
    ]
    reading = read(rows)
    assert [line.offer.source.cell for line in reading.lines] == ["D2", "D3"]
    assert {passed.why for passed in reading.passed_over} >= {"a total or an average", "a charge, no board"}


def test_faults_and_prices_of_nothing_are_refused():
    sheet = grid([HEAD, ["CRB", 16, 62, 1], ["CRB", 18, 70, 1], ["CRB", 20, 78, 0], ["CRB", 22, 86, -890]])
    cells = dict(sheet.cells)
    cells[1, 3] = cells[1, 3]._replace(value=None, text="=A1-A2", fault=CellFault.FORMULA_WITHOUT_VALUE)
    cells[2, 3] = cells[2, 3]._replace(value=None, text="#N/A", fault=CellFault.ERROR)
    reading = read_workbook(book(type(sheet)("Sheet1", cells)), Answers())
    assert all(line.state is State.REFUSED for line in reading.lines)
    assert [codes(line) for line in reading.lines] == [
        {"formula-without-value"}, {"error-cell"}, {"price-not-positive"}, {"price-not-positive"},
    ]  # fmt: skip


def test_hidden_rows_are_read_with_a_note():
    found = lines([HEAD, SBS, CRB], hidden_rows=frozenset({2}))
    assert codes(found["D2"]) == set()
    assert codes(found["D3"]) == {"hidden"}


LIST = [["Grade", "g/m²", "µm", "EUR/t"], ["GC1", 260, 415, 1287], ["GD2", 300, 400, 848]]


@pytest.mark.parametrize(
    "label",
    [
        "Number of items",
        "Antal rader",
        "Anzahl Kunden",
        "Nombre de lignes",
        "Número de clientes",
        "Backlog, lb (for information)",
        "Auftragsbestand t",
        "Carnet de commandes, t",
        "Cartera de pedidos (t)",
        "Orderstock, ton",
        "Returpappersindex",
        "Booked to date, all furnishes",
        "Gebuchte Tonnen 2026",
        "Tonnes facturées en 2025",
        "Toneladas servidas en 2025",
        "Fakturerade ton 2025",
    ],
)
def test_rows_that_count_offer_nothing_and_ask_nothing(label):
    assert len(lines([*LIST, [label, None, None, 1204]])) == 2
    assert len(lines([*LIST, [], [label, None, None, 118400]])) == 2


def test_a_row_without_such_words_is_asked_about():
    assert len(lines([*LIST, ["Sonderposten", None, None, 790]])) == 3


def test_order_sizes_counted_in_rows_keep_their_prices():
    rows = [["GC1 260 g/m² 415 µm", "EUR/1000"], ["Antal ark 500-1999", 320], ["Antal ark 2000-4999", 310]]
    passed = " ".join(one.why for one in read(rows).passed_over)
    assert "a quantity, no price" not in passed


@pytest.mark.parametrize(
    "rows",
    [
        [["Dear Sirs,"], ["we met 2 of your people on 3 May."]],
        [["Ada", "+44 20 7946 0958"], ["Ben", "+44 20 7946 0959"]],
        [["Monday", 8, 17], ["Tuesday", 8, 17]],
    ],
)
def test_a_sheet_that_holds_no_board_is_passed_over(rows):
    assert read(rows).lines == ()


@pytest.mark.parametrize(
    ("weight", "stiffness"),
    [
        ("Basis weight", "Bending stiffness MD"), ("Flächengewicht", "Biegesteifigkeit längs"),
        ("Grammage", "Rigidité sens long"), ("Gramaje", "Rigidez longitudinal"), ("Ytvikt", "Böjstyvhet längs"),
    ],
)  # fmt: skip
def test_what_is_tested_of_boards_is_no_price(weight, stiffness):
    rows = [["", "", "GC1 250", "GC1 300"], [weight, "g/m²", 250, 300], [stiffness, "mNm", 15.2, 26.1]]
    assert lines(rows) == {}


@pytest.mark.parametrize("board", ["Moisture resistant", "High brightness", "Stiffness plus board"])
def test_a_board_that_is_called_by_what_is_tested_is_one(board):
    (line,) = lines([["Board", "g/m²", "EUR/t"], [board, 250, 1100]]).values()
    assert line.offer.price == 1100


def test_a_board_beside_a_word_for_a_charge_is_offered_where_it_costs_what_boards_do():
    rows = [["Use", "Board", "USD/ST"], ["Frozen food", "SBS C1S 18 pt", 1190], ["Energy drinks", "CUK 21 pt", 1080]]
    assert sorted(lines(rows)) == ["C2", "C3"]
    charged = [*rows, ["Energy surcharge", "CUK 21 pt", 30]]
    assert sorted(lines(charged)) == ["C2", "C3"]


def test_a_board_beside_a_word_for_a_charge_is_asked_about_where_nothing_shows_what_boards_cost():
    head = ["Use", "Board", "Price", "Unit"]
    rows = [head, ["Frozen food", "SBS C1S 18 pt", 1190, "USD/ST"], ["Fuel packaging", "CUK 21 pt", 0.57, "USD/lb"]]
    rows += [["Cosmetics", "SBS C1S 14 pt", 41.2, "USD/MSF"]]
    assert {cell: str(line.state) for cell, line in lines(rows).items()} == {
        "C2": "accepted", "C3": "question", "C4": "accepted",
    }  # fmt: skip
