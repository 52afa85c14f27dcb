"""Quantities that part several prices of one board are order sizes; those of lots and years are none."""

import pytest

from tests.intake.sheets import codes, lines

TITLE = ["Marrowgate Board Co."]


def sheet(head, *rows):
    return lines([TITLE, [], head, *rows])


def sizes(found):
    return [(line.offer.from_kg, line.offer.below_kg) for line in found.values()]


def test_a_bare_kg_with_falling_prices_is_the_order_size():
    head = ["Grade", "g/m²", "kg", "€/kg"]
    rows = [["GD2", 350, 1000, 0.85], ["GD2", 350, 5000, 0.80], ["GC1", 300, 1000, 0.95], ["GC1", 300, 5000, 0.90]]
    assert sizes(sheet(head, *rows)) == [(1000, 5000), (5000, None)] * 2
    once = [rows[0], [None, None, *rows[1][2:]], rows[2], [None, None, *rows[3][2:]]]
    assert sizes(sheet(head, *once)) == [(1000, 5000), (5000, None)] * 2


def test_lots_of_one_board_are_no_order_sizes():
    rows = [["GD2", 350, 1214, 0.85], ["GD2", 350, 5312, 0.85], ["GC1", 300, 3872, 0.95], ["GC1", 300, 5120, 0.97]]
    found = sheet(["Grade", "g/m²", "kg", "€/kg"], *rows)
    assert sizes(found) == [(None, None)] * 4
    assert {str(line.state) for line in found.values()} == {"accepted"}


@pytest.mark.parametrize("volumes", [("under 100", "100 and over"), (100, 500)])
def test_prices_that_go_by_what_is_bought_in_a_year_are_asked_about(volumes):
    low, high = volumes
    rows = [["SBS", 18, low, 1250], ["SBS", 18, high, 1200], ["CRB", 20, low, 900], ["CRB", 20, high, 880]]
    found = sheet(["Grade", "Caliper (pt)", "Annual usage (tons)", "USD/short ton"], *rows)
    assert all("bracket-unread" in codes(line) for line in found.values())


def test_what_is_bought_of_each_board_in_a_year_asks_nothing():
    rows = [["SBS", 18, 100, 1250], ["CUK", 18, 500, 1200], ["CRB", 20, 100, 900]]
    found = sheet(["Grade", "Caliper (pt)", "Annual tons", "USD/short ton"], *rows)
    assert [str(line.state) for line in found.values()] == ["accepted"] * 3


def test_the_price_of_a_load_is_no_charge_on_a_dearer_one():
    found = sheet(
        ["Grade", "Caliper (pt)", "Truckload $/cwt", "Sample $/cwt"], ["SBS", 18, 65, 650], ["CRB", 20, 45, 450]
    )
    assert {"C4", "C5"} <= found.keys()


PRO_FORMA = ["Material", "Cal.", "Qty (lb)", "Price (US$/cwt)", "Line amount (US$)"]
ORDERED = [
    ["SBS C1S", "18 pt", 26000, 61, 15860],
    ["CCNB", "20 pt", 14000, 46, 6440],
    ["URB", "28 pt", 31000, 38, 11780],
]


@pytest.mark.parametrize(
    "last",
    [
        [None, None, 71000, "Goods total", 34080],
        [None, None, 71000, "Summe", 34080],
        [None, None, 71000, "Total marchandise", 34080],
        [None, None, 71000, None, 34080],
        [None, None, "71,000 lb total", None, 34080],
    ],
)
def test_what_a_pro_forma_comes_to_ends_no_order_size(last):
    assert sizes(sheet(PRO_FORMA, *ORDERED, last)) == [(None, None)] * 3


def test_a_last_size_that_is_no_sum_ends_the_one_before():
    scale = [["SBS C1S", "18 pt", 26000, 61], [None, None, 40000, 60], [None, None, 80000, "on request"]]
    found = sheet(PRO_FORMA[:-1], *scale)
    assert [round(line.offer.below_kg) for line in found.values() if line.offer.price == 60] == [36287]


@pytest.mark.parametrize("amounts", [True, False])
def test_one_board_ordered_twice_at_one_price_has_no_price_breaks(amounts):
    rows = [*ORDERED, ["SBS C1S", "18 pt", 19000, 61, 11590], ["SBS C1S", "18 pt", 12000, 61, 7320]]
    width = 5 if amounts else 4
    found = sheet(PRO_FORMA[:width], *(row[:width] for row in rows))
    assert set(sizes(found)) == {(None, None)}


def test_cheaper_prices_for_more_stay_price_breaks_beside_their_amounts():
    rows = [["SBS C1S", "18 pt", 10000, 61, 6100], ["SBS C1S", "18 pt", 40000, 59, 23600]]
    found = sheet(PRO_FORMA, *rows)
    assert [round(line.offer.from_kg) for line in found.values()] == [4536, 18144]
    assert [line.offer.below_kg is None for line in found.values()] == [False, True]


@pytest.mark.parametrize("amount", ["Amount", "Betrag", "Montant", "Importe", "Belopp"])
def test_a_step_at_one_price_leaves_a_quotation_its_sizes(amount):
    head = ["Grade", "g/m²", "Qty (kg)", "€/kg", amount]
    sbs = [["GC1", 300, 1000, 0.95, 950], ["GC1", 300, 5000, 0.90, 4500], ["GC1", 300, 20000, 0.90, 18000]]
    assert sizes(sheet(head, *sbs)) == [(1000, 5000), (5000, 20000), (20000, None)]
    # A board whose price is the same for all sizes takes them from no other.
    level = [["GD2", 350, 1000, 0.80, 800], ["GD2", 350, 5000, 0.80, 4000]]
    assert sizes(sheet(head, *sbs, *level))[:3] == [(1000, 5000), (5000, 20000), (20000, None)]
    # Where no board gets cheaper, the lines are those of an order.
    assert sizes(sheet(head, *level, ["GC1", 300, 1000, 0.9, 900])) == [(None, None)] * 3
