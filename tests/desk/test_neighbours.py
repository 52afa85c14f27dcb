"""What the same sheet asks for the boards next to one that is out of line."""

from datetime import date
from decimal import Decimal

from tests.desk.filing import file
from tests.store.making import line
from tracker.desk.comparison import ChosenFooting, Comparison
from tracker.desk.explanation import offer_reasons
from tracker.desk.neighbours import own_neighbours
from tracker.desk.opening import Desk
from tracker.desk.quotes import compare, load_snapshot
from tracker.trade.basis import Basis

PLAIN = {"charges": (), "from_kg": None, "below_kg": None, "minimum_kg": None}
POINT = Decimal("25.4")


def _market(desk: Desk, odd: dict[int, Decimal], basis: Basis = Basis.CWT) -> Comparison:
    """Eight vendors alike at 16 to 24 pt, and one whose prices by caliper are `odd`."""
    for number in range(8):
        lines = [_line(pt, Decimal(50) + Decimal(number) / 10, Basis.CWT) for pt in (16, 18, 20, 22, 24)]
        file(desk, *lines, content=f"v{number}".encode(), vendor=f"Vendor {number}")
    file(desk, *(_line(pt, price, basis) for pt, price in odd.items()), content=b"odd", vendor="Odd Board")
    return compare(desk, load_snapshot(desk), ChosenFooting(as_of=date(2026, 11, 25)))


def _line(points: int, price: Decimal, basis: Basis):
    weight = Decimal(20) * points
    return line(f"D{points}", caliper_um=POINT * points, grammage_gsm=weight, price=price, basis=basis,
                product=f"Board {points}", **PLAIN)  # fmt: skip


def _odd_one(comparison: Comparison) -> int:
    return next(iter(comparison.out_of_line.nonzero()[0]))


def test_both_neighbours_are_told_as_quoted_right_after_the_conclusion(desk: Desk) -> None:
    made = _market(desk, {18: Decimal("50.80"), 20: Decimal("81.34"), 22: Decimal("48.55"), 24: Decimal("50.1")})
    odd = _odd_one(made)
    said = "This vendor's own 18 pt is $50.80 /cwt and 22 pt is $48.55 /cwt; this 20 pt is $81.34 /cwt."
    assert own_neighbours(made, odd) == said
    assert offer_reasons(made, odd)[1] == said
    assert "457 µm is $50.80 /cwt" in (own_neighbours(made, odd, metric=True) or "")


def test_a_board_at_the_end_has_one_neighbour(desk: Desk) -> None:
    made = _market(desk, {18: Decimal("50.80"), 20: Decimal("81.34")})
    assert own_neighbours(made, _odd_one(made)) == "This vendor's own 18 pt is $50.80 /cwt; this 20 pt is $81.34 /cwt."


def test_nothing_is_said_of_a_price_in_line_or_without_neighbours(desk: Desk) -> None:
    made = _market(desk, {20: Decimal("81.34")})
    odd = _odd_one(made)
    assert own_neighbours(made, odd) is None
    assert own_neighbours(made, 0 if odd else 1) is None


def test_by_area_the_caliper_makes_the_difference_so_nothing_is_said(desk: Desk) -> None:
    made = _market(desk, {18: Decimal("37"), 20: Decimal("75"), 22: Decimal("46")}, Basis.MSF)
    assert own_neighbours(made, _odd_one(made)) is None


def test_a_neighbour_out_of_line_itself_is_not_passed_over_for_a_farther_board(desk: Desk) -> None:
    made = _market(desk, {16: Decimal("50.80"), 18: Decimal("78"), 20: Decimal("81.34"), 24: Decimal("50.1")})
    odd = max(made.out_of_line.nonzero()[0])
    assert made.out_of_line.sum() == 2
    assert own_neighbours(made, odd) is None
