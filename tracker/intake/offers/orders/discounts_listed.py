"""'Order size | Discount' right of the prices: a list of its own, or each board's smallest order for a discount."""

from collections.abc import Sequence
from itertools import pairwise

from tracker.intake.columns.column import Columns
from tracker.intake.values.heads.roles import ORDER_SIZES, Role
from tracker.intake.values.orders.brackets_in_kg import KgBracket

_FEWEST = 3
"""Sizes that begin above each other, of which two are as likely those of two boards: 'over 5 t', 'over 10 t'."""


def lists_discounts(columns: Columns, sizes: Sequence[KgBracket], *, complete: bool) -> bool:
    """Whether sizes beside boards each with one of them may be a list of its own, so that no board is sold in its
    row's alone: they run on from row to row, 'under 5 t', '5-20 t', 'over 20 t', or end before the boards do.

    `complete`: every board has one. A price behind the two columns is what a size costs.
    """
    size, last = columns.first(*ORDER_SIZES), max((price.index for price in columns.prices), default=0)
    discounts = {column.index for column in columns.of(Role.DISCOUNT)}
    if size is None or size.index < last or size.index + 1 not in discounts:
        return False
    if any(one.unread for one in sizes):
        return True
    rise = all(one < other for one, other in pairwise(one.from_kg or 0 for one in sizes))
    return rise and (any(one.below_kg is not None for one in sizes) or len(sizes) >= _FEWEST or not complete)
