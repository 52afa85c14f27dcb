"""A column of units with a column of words between it and a quantity is the quantity's, where prices have their own."""

import pytest

from tests.intake.sheets import lines

GRADES = [["SBS", "18 pt"], ["CUK", "20 pt"]]


def told(heads, *cells):
    rows = [["Price list, USD"], ["Grade", "Caliper", *heads], *([*grade, *cells] for grade in GRADES)]
    line = next(iter(lines(rows).values()))
    minimum = None if line.offer.minimum_kg is None else round(float(line.offer.minimum_kg))
    return str(line.state), line.offer.basis, minimum


@pytest.mark.parametrize(
    ("heads", "cells"),
    [
        (("Min qty", "Origin", "Unit", "Price", "Per"), (20000, "Kelm", "lb", 1200, "ST")),
        (("Min qty", "Form", "Unit", "Price", "Unit"), (20000, "roll", "lb", 1200, "ST")),
        (("Min qty", "Origin", "Unit", "Price USD/ST"), (20000, "Kelm", "lb", 1200)),
        (("Min qty", "Unit", "Price", "Per"), (20000, "lb", 1200, "ST")),
    ],
)
def test_it_is_no_unit_of_the_price(heads, cells):
    assert told(heads, *cells) == ("accepted", "short_ton", 9072)


def test_far_from_the_price_it_says_nothing_of_it():
    assert told(("Min qty", "Unit", "Origin", "Price"), 20, "tonne", "Kelm", 1200) == ("question", None, 20000)


@pytest.mark.parametrize(
    ("heads", "cells"),
    [
        (("Min qty", "Origin", "Unit", "Price"), (20, "Kelm", "tonne", 1200)),
        (("Origin", "Unit", "Price"), ("Kelm", "tonne", 1200)),
        (("Width", "Unit", "Price"), ("30 in", "tonne", 1200)),
    ],
)
def test_beside_a_price_that_has_none_it_is_that_ones(heads, cells):
    assert told(heads, *cells)[:2] == ("accepted", "tonne")
