"""Order sizes that rows name by a letter and a key explains: 'S | T' under 'Class', and 'S = less than 12,000 lb'."""

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.keys import around, entries, sizes_in
from tracker.intake.tables.table import HeadedColumn, SheetTables, Table, Words
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import ORDER_SIZES, PRICES, Role
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases

_FEWEST = 2


def with_keyed_sizes(found: SheetTables, elsewhere: Sequence[Words] = ()) -> SheetTables:
    """The tables with the order sizes in place of the letters, where a column holds nothing but letters of the key, two
    of them at least, and its head may name order sizes: the A and B of 'Finish' are others than those of 'Price A |
    Price B', which the key explains. `elsewhere`: what sheets of words alone say."""
    if found.view.passing:
        return found
    key = sizes_in([*entries(around(found)), *entries(elsewhere)])
    if len(key) < _FEWEST:
        return found
    return replace(found, tables=tuple(_in_words(table, key) for table in found.tables))


def _in_words(table: Table, key: Mapping[str, str]) -> Table:
    if any(_names_letters(column, key) for column in table.columns):
        return table
    may_be_sizes = (column for column in table.columns if not _names_something_else(column))
    told = {column.index: cells for column in may_be_sizes if (cells := _lettered(table, column, key))}
    if not told:
        return table
    rows = dict(table.view.rows)
    for index, cells in told.items():
        for row, cell in cells.items():
            said = key[_code(cell)]
            rows[row] = rows[row] | {index: cell._replace(value=said, text=said)}
    return replace(table, view=replace(table.view, rows=rows))


def _names_letters(column: HeadedColumn, key: Mapping[str, str]) -> bool:
    """'Price A USD/ST': the letters tell prices apart, or told them before the key's sizes took their place."""
    head = column.heads[-1].text if column.heads else ""
    priced = any(reading.role in PRICES for reading in header_roles(head))
    lettered = any(word.isupper() and fold(word) in key for word in re.findall(r"\w+", head))
    return (priced and lettered) or any(said in head for said in key.values())


def _names_something_else(column: HeadedColumn) -> bool:
    """'Finish', 'Mill' and 'Region'; a 'Class', a 'Code' or a 'Size' may be one of orders."""
    head = column.heads[-1].text if column.heads else ""
    roles = header_roles(head)
    plainly = bool(roles) and roles[0].strength >= _PLAINLY and roles[0].role not in _MAY_BE_SIZES
    return plainly and phrases("tiers").whole(head) is None


_PLAINLY = 0.8
_MAY_BE_SIZES = frozenset({*ORDER_SIZES, Role.MINIMUM, Role.GRADE, Role.ITEM, Role.SHEET_SIZE, Role.PRODUCT})


def _lettered(table: Table, column: HeadedColumn, key: Mapping[str, str]) -> dict[int, Cell]:
    """The column's cells by row; none where one is no letter of the key, or all are the same."""
    cells = dict(table.view.down(column.index, (row.index for row in table.rows)))
    codes = {_code(cell) for cell in cells.values()}
    known = all(isinstance(cell.value, str) for cell in cells.values()) and codes <= key.keys()
    return cells if known and len(codes) >= _FEWEST else {}


def _code(cell: Cell) -> str:
    return fold(cell.text).strip()
