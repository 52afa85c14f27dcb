"""Order sizes whose limits stand in two columns: from nought, to what is still within, below what is not."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines

BOARD = ["GC1", 240, 380]


def sizes(low, high, *limits):
    rows = [[*BOARD, *limit, 1142 - place] for place, limit in enumerate(limits)]
    found = lines([["Product", "g/m²", "µm", low, *([high] if high else []), "EUR/t"], *rows]).values()
    assert {str(line.state) for line in found} == {"accepted"}
    return [(line.offer.from_kg, line.offer.below_kg) for line in found]


@pytest.mark.parametrize("nought", [0, "0"])
def test_an_order_from_nought_ends_where_the_next_begins(nought):
    assert sizes("From kg", "", [nought], [5000]) == [(None, 5000), (5000, None)]


def test_nought_alone_parts_nothing():
    assert sizes("From kg", "", [0]) == [(None, None)]


@pytest.mark.parametrize(("low", "high"), [("From kg", "To kg"), ("von (kg)", "bis (kg)"), ("desde kg", "hasta kg")])
def test_a_limit_that_is_within_ends_at_the_round_weight(low, high):
    assert sizes(low, high, [0, 4999], [5000, 9999]) == [(None, 5000), (5000, 10000)]
    assert sizes(low, high, [0, 4999], [5000, 0]) == [(None, 5000), (5000, None)]
    assert sizes(low, high, ["0", "4999"], ["5000", "0"]) == [(None, 5000), (5000, None)]


def test_a_limit_that_is_not_within_ends_there():
    assert sizes("From kg", "Below kg", [0, 4999], [5000, 10000]) == [(None, Decimal(4999)), (5000, 10000)]


def test_a_smallest_order_of_nought_is_none():
    head = ["Product", "g/m²", "µm", "Min order kg", "EUR/t"]
    (line,) = lines([head, [*BOARD, 0, 1142]]).values()
    assert line.offer.minimum_kg is None
