"""Columns of codes for units that a text explains by the column's head: 'A | B' below 'Code', and 'Code A: figure is US
dollars per short ton'."""

from collections.abc import Sequence
from dataclasses import replace

from tracker.intake.tables.headers.keys import around
from tracker.intake.tables.table import HeadedColumn, SheetTables, Table, Words
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import PRICES, Role
from tracker.intake.values.prices.units_of_codes import units_of_codes
from tracker.intake.words.fold import fold

_UNIT = "Unit"
_ALREADY = frozenset({Role.BASIS, Role.CURRENCY, Role.PER_QUANTITY, *PRICES})


def with_keyed_units(found: SheetTables, elsewhere: Sequence[Words] = ()) -> SheetTables:
    """The tables with a head for units over such columns; what each code means is left to the legend, and one that it
    leaves out to be asked. `elsewhere`: what sheets of words alone say."""
    if found.view.passing:
        return found
    told = {(head, code) for words in (*around(found), *elsewhere) for head, code, _ in units_of_codes(words.text)}
    if not told:
        return found
    return replace(found, tables=tuple(_of_units(table, told) for table in found.tables))


def _of_units(table: Table, told: set[tuple[str, str]]) -> Table:
    columns = tuple(_headed(column) if _explained(table, column, told) else column for column in table.columns)
    return replace(table, columns=columns) if columns != table.columns else table


def _explained(table: Table, column: HeadedColumn, told: set[tuple[str, str]]) -> bool:
    """A column of codes alone, one of which at least is explained under its own head."""
    head = column.heads[-1].text if column.heads else ""
    roles = header_roles(head)
    if not head or (roles and roles[0].role in _ALREADY):
        return False
    rows = (table.view.rows[row.index] for row in table.rows)
    codes = {fold(cells[column.index].text).strip() for cells in rows if column.index in cells}
    short = all(len(code) <= _LONGEST_CODE and " " not in code for code in codes)
    return short and any((fold(head).strip(), code) in told for code in codes)


_LONGEST_CODE = 4


def _headed(column: HeadedColumn) -> HeadedColumn:
    *above, lowest = column.heads
    return replace(column, heads=(*above, lowest._replace(value=_UNIT, text=_UNIT)))
