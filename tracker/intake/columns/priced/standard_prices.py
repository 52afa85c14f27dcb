"""'Std price' beside another price: what that one is reckoned from, or what is paid where that one does not hold."""

from collections.abc import Iterable, Mapping

from tracker.intake.columns.column import Column, Kind, basis_in_head
from tracker.intake.columns.priced.buyers_figures import BUYERS_PRICE, whose_figure
from tracker.intake.columns.priced.in_force import own_words
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


def ordinary_beside_yours(kinds: Mapping[Column, Kind]) -> list[Column]:
    """'Standard' and 'Regular price' beside 'Your price': what others pay is a list price to this buyer."""
    offers = [column for column, kind in kinds.items() if kind is Kind.OFFER]
    # 'Your current price' and 'your target' are figures of the buyer's own.
    yours = [one for one in offers if phrases("the_buyer").find(one.text) and whose_figure(one) in (None, BUYERS_PRICE)]
    named = [column for column in offers if phrases("ordinary_prices").whole(own_words(column)) is not None]
    return [column for column in named if column not in yours] if yours else []


def _is_of_every_order(column: Column) -> bool:
    if column.role is Role.NET_PRICE or phrases("the_buyer").find(column.text) or not column.said:
        return True
    words = without_unit(column.said[-1], basis_in_head(column.said[-1]))
    return not words.strip() or phrases("prices_of_this_offer").whole(words.strip()) is not None
