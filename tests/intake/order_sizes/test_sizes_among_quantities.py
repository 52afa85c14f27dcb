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
