"""Columns of terms for one way in which board is sold: 'Min rolls' beside 'Min sheets'."""

from tracker.intake.columns.column import Column, Columns, PriceColumn
from tracker.intake.columns.sizes.forms import form_alone, form_priced
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.ways_named import OTHER_WAY, ways_named

ByRole = dict[Role, tuple[Column, ...]]
_TERMS = (Role.MINIMUM, Role.LEAD_TIME, Role.VALIDITY, Role.DELIVERY_TERMS)


def ways_of_price(price: PriceColumn) -> frozenset[str]:
    """The ways that a price's heads name, and whether it includes freight."""
    texts = [*(head.text for head in price.column.said), *(cell.text for cell in price.column.lines)]
    ways = set().union(*map(ways_named, texts), filter(None, (*map(form_alone, texts), form_priced(price.column))))
    if price.delivery is not None and price.delivery.delivered is not None:
        ways = ways - {"fob", "delivered"} | {"delivered" if price.delivery.delivered else "fob"}
    return frozenset(way for way in ways if OTHER_WAY[way] not in ways)


def of_own_way(columns: Columns, price: PriceColumn) -> Columns:
    """The columns without those of terms for the other way than this price's, where they are told apart.

    Of a price whose way is not known, none of two such columns holds.
    """
    named = {column.index: ways_named(column.text) for column in columns.of(*_TERMS)}
    named |= _by_delivery(columns)
    told = frozenset().union(*named.values())
    if not told:
        return columns
    own = ways_of_price(price)
    kept = {index for index, ways in named.items() if all(_holds(way, own, told) for way in ways)}
    if len(kept) == len(named):
        return columns
    by_role = {
        role: tuple(column for column in found if role not in _TERMS or column.index in kept)
        for role, found in columns.by_role.items()
    }
    return Columns(columns.prices, by_role, columns.doubt)


def without_sizes_of_sheets(kept: ByRole, columns: Columns, price: PriceColumn) -> ByRole:
    """The columns of a price for rolls without the size of the sheets that others beside it are for."""
    sheets = any("sheet" in ways_of_price(other) for other in columns.prices)
    if Role.SHEET_SIZE not in kept or not sheets or "roll" not in ways_of_price(price):
        return kept
    return {role: found for role, found in kept.items() if role is not Role.SHEET_SIZE}


def _by_delivery(columns: Columns) -> dict[int, frozenset[str]]:
    """'Min FOB' beside 'Min delivered'; 'Lead time ex works' by itself says from where its weeks count."""
    said = {column.index: find_delivery(column.text) for column in columns.of(*_TERMS[:-1])}
    told = {index: one.delivered for index, one in said.items() if one is not None and one.delivered is not None}
    both = set(told.values()) == {True, False}
    return {index: frozenset({"delivered" if yes else "fob"}) for index, yes in told.items()} if both else {}


def _holds(way: str, own: frozenset[str], told: frozenset[str]) -> bool:
    if way in own or OTHER_WAY[way] in own:
        return way in own
    return OTHER_WAY[way] not in told
