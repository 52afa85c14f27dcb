"""Order sizes that rows name by a letter and a key explains: 'S | T' under 'Class', and 'S = less than 12,000 lb'."""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.keys import around, entries, sizes_in
from tracker.intake.tables.table import HeadedColumn, SheetTables, Table, Words
from tracker.intake.words.fold import fold

_FEWEST = 2


def with_keyed_sizes(found: SheetTables, elsewhere: Sequence[Words] = ()) -> SheetTables:
    """The tables with the order sizes in place of the letters, where a column holds nothing but letters of the key, two
    of them at least. `elsewhere`: what sheets of words alone say."""
    if found.view.passing:
        return found
    key = sizes_in([*entries(around(found)), *entries(elsewhere)])
    if len(key) < _FEWEST:
        return found
    return replace(found, tables=tuple(_in_words(table, key) for table in found.tables))


def _in_words(table: Table, key: Mapping[str, str]) -> Table:
    told = {column.index: cells for column in table.columns if (cells := _lettered(table, column, key))}
    if not told:
        return table
    rows = dict(table.view.rows)
    for index, cells in told.items():
        for row, cell in cells.items():
            said = key[_code(cell)]
            rows[row] = rows[row] | {index: cell._replace(value=said, text=said)}
    return replace(table, view=replace(table.view, rows=rows))


def _lettered(table: Table, column: HeadedColumn, key: Mapping[str, str]) -> dict[int, Cell]:
    """The column's cells by row; none where one is no letter of the key, or all are the same."""
    cells = dict(table.view.down(column.index, (row.index for row in table.rows)))
    codes = {_code(cell) for cell in cells.values()}
    known = all(isinstance(cell.value, str) for cell in cells.values()) and codes <= key.keys()
    return cells if known and len(codes) >= _FEWEST else {}


def _code(cell: Cell) -> str:
    return fold(cell.text).strip()
