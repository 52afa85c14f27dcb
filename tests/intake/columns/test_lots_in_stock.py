"""Quantities in a list of what lies in stock: how much there is of each, and no sizes of orders."""

import pytest

from tests.intake.sheets import lines

LANGUAGES = {
    "en": ("Overstock, prices US$ FOB warehouse, all items in stock", "Qty", "skids"),
    "de": ("Sonderposten ab Lager, Preise in USD", "Menge", "Paletten"),
    "fr": ("Lots disponibles, prix en USD, tout en stock", "Quantité", "palettes"),
    "es": ("Ofertas en existencias, precios en USD", "Cantidad", "palets"),
    "sv": ("Partier i lager, priser i USD", "Kvantitet", "pallar"),
}


@pytest.mark.parametrize("language", LANGUAGES)
def test_amounts_in_stock_are_no_order_sizes(language):
    title, head, pallets = LANGUAGES[language]
    found = lines(
        [[title], [], ["Grade", "Cal pt", "lb/MSF", head, "USD/lb"], ["SBS C1S", 18, 74, "11,240 lb", 0.495],
         ["CUK", 20, 80, f"14 {pallets}", 0.515], ["CRB", 24, 94, f"9 {pallets}", 0.31]]
    )  # fmt: skip
    assert [(str(line.state), line.offer.from_kg) for line in found.values()] == [("accepted", None)] * 3


@pytest.mark.parametrize(
    ("title", "head", "cells"),
    [
        ("Price list, prices US$ FOB mill", "Qty", ("11,240 lb", "14 skids", "9 skids")),
        ("All items in stock, prices US$", "Order size", ("5,000 lb", "14 skids", "9 skids")),
        ("All items in stock, prices US$", "Qty", ("from 5,000 lb", "from 14 skids", "from 9 skids")),
    ],
)
def test_other_quantities_are_sizes_of_orders(title, head, cells):
    rows = [["SBS C1S", 18, 74, cells[0], 0.495], ["CUK", 20, 80, cells[1], 0.515], ["CRB", 24, 94, cells[2], 0.31]]
    found = lines([[title], [], ["Grade", "Cal pt", "lb/MSF", head, "USD/lb"], *rows])
    assert [str(line.state) for line in found.values()] == ["accepted", "question", "question"]


def test_a_board_that_is_cheaper_the_more_is_bought_comes_in_order_sizes():
    rows = [["SBS C1S", 18, 74, amount, price] for amount, price in ((1000, 0.55), (5000, 0.53), (20000, 0.5))]
    found = lines([["All in stock, US$"], [], ["Grade", "Cal pt", "lb/MSF", "Qty lb", "USD/lb"], *rows])
    assert [round(float(line.offer.from_kg)) for line in found.values()] == [454, 2268, 9072]


STORED = ["Grade", "Caliper (pt)", "Weight (lb/MSF)", "Price USD/ST"]


@pytest.mark.parametrize(
    ("head", "counts", "found"),
    [
        ("Ex warehouse", (38, 15), ["D2", "D3"]),
        ("Ex warehouse", (1160, 955), ["D2", "D3", "E2", "E3"]),
        ("Ex warehouse", ("57.5", "47.5"), ["D2", "D3", "E2", "E3"]),
        ("Ex mill", (1160, 955), ["D2", "D3", "E2", "E3"]),
    ],
)
def test_what_lies_in_a_warehouse_is_counted_and_no_price_from_there(head, counts, found):
    boards = [("SBS", 20, 82, 1190), ("CUK", 21, 84, 985)]
    rows = [[*STORED, head], *([*board, count] for board, count in zip(boards, counts, strict=True))]
    assert sorted(lines(rows)) == found


def test_whole_prices_per_area_below_ex_warehouse_are_no_counts():
    heads = ["Grade", "Basis wt (lb/MSF)", "Price USD/ST", "Ex warehouse"]
    dear = [("SBS", 45, 1228, 28), ("SBS", 77, 1190, 46), ("CUK", 120, 1010, 61)]
    assert {"D2", "D3", "D4"} <= lines([heads, *dear]).keys()
    counted = [("SBS", 45, 1228, 61), ("SBS", 77, 1190, 12), ("CUK", 120, 1010, 28)]
    assert {"D2", "D3", "D4"}.isdisjoint(lines([heads, *counted]))
