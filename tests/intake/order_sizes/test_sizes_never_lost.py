"""Order sizes in rows, descriptions and sub-headings: read, or asked about, and never taken for every order."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.orders.brackets import Bracket
from tracker.intake.values.orders.brackets_in_kg import in_kg

TON = 907.18474


def sizes(found):
    return {
        cell: tuple(None if kg is None else round(float(kg)) for kg in (line.offer.from_kg, line.offer.below_kg))
        for cell, line in found.items()
    }


def asked(found):
    return {cell for cell, line in found.items() if "bracket-unread" in codes(line)}


def test_short_tons_below_a_corner_that_weighs_board_in_pounds():
    found = lines(
        [
            ["SUS roll stock, US dollars per short ton"],
            ["Caliper", "16 pt", "21 pt"],
            ["Basis weight, lb/MSF", 62, 80],
            ["4 to under 12 ST", 1105, 1090],
            ["12 ST and up", 1080, 1065],
        ]
    )
    assert sizes(found) == {
        "B4": (round(4 * TON), round(12 * TON)), "C4": (round(4 * TON), round(12 * TON)),
        "B5": (round(12 * TON), None), "C5": (round(12 * TON), None),
    }  # fmt: skip


def test_bare_figures_below_such_a_corner_are_no_pounds():
    found = lines(
        [
            ["SUS roll stock, US dollars per short ton"],
            ["Caliper", "16 pt", "21 pt"],
            ["Basis weight, lb/MSF", 62, 80],
            ["4 to under 12", 1105, 1090],
            ["12 and up", 1080, 1065],
        ]
    )
    assert asked(found) == set(found)


def test_pounds_of_an_order_head_its_sizes():
    rows = [["USD per cwt"], ["Board", "pt", "Order size (lb)", "Price"]]
    found = lines([*rows, ["SUS", 18, "under 5,000", 62.5], ["SUS", 18, "5,000 and up", 60.5]])
    assert sizes(found) == {"D3": (None, 2268), "D4": (2268, None)}


def test_a_size_without_any_limit_is_not_every_order():
    assert in_kg(Bracket("some order")).unread


@pytest.mark.parametrize(
    ("title", "heads", "sizes_of"),
    [
        ("Cupboard, EUR per tonne", ("230 g/m²", "250 g/m²"), ("medium runs 3 to 8 t", "long runs from 8 t")),
        ("GC1, EUR je Tonne", ("230 g/m²", "250 g/m²"), ("Bezug ab 3 to", "Bezug ab 8 to")),
        ("GC1, EUR par tonne", ("230 g/m²", "250 g/m²"), ("par 3 t", "par 8 t")),
        ("GC1, EUR por tonelada", ("230 g/m²", "250 g/m²"), ("pedidos medianos 3-8 t", "pedidos grandes > 8 t")),
        ("GC1, EUR per ton (1000 kg)", ("230 g/m²", "250 g/m²"), ("mellanorder 3-8 ton", "stororder > 8 ton")),
    ],
)
def test_rows_of_sizes_that_are_not_understood_are_asked_about(title, heads, sizes_of):
    title = title.replace("Cupboard", "GC1")
    found = lines([[title], [None, *heads], [sizes_of[0], 1262, 1254], [sizes_of[1], 1237, 1229]])
    assert asked(found) == {"B3", "C3", "B4", "C4"}


def test_words_under_a_head_for_order_sizes_are_asked_about():
    found = lines(
        [["EUR/t"], ["Order size", "GC1 230 g/m²", "GC1 250 g/m²"], ["a few t", 1262, 1254],
         ["a good many t", 1237, 1229]]
    )  # fmt: skip
    assert asked(found) == set(found)
    assert found


@pytest.mark.parametrize(
    "description", ["GC1 250 g/m², {}", "{} GC1 250 g/m²"]
)  # fmt: skip
def test_sizes_in_descriptions_are_asked_about(description):
    rows = [["EUR/t"], ["Board", "Price EUR/t"]]
    found = lines([*rows, *([description.format(size), price] for size, price in (("3-8 t", 1262), ("ab 8 t", 1237)))])
    assert asked(found) == {"B3", "B4"}


def test_weights_that_part_no_prices_of_a_board_are_not_asked_about():
    rows = [["EUR/t"], ["Board", "Price EUR/t"]]
    boards = lines([*rows, ["GC1 250 g/m², reels of 800 kg", 1262], ["GC2 280 g/m², reels of 1200 kg", 1237]])
    same = lines([*rows, ["GC1 250 g/m², reels of 800 kg", 1262], ["GC2 250 g/m², reels of 800 kg", 1237]])
    assert not asked(boards)
    assert not asked(same)


def test_lots_of_a_stock_list_are_no_order_sizes():
    rows = [["EUR/t"], ["Board", "g/m²", "Width mm", "Stock kg", "Price EUR/t"]]
    found = lines([*rows, ["GC1", 250, 820, 4200, 900], ["GC1", 250, 940, 7800, 880]])
    assert not asked(found)


def test_sub_headings_of_short_tons_are_sizes():
    rows = [["USD per short ton"], ["Board", "pt", "lb/MSF", "Price"]]
    found = lines([*rows, ["4 to under 12 ST"], ["SUS", 18, 70, 1105], ["12 ST and up"], ["SUS", 18, 70, 1080]])
    assert sizes(found) == {"D4": (round(4 * TON), round(12 * TON)), "D6": (round(12 * TON), None)}


def test_the_number_of_a_paper_is_no_size_in_short_tons():
    found = lines([["Offer ST-417, USD per short ton"], ["Board", "pt", "lb/MSF", "Price"], ["SUS", 18, 70, 1105]])
    assert sizes(found) == {"D3": (None, None)}
    assert not asked(found)


def test_a_corner_called_board_over_rows_of_sizes():
    found = lines(
        [["EUR/t"], ["Board", "GC1", "GC1"], ["g/m²", 230, 250], ["3 - 8 t", 1262, 1254], ["> 8 t", 1237, 1229]]
    )
    assert set(sizes(found).values()) <= {(3000, 8000), (8000, None)} or asked(found) == set(found)


def test_a_row_without_a_size_beside_sizes_of_its_board_is_asked_about():
    rows = [["EUR/t"], ["Board", "g/m²", "Order size", "Price EUR/t"]]
    sized = [["GC1", 250, "3 - 8 t", 1262], ["GC1", 250, "from 8 t", 1237]]
    assert asked(lines([*rows, *sized, ["GC1", 250, None, 1300]])) == {"D5"}
    assert asked(lines([*rows, *sized, ["GD2", 300, None, 800]])) == set()


def test_a_fraction_of_a_truck_weighs_no_truck():
    found = lines(
        [
            ["USD per short ton"],
            ["Board", "pt", "lb/MSF", "4 ST to 1/2 truck", "full truck"],
            ["SUS", 18, 70, 1105, 1080],
        ]
    )
    assert asked(found) >= {"E3"}


def test_an_answer_settles_what_such_a_size_is():
    rows = [["EUR/t"], ["Board", "Price EUR/t"], ["GC1 250 g/m², Partie 3-8 t", 1262], ["GC1 250 g/m², ab 8 t", 1237]]
    keys = {"bracket:gc1 250 g/m², partie 3-8 t": "3000:8000", "bracket:gc1 250 g/m², ab 8 t": "8000:"}
    found = lines(rows, keys)
    assert sizes(found) == {"B3": (3000, 8000), "B4": (8000, None)}
    assert not asked(found)
