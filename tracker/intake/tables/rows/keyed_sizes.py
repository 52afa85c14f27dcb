"""Order sizes that rows name by a letter and a key explains: 'S | T' under 'Class', and 'S = less than 12,000 lb'."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from itertools import pairwise

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import head_of
from tracker.intake.tables.headers.keyed_heads import sizes_in, told_sizes
from tracker.intake.tables.headers.keys import Keys, Told, explained_two_ways, for_column
from tracker.intake.tables.table import HeadedColumn, SheetTables, Table, Words
from tracker.intake.values.boards.grade import names_grade
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
    keys = Keys(found, elsewhere)
    if not keys:
        return found
    return replace(found, tables=tuple(_in_words(table, keys.of_table(table)) for table in found.tables))


def _in_words(table: Table, told: Sequence[Told]) -> Table:
    sizes = told_sizes(told)
    if len({one.code for one in sizes}) < _FEWEST or _prices_by_letters(table, sizes_in(sizes)):
        return table
    rows, columns = dict(table.view.rows), list(table.columns)
    for place, column in enumerate(table.columns):
        key = _key_for(column, sizes)
        cells = {} if _names_something_else(column) else _lettered(table, column, key)
        for row, cell in cells.items():
            said = key[_code(cell)]
            rows[row] = rows[row] | {column.index: cell._replace(value=said, text=said)}
        least = bool(cells) and _are_least(table, column, [key[_code(cell)] for cell in cells.values()])
        columns[place] = _headed(column, _MINIMUM) if least else _of_sizes(column) if cells else column
    if columns == list(table.columns) and rows == table.view.rows:
        return table
    return replace(table, columns=tuple(columns), view=replace(table.view, rows=rows))


def _key_for(column: HeadedColumn, sizes: Sequence[Told]) -> dict[str, str]:
    """Letter -> size; for one that is explained two ways all that is said of it, to be asked about: left as it is, its
    rows would be for orders of any size."""
    own = for_column(sizes, column)
    doubts = {code: _EITHER.join(said) for code, said in explained_two_ways(own).items()}
    return sizes_in(own) | doubts


_EITHER = " / "


def _prices_by_letters(table: Table, key: Mapping[str, str]) -> bool:
    """'Price A USD/ST | Price B USD/ST': the letters tell prices apart, or told them before the key's sizes took their
    place. The T of a lone 'Price $/T' is a ton's."""
    heads = [column.heads[-1].text for column in table.columns if column.heads]
    letters = {letter for head in heads if (letter := _letter_of_price(head, key)) is not None}
    return len(letters) >= _FEWEST or any(said in head for head in heads for said in key.values())


def _letter_of_price(head: str, key: Mapping[str, str]) -> str | None:
    """The letter of the key right behind the word for prices, before all else or after all else of a price's head."""
    if not any(reading.role in PRICES for reading in header_roles(head)):
        return None
    words = fold(head).split()
    beside = [behind for word, behind in pairwise(words) if phrases("price_words").whole(word) is not None]
    return next((word for word in (*beside, words[0], words[-1]) if word.strip("()") in key), None)


def _names_something_else(column: HeadedColumn) -> bool:
    """'Finish', 'Mill' and 'Region'; a 'Class', a 'Code', a 'Note' or a 'Size' may be one of orders."""
    head = column.heads[-1].text if column.heads else ""
    roles = header_roles(head)
    plainly = bool(roles) and roles[0].strength >= _PLAINLY and roles[0].role not in _MAY_BE_SIZES
    return plainly and phrases("tiers").whole(head) is None


def _of_sizes(column: HeadedColumn) -> HeadedColumn:
    """'Price level' and 'Note' over order sizes, under the word for what they are now."""
    roles = header_roles(column.heads[-1].text) if column.heads else ()
    if not roles or roles[0].role not in _HEADED_OTHERWISE:
        return column
    return _headed(column, _ORDER_SIZE)


def _headed(column: HeadedColumn, head: str) -> HeadedColumn:
    *above, lowest = column.heads
    return replace(column, heads=(*above, lowest._replace(value=head, text=head)))


def _are_least(table: Table, column: HeadedColumn, said: Sequence[str]) -> bool:
    """'Minimum 10,000 lb' and 'minimum 20,000 lb' of boards that are each another: how little of each is sold. Of one
    board they are the sizes that its prices begin at."""
    if not column.heads or not all(map(_names_a_least, said)):
        return False
    boards = [one.index for one in table.columns if one.heads and (head := head_of(one.heads[-1])) and head.board]
    boards = [index for index in boards if index != column.index]
    if not boards:
        return False
    rows = [table.view.rows[row.index] for row in table.rows]
    named = {tuple(cells[index].text for index in boards if index in cells) for cells in rows}
    return len(named) == len(rows) and all(boards[0] in cells for cells in rows)


def _names_a_least(said: str) -> bool:
    return any(reading.role is Role.MINIMUM and reading.strength >= _PLAINLY for reading in header_roles(said))


_PLAINLY = 0.8
_ORDER_SIZE, _MINIMUM = "Order size", "Minimum"
_HEADED_OTHERWISE = frozenset({Role.REMARKS, Role.DELIVERY_TERMS, *PRICES})
_MAY_BE_SIZES = frozenset({
    *ORDER_SIZES, Role.MINIMUM, Role.GRADE, Role.ITEM, Role.SHEET_SIZE, Role.PRODUCT, Role.REMARKS, Role.DELIVERY_TERMS,
})  # fmt: skip


def _lettered(table: Table, column: HeadedColumn, key: Mapping[str, str]) -> dict[int, Cell]:
    """The column's cells by row; none where one is no letter of the key, or a board itself, or all are the same."""
    cells = dict(table.view.down(column.index, (row.index for row in table.rows)))
    codes = {_code(cell) for cell in cells.values()}
    known = all(isinstance(cell.value, str) for cell in cells.values()) and codes <= key.keys()
    # 'SBS: minimum order 5 ST' says what holds for SBS, which stays what it is.
    known = known and not any(names_grade(cell.text) for cell in cells.values())
    return cells if known and len(codes) >= _FEWEST else {}


def _code(cell: Cell) -> str:
    return fold(cell.text).strip()
