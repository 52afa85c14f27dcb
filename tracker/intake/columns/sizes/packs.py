"""How many sheets a package holds, below a head that could be one of prices: 'Per carton' over 500 and 250, 'Sheets'
beside 'Pallet', 'Sheets/packet'; and how many rolls or pallets a truck holds."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from decimal import Decimal

from tracker.intake.columns.column import Column
from tracker.intake.columns.sizes.forms import form_of
from tracker.intake.grid import Cell
from tracker.intake.tables.figures import is_figure
from tracker.intake.tables.headers.heads import PRICE_ROLES
from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.heads.held import pieces_held
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.basis import basis_text
from tracker.intake.words.lists import phrases

_PACKAGES = ("carton", "pallet", "ream")
_STEP = 25
"""Sheets are packed by the quarter of a hundred; common practice, no source."""


def with_packs(columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """Columns of round counts under nothing but 'per' and a package, beside prices per something else, and under the
    sheets of which so many are on a pallet."""
    columns = _with_sheets_of_pallets(columns, samples)
    packs = [
        column
        for column in columns
        if (_names_a_package(column) and _are_counts(samples[column.index])) or _holds(column, samples[column.index])
    ]
    others = [column for column in columns if _may_be_priced(column) and column not in packs]
    if not packs or not any(any(map(is_figure, samples[column.index])) for column in others):
        return columns
    return [replace(column, role=Role.PACKING) if column in packs else column for column in columns]


def _with_sheets_of_pallets(columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """'Bogen | Palette' over 1800 and 690: no rolls are priced beside these sheets."""
    forms = {column.index: form for column in columns if (form := form_of(column))}
    pallets = {column.index for column in columns if _names_pallets(column)}
    sheets = {
        column.index
        for column in columns
        if column.index in forms and not column.currencies and _are_counts(samples[column.index])
    }
    if set(forms.values()) != {"sheet"} or not pallets or not sheets:
        return columns
    return [replace(column, role=Role.PACKING) if column.index in pallets | sheets else column for column in columns]


def _holds(column: Column, cells: Sequence[Cell]) -> bool:
    """'Rolls per truck' over 22 and 19, 'Sheets/packet' over 100; over 1,180 'Rolls/TL' may head prices of rolls."""
    held = pieces_held(column.text) if column.said and not column.currencies else None
    if held is None:
        return False
    if held[0] in ("sheet", "sheets"):
        return _are_counts(cells)
    counts = [_count(cell) for cell in cells]
    return bool(counts) and all(one is not None and 0 < one <= _MOST_PIECES and one == int(one) for one in counts)


_MOST_PIECES = 99
"""Rolls or pallets of a truck or a container; common practice, no source."""


def _names_pallets(column: Column) -> bool:
    """'Palette' and 'Skid', and not what one costs."""
    bracket = column.said[-1].bracket if column.said else None
    named = column.role is Role.PACKING or (bracket is not None and bracket.not_weight == "pallet")
    return named and not column.currencies


def _may_be_priced(column: Column) -> bool:
    """'Up to 4,999 shts' is an order size over prices."""
    return column.role in PRICE_ROLES or any(head.bracket is not None for head in column.said)


def _names_a_package(column: Column) -> bool:
    """'Per carton', 'je Paket'; 'Price per carton' and '$/carton' speak of money."""
    if column.role not in PRICE_ROLES or column.currencies or phrases("price_words").find(column.text):
        return False
    unit = basis_text(column.text)
    return unit is not None and unit.foreign in _PACKAGES


def _are_counts(cells: Sequence[Cell]) -> bool:
    figures = [_count(cell) for cell in cells]
    return bool(figures) and all(one is not None and one > 0 and one % _STEP == 0 for one in figures)


def _count(cell: Cell) -> Decimal | None:
    """A whole number that is written as one; '500.00' is money."""
    if isinstance(cell.value, Decimal):
        return None if "." in cell.number_format else cell.value
    readings = number_readings(cell.text)
    return readings[0].value if readings and cell.text.strip().isdecimal() else None
