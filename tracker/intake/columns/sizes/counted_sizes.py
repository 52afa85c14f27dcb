"""Columns of order sizes that are counted: 'Sheets ordered' over '500–2,499', 'Rolls' over '1-4'."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from decimal import Decimal

from tracker.intake.columns.column import Column
from tracker.intake.columns.sizes.breaks import cheaper_by_the_figure
from tracker.intake.grid import Cell
from tracker.intake.tables.table import Table
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.orders.brackets import is_bare_order_size
from tracker.intake.values.orders.counted_orders import counted_in, counted_size

_TAKEN_FOR = frozenset({None, Role.PACKING, Role.ITEM, Role.PRODUCT, Role.STOCK})
"""What 'Antal ark', 'Nº de hojas' and 'Nombre de feuilles' are by their words alone."""


def counted_sizes(columns: list[Column], samples: Mapping[int, Sequence[Cell]], table: Table) -> list[Column]:
    """Makes a column of counts one of order sizes, where its cells are spans of them, or each board comes several
    times, the cheaper the more sheets of it there are."""
    counted = [column for column in columns if column.role in _TAKEN_FOR and counted_in(column.text)]
    if len(counted) != 1:
        return columns
    (column,) = counted
    cells = samples[column.index]
    spans = any(is_bare_order_size(cell.text) for cell in cells) and all(_is_size(cell, column) for cell in cells)
    if not spans and not cheaper_by_the_figure(column, columns, table):
        return columns
    return [replace(one, role=Role.BRACKET, sure=True) if one is column else one for one in columns]


def _is_size(cell: Cell, column: Column) -> bool:
    return isinstance(cell.value, Decimal) or counted_size(cell.text, counted_in(column.text)) is not None
