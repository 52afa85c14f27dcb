"""Columns of codes for units that a key explains: 'A | B' below 'Code', and 'Code A: figure is US dollars per short
ton' or 'A = US dollars per short ton'."""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from tracker.intake.tables.headers.keys import around, entries, key_of
from tracker.intake.tables.table import HeadedColumn, SheetTables, Table, Words
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import PRICES, Role
from tracker.intake.values.prices.units_of_codes import unit_led_to, units_of_codes
from tracker.intake.words.fold import fold

UNIT = "Unit (key)"
"""The head of a column that holds codes and nothing else: what a key leaves out there is no unit by itself."""
_ALREADY = frozenset({Role.BASIS, Role.CURRENCY, *PRICES})
_FEWEST = 2


def with_keyed_units(found: SheetTables, elsewhere: Sequence[Words] = ()) -> SheetTables:
    """The tables with a head for units over such columns; what each code means is left to the legend, and one that it
    leaves out to be asked. `elsewhere`: what sheets of words alone say."""
    if found.view.passing:
        return found
    texts = [*around(found), *elsewhere]
    told = {(head, code) for words in texts for head, code, _ in units_of_codes(words.text)}
    labelled = {code for _, code in told}
    keyed = ((code, unit_led_to(said)) for code, said in entries(texts) if code not in labelled)
    bare = key_of((code, unit) for code, unit in keyed if unit is not None)
    if not told and not bare:
        return found
    return replace(found, tables=tuple(_of_units(table, told, bare) for table in found.tables))


def _of_units(table: Table, told: set[tuple[str, str]], bare: Mapping[str, str]) -> Table:
    columns = tuple(_headed(column) if _explained(table, column, told, bare) else column for column in table.columns)
    return replace(table, columns=columns) if columns != table.columns else table


def _explained(table: Table, column: HeadedColumn, told: set[tuple[str, str]], bare: Mapping[str, str]) -> bool:
    """A column of codes alone, one of which at least is explained under its own head or, where nobody knows that head,
    by the key alone; two where the head may name something else."""
    head = column.heads[-1].text if column.heads else ""
    roles = header_roles(head)
    if not head or (roles and all(reading.role in _ALREADY for reading in roles[:_FEWEST])):
        # 'Unit code' may head units as much as codes.
        return False
    rows = (table.view.rows[row.index] for row in table.rows)
    codes = {fold(cells[column.index].text).strip() for cells in rows if column.index in cells}
    if any(len(code) > _LONGEST_CODE or " " in code for code in codes):
        return False
    counts = bool(roles) and roles[0].role is Role.PER_QUANTITY
    under_head = not counts and any((fold(head).strip(), code) in told for code in codes)
    return under_head or len(codes & bare.keys()) >= (_FEWEST if roles else 1)


_LONGEST_CODE = 4


def _headed(column: HeadedColumn) -> HeadedColumn:
    *above, lowest = column.heads
    return replace(column, heads=(*above, lowest._replace(value=UNIT, text=UNIT)), named=column.called)
