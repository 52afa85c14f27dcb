"""The units of all columns in one row below the last figures: 'Units: | pt | lb/MSF | US$/short ton | weeks'."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import PRICE_ROLES, Head, head_of, head_of_words, looks_priced
from tracker.intake.tables.table import HeadedColumn
from tracker.intake.tables.view import View
from tracker.intake.values.heads.header import Header, header
from tracker.intake.values.heads.roles import ON_TOP, ORDER_SIZES, Role
from tracker.intake.words.lists import phrases

_FEWEST = 2
_LOOKED_AT = 8
"""Rows from the last: notes may follow the units."""


def with_units_at_foot(
    view: View, rows: Sequence[int], columns: Sequence[HeadedColumn]
) -> tuple[list[HeadedColumn], list[int]]:
    """The columns with such units below their heads, and the rows without that one.

    Nothing is changed where one of the units is none of what its column's head names, or where a head says another.
    """
    foot = None if view.passing else next((row for row in rows[-_LOOKED_AT:] if _is_row_of_units(view, row)), None)
    if foot is None or any(_has_price(view.rows[row], columns) for row in rows if row > foot):
        return list(columns), list(rows)
    cells = {index: cell for index, cell in view.rows[foot].items() if _is_unit(cell)}
    heads = {column.index: column for column in columns if column.heads}
    if not cells.keys() <= heads.keys() or not all(_fits(heads[index], cell) for index, cell in cells.items()):
        return list(columns), list(rows)
    told = [replace(one, heads=(*one.heads, cells[one.index])) if one.index in cells else one for one in columns]
    return told, [row for row in rows if row != foot]


def _is_row_of_units(view: View, row: int) -> bool:
    """Units alone, behind a word for them or nothing: some of what boards measure or how soon they come, and those of
    prices."""
    cells = [cell for _, cell in sorted(view.rows[row].items())]
    units = [cell for cell in cells if _is_unit(cell)]
    others = [cell for cell in cells if cell not in units and any(map(str.isalnum, cell.text))]
    if len(units) < _FEWEST or len(others) > 1 or (others and others[0] is not cells[0]):
        return False
    named = not others or phrases("unit_rows").whole(others[0].text.strip(" :.")) is not None
    priced = [cell for cell in units if header(cell.text).currency or header(cell.text).basis]
    return named and bool(priced) and len(priced) < len(units)


def _is_unit(cell: Cell) -> bool:
    head = head_of(cell) if isinstance(cell.value, str) else None
    return head is not None and head.unit and not head.across


def _has_price(cells: Mapping[int, Cell], columns: Sequence[HeadedColumn]) -> bool:
    priced = (column.index for column in columns if (head := _head(column)) is not None and head.price)
    return any(index in cells and looks_priced(cells[index]) for index in priced)


def _head(column: HeadedColumn) -> Head | None:
    return head_of_words(column.text) if column.heads else None


def _fits(column: HeadedColumn, unit: Cell) -> bool:
    """Whether the unit is one of what the column's head names, and the head says none of its own or the same."""
    head, said, own = _head(column), header(unit.text), header(column.text)
    if head is None:
        return False
    if said.currency is not None or (said.basis is not None and head.role not in _IN_MASS):
        named = bool(head.across) or head.role is None or head.role in _IN_MONEY
        money, per = (_money(own), _money(said)), (_per(own), _per(said))
        return named and all(known is None or known == told for known, told in (money, per))
    told = [says for roles, says in _MEASURED if head.role in (None, *roles) and says(said)]
    return bool(told) and not head.across and all(not says(own) or says(own) == says(said) for says in told)


def _money(said: Header) -> str | None:
    return said.currency.words if said.currency is not None else None


def _per(said: Header) -> object:
    return (said.basis.bases, said.basis.foreign) if said.basis is not None else None


_IN_MONEY = frozenset({*PRICE_ROLES, *ON_TOP})
_IN_MASS = frozenset({Role.MINIMUM, *ORDER_SIZES})
_MEASURED: tuple[tuple[frozenset[Role], Callable[[Header], object]], ...] = (
    (frozenset({Role.CALIPER}), lambda said: said.caliper_unit),
    (frozenset({Role.WEIGHT}), lambda said: said.weight_units),
    (frozenset({Role.LEAD_TIME}), lambda said: said.lead_unit),
    (_IN_MASS, lambda said: said.mass_units),
    (frozenset({Role.SHEET_SIZE, Role.WIDTH, Role.LENGTH, Role.ROLL_WIDTH}), lambda said: said.length_unit),
)
