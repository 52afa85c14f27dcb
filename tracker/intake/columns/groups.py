"""Columns in groups under one heading each: 'Dicke | €/t' under 'GC1', and the same again under 'GD2'."""

from dataclasses import replace

from tracker.intake.columns.column import Column, Columns, PriceColumn
from tracker.intake.values.roles import Role


def under_one_heading(columns: Columns, price: PriceColumn) -> Columns:
    """The table's columns without those that stand under the heading of another group than the price's own.

    Only where columns of one kind stand under several headings: what stands under none of them is shared.
    """
    own = frozenset((*price.column.heads[:-1], *price.column.lines))
    kept = {role: _of_group(found, own) for role, found in columns.by_role.items()} if own else columns.by_role
    if kept == columns.by_role:
        return columns
    return replace(columns, by_role=kept, _found={})


def _of_group(found: tuple[Column, ...], own: frozenset[object]) -> tuple[Column, ...]:
    if len(found) < 2 or found[0].role is Role.PRICE:
        return found
    inside = [column for column in found if own & {*column.heads[:-1], *column.lines}]
    shared = (column for column in found if column in inside or (len(column.heads) < 2 and not column.lines))
    return tuple(shared) if inside else found
