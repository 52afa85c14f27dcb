"""Units in a column of their own: 'Grammage | 250 | g/m²', where the head stands over the figures alone."""

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from decimal import Decimal

from tracker.intake.columns.column import Column
from tracker.intake.columns.roles.headed_figures import mostly_priced
from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import PRICE_ROLES, head_text
from tracker.intake.tables.table import HeadedColumn
from tracker.intake.values.boards.caliper import caliper_unit
from tracker.intake.values.boards.weight import weight_units
from tracker.intake.values.heads.header import header
from tracker.intake.values.heads.roles import ORDER_SIZES, Role
from tracker.intake.values.orders.masses import mass_units
from tracker.intake.values.times.lead import lead_unit
from tracker.intake.words.lists import phrases

_LONGEST = 12
_ORDERS = frozenset({Role.MINIMUM, *ORDER_SIZES, Role.STOCK, Role.PACKING, Role.SHEETS_WEIGHT})


def with_units_beside(
    columns: Sequence[HeadedColumn], samples: Mapping[int, Sequence[Cell]]
) -> tuple[HeadedColumn, ...]:
    """The columns with each one that repeats one unit of measure made a head of the figures to its left: one without a
    head, or headed 'MOQ UoM'.

    A price's unit is left where it is: it is read row by row.
    """
    found: list[HeadedColumn] = []
    for column in columns:
        unit = _one_text(samples[column.index]) if not column.heads or _heads_units(column) else None
        left = found[-1] if found and found[-1].index == column.index - 1 and found[-1].heads else None
        if unit is not None and left is not None and _is_unit_of(left, unit.text.strip()):
            found[-1] = replace(left, heads=(*left.heads, unit))
        else:
            found.append(column)
    return tuple(found)


def _heads_units(column: HeadedColumn) -> bool:
    """'MOQ UoM' and 'Thk unit' say whose unit it is; 'UoM' by itself is what prices are per."""
    *whose, last = _RUN_TOGETHER.sub(" ", column.text).split() or [""]
    return bool(whose) and phrases("unit_heads").whole(last) is not None


_RUN_TOGETHER = re.compile(r"_+|(?<=[a-z])(?=U[oO]M$)")
"""Between the words of 'MIN_UOM' and 'MinUoM'."""


def _one_text(cells: Sequence[Cell]) -> Cell | None:
    """The cell, where all that are filled say the same: a sample has one cell for each text."""
    one = cells[0] if len(cells) == 1 else None
    return one if one is not None and isinstance(one.value, str) and len(one.text.strip()) <= _LONGEST else None


def _is_unit_of(measured: HeadedColumn, unit: str) -> bool:
    roles = {reading.role for cell in measured.heads for reading in header(head_text(cell)).roles}
    if Role.CALIPER in roles and caliper_unit(unit) is not None:
        return True
    if Role.WEIGHT in roles and weight_units(unit):
        return True
    if Role.LEAD_TIME in roles and lead_unit(unit) is not None:
        return True
    return bool(roles & _ORDERS) and bool(mass_units(unit))


def counts_of_units(columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """'je | ME' over '1000 | KG', and 'Price EUR/kg | per' over '118 | 100': figures under 'per' say how many units,
    where a column or a price's head says which."""
    perhaps = [column for column in columns if _asks_for_unit(column)]
    counts = {column.index for column in perhaps if _are_counts(samples[column.index])}
    others = [column for column in columns if column.index not in counts]
    if not any(column.role is Role.BASIS or (column.role in PRICE_ROLES and column.bases) for column in others):
        return columns
    return [replace(column, role=Role.PER_QUANTITY) if column.index in counts else column for column in columns]


def prices_by_strange_units(columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """'Price per batch' over 1,210: what it is per is not known, and asked; no count of units is such a figure."""
    priced = {
        column.index
        for column in columns
        if column.role in (Role.BASIS, Role.PER_QUANTITY) and mostly_priced(samples[column.index])
        and phrases("price_words").find(column.text) and phrases("per").find(column.text)
        and not _are_counts(samples[column.index])
    }  # fmt: skip
    return [replace(column, role=Role.PRICE) if column.index in priced else column for column in columns]


def units_of_quantities(columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """Of two columns of units the one right of a quantity is the quantity's: 'Min qty | Unit' beside 'Price | Per',
    'Scale from | UoM' beside 'Rate | per | UoM'; so is the only one where prices name their unit themselves, or stand
    apart from it: 'Min qty | Origin | Unit | Mill | Price'. Where it repeats one unit, that is a head of the
    quantity's."""
    units = [column for column in columns if column.role is Role.BASIS]
    behind = {column.index: quantity for column in units if (quantity := _quantity_before(column, columns, samples))}
    if not behind or (len(behind) == len(units) and not _priced_without(behind, columns)):
        return columns
    said = {quantity.index: _one_text(samples[index]) for index, quantity in behind.items()}
    return [
        replace(column, role=Role.PROPERTY) if column.index in behind else _in_unit(column, said.get(column.index))
        for column in columns
    ]


def _quantity_before(
    unit: Column, columns: Sequence[Column], samples: Mapping[int, Sequence[Cell]]
) -> Column | None:  # fmt: skip
    """The quantity left of a column of units, with nothing but columns of words between, none of them of units."""
    for column in reversed([column for column in columns if column.index < unit.index]):
        if column.role in _ORDERS or column.role is Role.TOTAL:
            return column
        if column.role is Role.BASIS or column.role in PRICE_ROLES or any(map(_is_figure, samples[column.index])):
            return None
    return None


def _is_figure(cell: Cell) -> bool:
    return isinstance(cell.value, Decimal) or any(map(str.isdigit, cell.text))


def _priced_without(units: Mapping[int, Column], columns: Sequence[Column]) -> bool:
    """Whether prices have a unit in their heads, or none of these columns stands beside one of theirs."""
    prices = [column for column in columns if column.role in PRICE_ROLES]
    if prices and all(column.bases for column in prices):
        return True
    return bool(prices) and not any(abs(column.index - unit) == 1 for column in prices for unit in units)


def _in_unit(quantity: Column, unit: Cell | None) -> Column:
    if unit is None or quantity.role not in _ORDERS or quantity.mass_units or not mass_units(unit.text):
        return quantity
    return replace(quantity, heads=(*quantity.heads, unit), said=(*quantity.said, header(unit.text)))


def _asks_for_unit(column: Column) -> bool:
    asks = any(head.strength(role) >= _PLAINLY for head in column.said for role in (Role.BASIS, Role.PER_QUANTITY))
    return column.role is Role.BASIS or asks or phrases("per").whole(column.text) is not None


_PLAINLY = 0.9


def _are_counts(cells: Sequence[Cell]) -> bool:
    """1, 100, 1000: round numbers, in a spreadsheet or as text."""
    figures = [cell.value if isinstance(cell.value, Decimal) else _digits(cell.text) for cell in cells]
    return bool(figures) and all(figure is not None and figure.normalize() in _COUNTS for figure in figures)


def _digits(text: str) -> Decimal | None:
    plain = text.strip().replace(" ", "")
    return Decimal(plain) if plain.isdecimal() else None


_COUNTS = frozenset(map(Decimal, (1, 10, 50, 100, 500, 1000, 2000, 3000, 10000)))
