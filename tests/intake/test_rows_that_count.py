"""Rows below a list that count something, calipers in thousandths of a millimetre, and kraft cut short."""

import pytest

from tests.intake.sheets import book, grid, lines, read
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

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
    "head",
    [
        "Grosor\n(milésimas de mm)",
        "Dicke (Tausendstel mm)",
        "Caliper, thousandths of a mm",
        "Épaisseur (millièmes de mm)",
        "Tjocklek, tusendels mm",
    ],
)
def test_thousandths_of_a_millimetre_are_micrometres(head):
    (line,) = lines([["Board", "g/m²", head, "EUR/t"], ["GC1", 260, 415, 1287]]).values()
    assert (str(line.state), line.offer.caliper_um) == ("accepted", 415)


def test_millimetres_and_thousandths_of_an_inch_stay_what_they_are():
    (line,) = lines([["Board", "g/m²", "Grosor (mm)", "EUR/t"], ["GC1", 260, 0.415, 1287]]).values()
    assert line.offer.caliper_um == 415
    (line,) = lines([["Board", "lb/MSF", "Caliper (thousandths)", "$/ST"], ["SBS", 75, 18, 1287]]).values()
    assert float(line.offer.caliper_um) == 457.2


@pytest.mark.parametrize(
    ("name", "grade"),
    [
        ("Kraft ungebl. gestrichen", "CUK"),
        ("Kraft ungebl. ungestr.", "UUK"),
        ("oblekt kraft bestruken", "CUK"),
        ("Kraft ungebl.", None),
    ],
)
def test_a_sheet_called_by_kraft_cut_short(name, grade):
    sheet = grid([["Gewicht g/m²", "Dicke µm", "EUR/t"], [310, 420, 1105]], sheet=name)
    (line,) = read_workbook(book(sheet), Answers({})).lines
    assert line.offer.grade == grade
