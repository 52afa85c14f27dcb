"""Columns of codes for units that a key explains: 'A | B' below 'Code', and 'Code A: figure is US dollars per short
ton' or 'A = US dollars per short ton'."""

from collections.abc import Sequence
from dataclasses import replace

from tracker.intake.tables.headers.keys import Keys, Told, around, for_column, key_of
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
    named = {(head, code) for words in texts for head, code, _ in units_of_codes(words.text)}
    keys = Keys(found, elsewhere)
    if not named and not keys:
        return found
    return replace(found, tables=tuple(_of_units(table, named, keys.of_table(table)) for table in found.tables))


def _of_units(table: Table, named: set[tuple[str, str]], told: Sequence[Told]) -> Table:
    labelled = {code for _, code in named}
    units = [one for one in told if one.code not in labelled and unit_led_to(one.said) is not None]
    columns = tuple(_headed(one) if _explained(table, one, named, units) else one for one in table.columns)
    return replace(table, columns=columns) if columns != table.columns else table


def _explained(table: Table, column: HeadedColumn, named: set[tuple[str, str]], units: Sequence[Told]) -> bool:
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
    under_head = not counts and any((fold(head).strip(), code) in named for code in codes)
    bare = key_of(one._replace(said=unit_led_to(one.said) or "") for one in for_column(units, column))
    return under_head or len(codes & bare.keys()) >= (_FEWEST if roles else 1)


_LONGEST_CODE = 4


def _headed(column: HeadedColumn) -> HeadedColumn:
    *above, lowest = column.heads
    return replace(column, heads=(*above, lowest._replace(value=UNIT, text=UNIT)), named=column.called)
