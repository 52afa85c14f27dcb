"""Order sizes down the rows, under heads with the unit before the word or under heads that nobody understands."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import Role

BOARDS = [["CRB C1S", 18, 69], [None] * 3, [None] * 3, ["SBS C1S", 14, 60], [None] * 3, [None] * 3]
SIZES = [(0, 4999), (5000, 19999), (20000, None)] * 2
PRICES = [34.1, 33.25, 32.7, 37.9, 37.05, 36.5]


def _sheet(heads, prices=PRICES):
    rows = [[*board, *size[: len(heads)], price] for board, size, price in zip(BOARDS, SIZES, prices, strict=True)]
    return lines([["USD per MSF, FCA Sandhythe mill"], ["Board", "Points", "lb/MSF", *heads, "Sell at"], *rows])


@pytest.mark.parametrize(
    ("begins", "ends"),
    [
        ("Kg from", "Kg through"),
        ("kg ab", "kg bis einschl."),
        ("kg à partir de", "kg jusqu'à"),
        ("kg desde", "kg hasta"),
        ("kg från", "kg t.o.m."),
        ("fr.o.m. kg", "t.o.m. kg"),
        ("kg from", "kg to"),
    ],
)
def test_the_word_for_a_limit_may_stand_behind_its_unit(begins, ends):
    told = [(line.offer.from_kg, line.offer.below_kg, str(line.state)) for line in _sheet([begins, ends]).values()]
    sizes = [(None, 5000), (5000, 20000), (20000, None)] * 2
    assert told == [(*size, "accepted") for size in sizes]


@pytest.mark.parametrize("head", ["lb/MSF", "US$/lb from", "t ab Werk", "kg till fabrik"])
def test_a_unit_before_other_words_is_no_limit(head):
    assert not {Role.FROM_QUANTITY, Role.BELOW_QUANTITY} & {reading.role for reading in header_roles(head)}


@pytest.mark.parametrize("head", ["Lb ladder", "Ladder"])
def test_figures_that_make_a_board_cheaper_are_asked_about(head):
    assert all(codes(line) >= {"bracket-unread"} for line in _sheet([head]).values())


@pytest.mark.parametrize("prices", [[34.1, 35.25, 32.7, 37.9, 37.05, 38.5], [34.1] * 3 + [37.9] * 3])
def test_figures_that_the_prices_do_not_follow_are_not(prices):
    assert not any("bracket-unread" in codes(line) for line in _sheet(["Ladder"], prices).values())
