"""Units that change from row to row in a column of their own: 'Thick | U/M' over '18 | pt' and '420 | µm', 'Min qty |
Min unit' over '20000 | LB' and '5000 | KG'.

The figure and the unit to its right become one cell, '18 pt', so that whoever reads the row reads them together.
"""

from collections.abc import Callable, Sequence
from dataclasses import replace

from tracker.intake.columns.column import Column, Columns
from tracker.intake.grid import Cell
from tracker.intake.tables.table import Table
from tracker.intake.values.boards.caliper import caliper_unit
from tracker.intake.values.boards.weight import weight_units
from tracker.intake.values.heads.roles import PRICES, Role
from tracker.intake.values.orders.masses import mass_units
from tracker.intake.values.prices.basis import basis_text

_LONGEST = 16


def with_row_units(table: Table, columns: Columns) -> Table:
    """The table with each such unit written behind its figure; the table itself where it has none.

    A list too long to be kept in memory is left as it is: its units are asked about.
    """
    pairs = {} if table.view.passing else _pairs(table, columns)
    if not pairs:
        return table
    body = {row.index for row in table.rows}
    used = frozenset(pairs.values()) - _of_prices_too(columns)
    rows = {
        number: _joined(cells, pairs, used) if number in body else dict(cells)
        for number, cells in table.view.rows.items()
    }
    headed = tuple(column for column in table.columns if column.index not in used)
    return replace(table, view=replace(table.view, rows=rows), columns=headed)


def _pairs(table: Table, columns: Columns) -> dict[int, int]:
    """Columns of figures without a unit of their own, each with the column of units right beside it."""
    priced = {price.index for price in columns.prices}
    named = {column.index: column for role in columns.by_role for column in columns.of(role)}
    headed = {column.index for column in table.columns} - priced
    pairs: dict[int, int] = {}
    for role, is_unit in _UNITS.items():
        for column in columns.of(role):
            beside = column.index + 1
            if beside in headed and not _has_unit(column) and _may_be_units(named.get(beside), role):
                cells = [cell for _, cell in table.view.down(beside, (row.index for row in table.rows))]
                if _all_units(cells, is_unit):
                    pairs[column.index] = beside
    return pairs


def _of_prices_too(columns: Columns) -> frozenset[int]:
    """'Unit (min and price)' is what the price is per as well."""
    units = columns.of(Role.BASIS)
    return frozenset(
        column.index for column in units if PRICES & {reading.role for head in column.said for reading in head.roles}
    )


def _has_unit(column: Column) -> bool:
    measured = column.caliper_unit is not None or bool(column.weight_units) or column.ream is not None
    return measured or bool(column.mass_units)


def _may_be_units(column: Column | None, of: Role) -> bool:
    """Beside the figures of `of`; a unit beside order sizes may be the price's, where its head does not say whose:
    'Min unit' does."""
    if of in _ORDERS:
        named = column is not None and of in {reading.role for head in column.said for reading in head.roles}
        return column is not None and (column.role in (Role.PROPERTY, of) or (column.role is Role.BASIS and named))
    return column is None or column.role in (Role.BASIS, Role.PRODUCT, Role.CALIPER, Role.WEIGHT)


def _all_units(cells: Sequence[Cell], is_unit: Callable[[str], bool]) -> bool:
    texts = {cell.text.strip() for cell in cells if isinstance(cell.value, str)}
    few = all(len(text) <= _LONGEST and not any(map(str.isdecimal, text[:1])) for text in texts)
    return bool(texts) and len(texts) <= len(cells) and few and all(map(is_unit, texts))


def _joined(cells: dict[int, Cell], pairs: dict[int, int], used: frozenset[int]) -> dict[int, Cell]:
    joined = {index: cell for index, cell in cells.items() if index not in used}
    for figure, unit in pairs.items():
        if figure in cells and unit in cells:
            text = f"{cells[figure].text.strip()} {cells[unit].text.strip()}"
            joined[figure] = cells[figure]._replace(value=text, text=text)
    return joined


def _is_caliper_unit(text: str) -> bool:
    return caliper_unit(text) is not None and not weight_units(text)


def _is_weight_unit(text: str) -> bool:
    """'lb' alone may be the unit of the price as well, and 'MSF' is."""
    return len(weight_units(text)) == 1 and caliper_unit(text) is None and basis_text(text) is None


def _is_mass_unit(text: str) -> bool:
    return bool(mass_units(text))


_ORDERS = (Role.MINIMUM, Role.FROM_QUANTITY)
_UNITS: dict[Role, Callable[[str], bool]] = {
    Role.CALIPER: _is_caliper_unit,
    Role.WEIGHT: _is_weight_unit,
    **dict.fromkeys(_ORDERS, _is_mass_unit),
}
