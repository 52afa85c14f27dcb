"""Figures beside prices that nobody pays: yields, series of other goods, and the mean of some boards."""

import pytest

from tests.intake.sheets import lines, read
from tracker.intake.values.heads.yields import tells_yield


def _prices(rows):
    return [line.offer.price for line in lines(rows).values()]


@pytest.mark.parametrize("head", ["m² je t", "MSF/ST", "sheets per ton", "feuilles/t", "ark/ton", "ft² per short ton"])
def test_what_a_ton_makes_is_a_yield(head):
    assert tells_yield(head)
    rows = [["Preise EUR/t"], ["Sorte", "g/m²", "µm", head, "Preis"], ["GC1", 250, 400, 4000, 1240]]
    assert _prices([*rows, ["GC1", 300, 490, 3333, 1285]]) == [1240, 1285]


@pytest.mark.parametrize("head", ["EUR/m²", "Price per sheet", "Bogen", "kg/1000 Bogen", "lb/MSF", "EUR/m² per t"])
def test_a_price_and_a_weight_are_no_yield(head):
    assert not tells_yield(head)


@pytest.mark.parametrize("head", ["Papel liner, ref. USD/t", "OCC ref. USD/t", "NBSK USD/t"])
def test_a_series_of_other_goods_is_no_offer_beside_the_price(head):
    heads = ["Producto", "Calibre (pts)", "g/m²", "USD/tonelada métrica", head]
    assert _prices([heads, ["SBS C1S", 14, 288, 1392, 742], ["SBS C1S", 16, 322, 1378, 742]]) == [1392, 1378]


@pytest.mark.parametrize("label", ["Average SBS", "SBS average", "Mean SBS"])
def test_the_mean_of_one_grade_is_no_board_of_it(label):
    rows = [["USD/ST"], ["Grade", "lb/MSF", "pt", "Price"], ["SBS", 75, 18, 1252], ["SBS", 83, 20, 1238]]
    sheet = read([*rows, [label, 79, 19, 1245], ["CRB", 79, 20, 862.5]])
    assert [line.offer.price for line in sheet.lines] == [1252, 1238, 862.5]
    assert [passed.why for passed in sheet.passed_over] == ["a total or an average"]


def test_a_board_of_average_quality_is_one_where_its_price_is_no_mean():
    rows = [["USD/ST"], ["Grade", "lb/MSF", "pt", "Price"], ["SBS", 75, 18, 1252], ["SBS", 83, 20, 1238]]
    assert 1190 in _prices([*rows, ["SBS average", 79, 19, 1190], ["CRB", 79, 20, 862.5]])


@pytest.mark.parametrize(("sheets", "pallet"), [("Bogen", "Palette"), ("Sheets", "Skid"), ("Ark", "Pall")])
def test_so_many_sheets_on_a_pallet_are_no_prices(sheets, pallet):
    heads = ["Grade", "g/m²", "µm", "Price", None, "Grade", "g/m²", sheets, pallet]
    rows = [["GC1", 230, 365, 1272, None, "GC1", 230, 1800, 690], ["GC1", 250, 400, 1260, None, "GC1", 250, 1600, 705]]
    assert _prices([["EUR/t"], [None], heads, *rows]) == [1272, 1260]


def test_sheets_beside_rolls_are_priced_whatever_is_on_a_pallet():
    heads = ["Grade", "g/m²", "µm", "Rolls", "Sheets", "kg/pallet"]
    rows = [["GC1", 230, 365, 1250, 1300, 690], ["GC1", 250, 400, 1225, 1275, 705]]
    assert _prices([["EUR/t"], heads, *rows]) == [1250, 1300, 1225, 1275]
