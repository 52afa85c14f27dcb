"""What a vendor pays himself, beside what he offers; and what a buyer pays, beside what he might sell for again."""

from collections.abc import Iterable, Mapping
from dataclasses import replace

from tracker.intake.columns.column import Column, Kind, basis_in_head
from tracker.intake.columns.roles.headed_figures import by_words
from tracker.intake.columns.sizes.order_sizes import without_unit
from tracker.intake.values.heads.roles import ON_TOP, Role
from tracker.intake.words.lists import phrases


def names_own_cost(column: Column) -> bool:
    """'Our buying cost', 'EK netto', 'Achat €/t'; 'Ihr EK' is the reader's own, and to be paid."""
    return _names_cost(column) and not phrases("the_buyer").find(column.text)


def _names_cost(column: Column) -> bool:
    if any(match.value == "any" for match in phrases("own_costs").find(column.text)):
        return True
    lowest = column.said[-1] if column.said else None
    named = without_unit(lowest, basis_in_head(lowest)) if lowest is not None else ""
    return phrases("own_costs").whole(named) is not None


def built_up(columns: list[Column]) -> list[Column]:
    """Before a margin, 'Fiber', 'Energy' and 'Freight' are what the price is made of, and not charged beside it."""
    margin = min((column.index for column in columns if column.role is Role.MARGIN), default=None)
    if margin is None:
        return columns
    sold = any(column.index > margin and column.role is Role.PRICE and _called_a_price(column) for column in columns)
    return [
        replace(column, role=Role.MARGIN)
        if column.index < margin and (column.role in ON_TOP or (sold and _money_for_something(column)))
        else column
        for column in columns
    ]


def _money_for_something(column: Column) -> bool:
    """'Fiber USD/ST': a price by its unit alone."""
    return column.role is Role.PRICE and not _called_a_price(column)


def _called_a_price(column: Column) -> bool:
    return any(head.role is Role.PRICE and by_words(head) for head in column.said)


def beside_costs(priced: Iterable[Column]) -> Mapping[Column, Kind]:
    """The kinds of prices that costs settle: none where nothing but costs is priced, for then that is what is asked."""
    columns = list(priced)
    costs = [column for column in columns if names_own_cost(column)]
    # Of an earlier price the cost that stands beside it is the one of today.
    if costs and any(column not in costs and column.role is not Role.PREVIOUS_PRICE for column in columns):
        return dict.fromkeys(costs, Kind.COST)
    own = [column for column in columns if _names_cost(column)]
    if not own:
        return {}
    again = [column for column in columns if column not in own and phrases("selling_prices").find(column.text)]
    return dict.fromkeys(again, Kind.LIST) | dict.fromkeys(own if again else (), Kind.OFFER)


def costs_beside_lists(priced: Iterable[Column]) -> list[Column]:
    """'Purchase price | List price' and no other: whether the cost is the vendor's or the buyer's, and so which of the
    two is to be paid, is asked."""
    columns = list(priced)
    costs = [column for column in columns if names_own_cost(column)]
    others = [column for column in columns if column not in costs]
    return columns if costs and others and all(column.role is Role.LIST_PRICE for column in others) else []
