"""Vendors whose names stand in one row over the prices of each: where one of them is a firm's by a word of the trade,
the others are names too."""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from tracker.intake.columns.column import Column, Kind, PriceColumn, vendor_in_head
from tracker.intake.values.company import may_be_a_name
from tracker.intake.values.header import Header
from tracker.intake.values.roles import Role


def with_vendors_beside(prices: Sequence[PriceColumn]) -> list[PriceColumn]:
    """'Dunmarrow Mill | Eastquill Board | Pellgate Paperboard': each of the prices under a name is that vendor's."""
    rows = {
        cell.row
        for price in prices
        for cell, head in zip(price.column.heads, price.column.said, strict=True)
        if price.vendor and vendor_in_head(head) == price.vendor
    }
    return [price if price.vendor else _named(price, rows) for price in prices] if rows else list(prices)


def without_chosen_vendors(
    by_role: Mapping[Role, tuple[Column, ...]], prices: Sequence[PriceColumn]
) -> dict[Role, tuple[Column, ...]]:
    """Behind the prices of several vendors 'Low bid: Pellgate' says whom the buyer would take, and not who quotes."""
    vendors = {price.vendor for price in prices if price.kind is Kind.OFFER}
    several = None not in vendors and len(vendors) > 1
    return {role: () if several and role is Role.VENDOR else columns for role, columns in by_role.items()}


def _named(price: PriceColumn, rows: set[int]) -> PriceColumn:
    names = [
        cell.text.strip()
        for cell, head in zip(price.column.heads, price.column.said, strict=True)
        if cell.row in rows and price.kind is Kind.OFFER and may_be_a_name(cell.text) and not _named_otherwise(head)
    ]
    return replace(price, vendor=names[0]) if len(names) == 1 else price


def _named_otherwise(head: Header) -> bool:
    """'Low bid' and 'Our price' are no names."""
    role = head.role
    return role is not None and head.strength(role) >= _PLAINLY and role not in (Role.PRODUCT, Role.VENDOR)


_PLAINLY = 0.9
