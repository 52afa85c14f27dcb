"""Smallest orders that differ for one board are price breaks."""

import pytest

from tests.intake.sheets import lines

HEADS = ["Grade", "Caliper (pt)", "lb/MSF", "Min qty (lb)", "US$/cwt"]
SBS, CRB = ["SBS C1S", 16, 68], ["CRB C1S", 18, 71]


@pytest.mark.parametrize("again", [SBS, [None, None, None]])
@pytest.mark.parametrize("sizes", [(5000, 10000), ("5,000 lb", "10,000 lb")])
def test_a_dearer_smaller_order_of_the_same_board_is_a_break(again, sizes):
    found = lines([HEADS, [*SBS, sizes[0], 64], [*again, sizes[1], 62], [*CRB, sizes[0], 44]])
    told = {cell: (line.offer.from_kg, line.offer.below_kg, line.offer.minimum_kg) for cell, line in found.items()}
    kg = [pytest.approx(2267.96185), pytest.approx(4535.9237)]
    assert [float(told["E2"][0]), float(told["E2"][1]), float(told["E3"][0])] == [*kg, kg[1]]
    assert told["E3"][1] is told["E4"][1] is told["E2"][2] is None


@pytest.mark.parametrize("rows", [([*SBS, 5000, 64], [*CRB, 10000, 44]), ([*SBS, 5000, 62], [*SBS, 10000, 64])])
def test_one_a_board_and_prices_that_rise_with_it_are_smallest_orders(rows):
    assert all(line.offer.from_kg is None for line in lines([HEADS, *rows]).values())
