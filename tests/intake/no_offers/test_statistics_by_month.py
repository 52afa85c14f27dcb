"""Quantities by month beside a list are no prices, whatever heads them."""

import pytest

from tests.intake.sheets import book, grid, read
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

MONTHS = ("January", "February", "March")


@pytest.mark.parametrize(
    "rows",
    [
        [["Shipments, tonnes"], ["Month", "GC1", "GC2"], *([one, 438, 675] for one in MONTHS), ["Total", 1314, 2025]],
        [["Your purchases"], ["Month", "Tonnes", "Invoice value GBP"], *([one, 84.2, 97420] for one in MONTHS)],
        [["Lieferungen in t"], ["Monat", "GD2", "GC1"], *([one, 438, 675] for one in ("Januar", "Februar", "März"))],
    ],
)  # fmt: skip
def test_they_are_passed_over_and_that_is_told(rows):
    told = read(rows)
    assert told.lines == ()
    assert "a history by months or years, no board" in {part.why for part in told.passed_over}


def test_prices_of_grades_by_month_may_be_offers():
    rows = [
        ["Contract prices, EUR per tonne"],
        ["Month", "GC1 250 g/m²", "GC2 300 g/m²"],
        *([month, 1200, 1100] for month in MONTHS),
    ]
    assert len(read(rows).lines) == 6


BY_MONTH = ["Month", "SBS 18 pt", "CUK 21 pt"]


def states(*sheets):
    found = read_workbook(book(*(grid(rows, name) for name, rows in sheets)), Answers({}))
    return {str(line.state) for line in found.lines if line.offer.source.cell != "D2"}


def test_prices_by_month_whose_money_is_told_at_the_figures_or_on_another_sheet():
    figures = [[month, "$1228", "$1010"] for month in MONTHS]
    assert states(("Prices", [["Contract prices per short ton, 2026"], BY_MONTH, *figures])) == {"accepted"}
    plain = [[month, 1228, 1010] for month in MONTHS]
    terms = ("Terms", [["All prices in USD per short ton, FOB mill."]])
    assert states(("A", [["Prices by delivery month"], BY_MONTH, *plain]), terms) == {"accepted"}
    german = [["Preise nach Liefermonat"], ["Monat", "GC1 300 g/m²", "GD2 320 g/m²"]]
    german += [["Januar", 1228, 1010], ["Mai", 1230, 1015]]
    told = ("Bedingungen", [["Alle Preise in EUR je Tonne, frei Haus."]])
    assert states(("Blatt", german), told) == {"accepted"}


def test_prices_by_month_in_no_currency_are_asked_about():
    figures = [["Q2 2026", 1228, 1010], ["Q3 2026", 1230, 1015]]
    assert states(("S", [["Prices per short ton"], ["Quarter", *BY_MONTH[1:]], *figures])) == {"question"}


def test_quantities_by_month_are_no_prices_where_a_price_list_stands_beside_them():
    plain = [[month, 438, 675] for month in MONTHS]
    terms = ("Terms", [["All prices in USD per short ton, FOB mill."]])
    for title in ("Shipments by grade, tons", "Deliveries by grade", "Monthly usage"):
        assert states(("A", [[title], BY_MONTH, *plain]), terms) == set(), title
    offers = [["Grade", "Caliper (pt)", "lb/MSF", "Price USD/ST"], ["SBS", 18, 77, 1228], []]
    assert states(("A", [*offers, ["By grade"], BY_MONTH, *plain])) == set()
