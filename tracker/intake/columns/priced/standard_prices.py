"""'Std price' beside another price: what that one is reckoned from, or what is paid where that one does not hold."""

from collections.abc import Iterable

from tracker.intake.columns.column import Column, basis_in_head
from tracker.intake.columns.sizes.order_sizes import without_unit
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.lists import phrases


def standard_is_paid(column: Column, priced: Iterable[Column]) -> bool:
    """Whether a standard price is an offer: beside 'Net', 'Your price' or 'Price' it is a list price, beside 'Truckload
    price' and 'Rush price' what other orders pay."""
    if not phrases("standard_prices").find(column.text):
        return False
    others = [other for other in priced if other.role in (Role.PRICE, Role.NET_PRICE) and other is not column]
    return bool(others) and not any(map(_is_of_every_order, others))


def _is_of_every_order(column: Column) -> bool:
    if column.role is Role.NET_PRICE or phrases("the_buyer").find(column.text) or not column.said:
        return True
    words = without_unit(column.said[-1], basis_in_head(column.said[-1]))
    return not words.strip() or phrases("prices_of_this_offer").whole(words.strip()) is not None
