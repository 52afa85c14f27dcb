"""Order sizes in columns of their own before each price: 'Break 1 | Price 1 | Break 2 | Price 2'."""

import re
from collections.abc import Mapping, Sequence

from tracker.intake.columns.column import Column, Columns
from tracker.intake.values.heads.roles import ORDER_SIZES, Role
from tracker.intake.words.fold import fold

_NUMBER = re.compile(r"\d+")


def sizes_before(columns: Sequence[Column], offers: Sequence[Column]) -> Mapping[int, tuple[Column, ...]]:
    """Price column -> the columns of order sizes right before it, where every price has its own of one kind; else {}.

    The prices' heads must differ in their numbers alone. A size before the first price that no other price has
    ('Volume | Break 1 | …') belongs to the row.
    """
    if len(offers) < 2 or len({_NUMBER.sub("", fold(price.text)) for price in offers}) > 1:
        return {}
    found = {price.index: _right_before(columns, price.index) for price in offers}
    fewest = min(len(sizes) for sizes in found.values())
    if fewest == 0:
        return {}
    own = {index: sizes[-fewest:] for index, sizes in found.items()}
    return own if len({tuple(size.role for size in sizes) for sizes in own.values()}) == 1 else {}


def _right_before(columns: Sequence[Column], price: int) -> tuple[Column, ...]:
    """The unbroken run of order-size columns that ends at the price."""
    sizes: list[Column] = []
    for column in sorted((one for one in columns if one.index < price), key=lambda one: -one.index):
        if column.role not in (*ORDER_SIZES, Role.MINIMUM):
            break
        sizes.insert(0, column)
    return tuple(sizes)


def without_sizes(columns: Columns, sizes: Mapping[int, tuple[Column, ...]]) -> dict[Role, tuple[Column, ...]]:
    """The columns by role without those that hold one price's order sizes and not the row's."""
    taken = {column.index for own in sizes.values() for column in own}
    return {
        role: tuple(column for column in found if column.index not in taken) for role, found in columns.by_role.items()
    }


def not_told_apart(columns: Columns) -> bool:
    """Several columns of order sizes that are left to the row, of which no one can say which price they belong to."""
    return any(len(columns.of(role)) > 1 for role in ORDER_SIZES)
