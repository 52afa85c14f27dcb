"""'10M to 20M' where the sheet says that M is a thousand pounds."""

from decimal import Decimal
from itertools import pairwise

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.offer import State

LB = Decimal("0.45359237")
SIZES = [
    ("less than 10M", "10M to 20M", "20M and more"),
    ("< 10M", "10-20M", "20M+"),
    ("under 10k", "10k-20k", "20k & up"),
]


def priced(title, sizes, *above):
    rows = [[title], *above, ["Board", "pt", "lb/MSF", *sizes], ["SBS C1S", 16, 66, 63.5, 61.75, 60]]
    return list(lines(rows).values())


@pytest.mark.parametrize("sizes", SIZES)
@pytest.mark.parametrize("key", ["M = 1,000 lb", "In the order sizes below M = 1,000 pounds", "M=1000#"])
def test_the_sheet_gives_the_pounds(key, sizes):
    found = [(line.state, line.offer.from_kg, line.offer.below_kg) for line in priced(f"USD per cwt. {key}", sizes)]
    limits = pairwise([None, 10000 * LB, 20000 * LB, None])
    assert found == [(State.ACCEPTED, *each) for each in limits]


@pytest.mark.parametrize("sizes", SIZES)
def test_thousands_of_nothing_are_asked(sizes):
    for line in priced("USD per cwt", sizes):
        assert (line.state, codes(line) & {"bracket-unread"}) == (State.QUESTION, {"bracket-unread"})
    assert {line.state for line in priced("USD per cwt, sheets: M = 1,000 sheets", sizes)} == {State.QUESTION}
