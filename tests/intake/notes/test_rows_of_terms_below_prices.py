"""Rows of terms below several prices: each price has what stands below it."""

import pytest

from tests.intake.sheets import lines

HEADS = [["Grade", "Caliper (pt)", "Rolls USD/ST", "Sheets USD/ST"], ["SBS", 18, 1228, 1300], ["CUK", 21, 1010, 1100]]


def terms(row, field):
    return [getattr(line.offer, field) for line in lines([*HEADS, row]).values()][:2]


@pytest.mark.parametrize(
    ("row", "field", "told"),
    [
        (["Lead time", None, "4 weeks", "6 weeks"], "lead_days", [(28, 28), (42, 42)]),
        (["Lead time", None, None, "6 weeks"], "lead_days", [None, (42, 42)]),
        (["Lead time (weeks)", None, None, 6], "lead_days", [None, (42, 42)]),
        (["Delivery", None, None, "delivered"], "delivered", [None, True]),
        (["Lead time", None, "6 weeks", None], "lead_days", [(42, 42), (42, 42)]),
        (["Lead time", "6 weeks", None, None], "lead_days", [(42, 42), (42, 42)]),
    ],
)
def test_a_term_below_one_price_is_that_one_s(row, field, told):
    assert terms(row, field) == told


@pytest.mark.parametrize(
    ("low", "high", "told"),
    [("5,000 lb", "10,000 lb", [2268, 4536]), (None, "10,000 lb", [None, 4536]), ("5,000 lb", None, [2268, 2268])],
)
def test_so_is_a_smallest_order(low, high, told):
    found = terms(["Minimum order", None, low, high], "minimum_kg")
    assert [kg and round(kg) for kg in found] == told


def test_so_is_a_last_day():
    found = terms(["Valid until", None, "2027-03-31", "2027-06-30"], "valid_until")
    assert [day.isoformat() for day in found] == ["2027-03-31", "2027-06-30"]
