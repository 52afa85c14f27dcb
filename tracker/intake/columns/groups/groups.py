"""Columns in groups: 'Dicke | €/t' under 'GC1' and the same again under 'GD2', or 'Firm A | weeks | Firm B | weeks'."""

from collections.abc import Sequence
from dataclasses import replace

from tracker.intake.columns.column import Column, Columns, PriceColumn
from tracker.intake.columns.groups.of_ways import without_sizes_of_sheets
from tracker.intake.columns.groups.units_of_prices import without_units_of_others
from tracker.intake.values.heads.roles import ON_TOP, Role


def under_one_heading(columns: Columns, price: PriceColumn) -> Columns:
    """The table's columns without those of other prices: under the heading of another group than the price's own, or
    beside another price where every price has such a column of its own.

    What stands under none of several headings is shared.
    """
    kept = {role: _beside(_of_group(found, columns, price), columns, price) for role, found in columns.by_role.items()}
    kept = without_sizes_of_sheets(without_units_of_others(kept, columns, price), columns, price)
    if kept == columns.by_role:
        return columns
    return replace(columns, by_role=kept, _found={})


def _of_group(found: tuple[Column, ...], columns: Columns, price: PriceColumn) -> tuple[Column, ...]:
    own = _headings(price.column)
    if not found or found[0].role is Role.PRICE:
        return found
    inside = [column for column in found if own & _headings(column)]
    if inside:
        shared = (column for column in found if column in inside or (len(column.heads) < 2 and not column.lines))
        return tuple(shared) if len(found) > 1 else found
    # 'Kestrel Mills' over '€/t' alone, where others say their freight: theirs is not its.
    others = frozenset().union(*(_headings(other.column) for other in columns.prices)) - own
    if found[0].role not in _TERMS:
        return (
            found if price.grade is None else tuple(one for one in found if not _of_another_board(one, columns, price))
        )
    # A heading of its own, 'Time' beside 'Prices', makes it a column of all, though another's ran on over it.
    return tuple(column for column in found if not (others & _headings(column) and _headings(column) <= others | own))


def _of_another_board(column: Column, columns: Columns, price: PriceColumn) -> bool:
    """'Basis wt | $/ton' under 'SBS', and '$/ton' alone under 'CCNB': what the one weighs is nothing of the other."""
    own = _headings(price.column)
    others = [other for other in columns.prices if other.grade not in (None, price.grade)]
    return not own & _headings(column) and any(_headings(other.column) & _headings(column) for other in others)


def _headings(column: Column) -> frozenset[object]:
    return frozenset((*column.heads[:-1], *column.lines))


_TERMS = frozenset({
    *ON_TOP, Role.LEAD_TIME, Role.DELIVERY_TERMS, Role.MINIMUM, Role.VALIDITY, Role.REMARKS, Role.PAYMENT,
    Role.SHEET_SIZE,
})  # fmt: skip
"""What is said of a price, and not of its board: also the size of sheets, which board in rolls has none of."""


def _beside(found: tuple[Column, ...], columns: Columns, price: PriceColumn) -> tuple[Column, ...]:
    """'Fenwold AG | Lieferzeit | Orrick KG | Lieferzeit': columns under one name are each of the prices right before
    it; where the first stands before all prices, of those right behind it.

    A single one between the prices of two vendors is of those before it. What stands under the price's own heading is
    told by that.
    """
    alike = [column for column in found if column.role in _TERMS and column.heads]
    if not alike or len({column.heads[0].text.strip().casefold() for column in alike}) > 1:
        return found
    if any(_own_headings(price, columns) & _headings(column) for column in alike):
        return found
    priced, places = [other.index for other in columns.prices], [column.index for column in alike]
    behind = places[0] > min(priced)
    if len(alike) == 1 and not (behind and places[0] < max(priced) and _vendors(columns) > 1):
        return found
    if {_nearest(one, places, behind=behind) for one in priced} - {None} != set(places):
        return found
    own = _nearest(price.index, places, behind=behind)
    return tuple(column for column in found if column not in alike or column.index == own)


def _own_headings(price: PriceColumn, columns: Columns) -> frozenset[object]:
    """What stands over a price, but for what stands over all of them."""
    shared = frozenset.intersection(*(_headings(other.column) for other in columns.prices))
    return _headings(price.column) - shared


def _nearest(price: int, places: Sequence[int], *, behind: bool) -> int | None:
    if behind:
        return min((place for place in places if place > price), default=None)
    return max((place for place in places if place < price), default=None)


def _vendors(columns: Columns) -> int:
    return len({price.vendor for price in columns.prices if price.vendor is not None})
