"""What the head of a price column says beside the price."""

import pytest

from tests.intake.sheets import codes, lines

ROW = ["CRB C1S", 18, 70]


@pytest.mark.parametrize(
    ("heads", "bounds"),
    [
        (("EUR/tonne < 5 tonnes", "EUR/tonne from 5 tonnes"), ((None, 5000), (5000, None))),
        (("$/ST 5,000-20,000 lb", "$/ST over 20,000 lb"), (("2267.96185", "9071.8474"), ("9071.8474", None))),
        (("Price under 5000 kg EUR/tonne", "Price from 5000 kg EUR/tonne"), ((None, 5000), (5000, None))),
        (("Price up to 2000 kg (EUR/tonne)", "Price 2000-9000 kg (EUR/tonne)"), ((None, 2000), (2000, 9000))),
    ],
)
def test_an_order_size_in_one_cell_with_the_unit(heads, bounds):
    found = lines([["Board", "pt", "lb/MSF", *heads], [*ROW, 940, 905]])
    assert [line.state for line in found.values()] == ["accepted", "accepted"]
    for line, (start, end) in zip(found.values(), bounds, strict=True):
        read = line.offer.from_kg, line.offer.below_kg
        assert [None if kg is None else f"{kg.normalize():f}" for kg in read] == [
            None if kg is None else str(kg) for kg in (start, end)
        ]


@pytest.mark.parametrize("head", ["USD/ST > 20", "USD/ST at 5 short tons"])
def test_an_order_size_that_is_not_understood_is_asked(head):
    (line,) = lines([["Board", "pt", "lb/MSF", head], [*ROW, 905]]).values()
    assert line.state == "question"
    assert "bracket-unread" in codes(line)


@pytest.mark.parametrize(
    "head", ["USD per ton of 2,000 lb", "$ / hundredweight (100 lb)", "EUR/1000 kg", "Price USD/ST"]
)
def test_a_unit_is_no_order_size(head):
    (line,) = lines([["Board", "pt", "lb/MSF", head], [*ROW, 905]]).values()
    assert (line.offer.from_kg, line.offer.below_kg) == (None, None)
    assert "bracket-unread" not in codes(line)
