"""What a package costs, beside the price that it is reckoned from: 'Sheets/pallet | £ per pallet | £ per 1,000'."""

from collections.abc import Mapping
from dataclasses import replace
from decimal import Decimal
from itertools import product

from tracker.intake.columns.column import Column
from tracker.intake.tables.figures import sure_figure
from tracker.intake.tables.headers.heads import PRICE_ROLES
from tracker.intake.tables.table import Table
from tracker.intake.values.heads.roles import Role

_PACKAGES = frozenset({"pallet", "carton", "ream", "roll", "truckload"})
_UNITS = (Decimal(1), Decimal(100), Decimal(1000), Decimal(2000))
_ROUNDED = Decimal("0.001")
_FEWEST_ROWS = 2
_LOOKED_AT = 500

_Figures = Mapping[int, Decimal]


def without_package_prices(columns: list[Column], table: Table) -> list[Column]:
    """Makes the price of a package an amount, where it is in every row what its contents come to by another price: it
    says nothing that the other does not. One row that does not fit, or has no other price, leaves all as it is."""
    packed = [column for column in columns if column.role in PRICE_ROLES and _per_package(column)]
    counts = [column for column in columns if column.role is Role.PACKING]
    prices = [column for column in columns if column.role in PRICE_ROLES and _per_unit(column)]
    if not packed or not counts or not prices:
        return columns
    figures = {column.index: _figures(table, column) for column in (*packed, *counts, *prices)}
    amounts = {
        package.index
        for package, count, price in product(packed, counts, prices)
        if _come_to(figures[price.index], figures[count.index], figures[package.index])
    }
    return [replace(column, role=Role.TOTAL) if column.index in amounts else column for column in columns]


def _per_package(column: Column) -> bool:
    return bool(column.bases) and all(basis.foreign in _PACKAGES for basis in column.bases)


def _per_unit(column: Column) -> bool:
    return any(basis.bases for basis in column.bases)


def _come_to(prices: _Figures, counts: _Figures, amounts: _Figures) -> bool:
    told = len(amounts) >= _FEWEST_ROWS and all(row in prices and row in counts for row in amounts)
    return told and any(
        all(abs(prices[row] * counts[row] / unit - amount) <= _ROUNDED * amount for row, amount in amounts.items())
        for unit in _UNITS
    )


def _figures(table: Table, column: Column) -> _Figures:
    rows = ((row.index, table.view.rows[row.index].get(column.index)) for row in table.rows[:_LOOKED_AT])
    found = ((row, sure_figure(cell)) for row, cell in rows if cell is not None)
    return {row: figure for row, figure in found if figure is not None}
