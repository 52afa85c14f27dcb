"""Columns in groups: 'Dicke | €/t' under 'GC1' and the same again under 'GD2', or 'Firm A | weeks | Firm B | weeks'."""

from collections.abc import Sequence
from dataclasses import replace

from tracker.intake.columns.column import Column, Columns, PriceColumn
from tracker.intake.values.roles import ON_TOP, Role


def under_one_heading(columns: Columns, price: PriceColumn) -> Columns:
    """The table's columns without those of other prices: under the heading of another group than the price's own, or
    beside another price where every price has such a column of its own.

    What stands under none of several headings is shared.
    """
    kept = {role: _beside(_of_group(found, columns, price), columns, price) for role, found in columns.by_role.items()}
    if kept == columns.by_role:
        return columns
    return replace(columns, by_role=kept, _found={})


def _of_group(found: tuple[Column, ...], columns: Columns, price: PriceColumn) -> tuple[Column, ...]:
    own = _headings(price.column)
    if not own or not found or found[0].role is Role.PRICE:
        return found
    inside = [column for column in found if own & _headings(column)]
    if inside:
        shared = (column for column in found if column in inside or (len(column.heads) < 2 and not column.lines))
        return tuple(shared) if len(found) > 1 else found
    # 'Kestrel Mills' over '€/t' alone, where others say their freight: theirs is not its.
    others = frozenset().union(*(_headings(other.column) for other in columns.prices)) - own
    if found[0].role not in _TERMS:
        return found
    # A heading of its own, 'Time' beside 'Prices', makes it a column of all, though another's ran on over it.
    return tuple(column for column in found if not (others & _headings(column) and _headings(column) <= others | own))


def _headings(column: Column) -> frozenset[object]:
    return frozenset((*column.heads[:-1], *column.lines))


_TERMS = frozenset({
    *ON_TOP, Role.LEAD_TIME, Role.DELIVERY_TERMS, Role.MINIMUM, Role.VALIDITY, Role.REMARKS, Role.PAYMENT,
})  # fmt: skip
"""What is said of a price, and not of its board."""


def _beside(found: tuple[Column, ...], columns: Columns, price: PriceColumn) -> tuple[Column, ...]:
    """'Fenwold AG | Lieferzeit | Orrick KG | Lieferzeit': columns under one name, each right behind a price, are those
    prices' own; so are they each right before a price, where the first stands before all prices."""
    alike = [column for column in found if column.role in _TERMS and column.heads]
    if len(alike) < 2 or len({column.heads[0].text.strip().casefold() for column in alike}) > 1:
        return found
    places = sorted(other.index for other in columns.prices)
    behind = alike[0].index > places[0]
    owners = [_owner(column.index, places, behind=behind) for column in alike]
    if None in owners or len(set(owners)) < len(owners):
        return found
    others = [column for column, owner in zip(alike, owners, strict=True) if owner != price.index]
    return tuple(column for column in found if column not in others)


def _owner(place: int, prices: Sequence[int], *, behind: bool) -> int | None:
    if behind:
        return max((price for price in prices if price < place), default=None)
    return min((price for price in prices if price > place), default=None)
