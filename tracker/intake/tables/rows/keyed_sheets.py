"""Sheet sizes that rows or heads name by a code and a key explains: 'A | B' under 'Size', and 'Size A = 28 x 40 in'."""

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from itertools import pairwise

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.keys import around
from tracker.intake.tables.table import HeadedColumn, SheetTables, Table, Words
from tracker.intake.values.figures.sizes_of_codes import CODE, SizeOfCode, sizes_of_codes
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases

_FEWEST = 2
_SIZE = "Sheet size"
_MAY_BE_SIZES = frozenset({Role.ITEM, Role.SHEET_SIZE, Role.PROPERTY, Role.REMARKS})
_LABELLED = re.compile(rf"(?P<label>[^\W\d_]+)\.?\s+(?P<code>{CODE})")


def with_keyed_sheets(found: SheetTables, elsewhere: Sequence[Words] = ()) -> SheetTables:
    """The tables with the sizes in place of the codes. The key itself then says nothing of other rows. `elsewhere`:
    what sheets of words alone say."""
    if found.view.passing:
        return found
    told = [*_entries(around(found)), *_entries(elsewhere), *_entries(_listed(found.tables))]
    key = _key_of(entry for _, entry in told)
    tables = tuple(_in_words(table, key) for table in found.tables) if key else found.tables
    if all(new is old for new, old in zip(tables, found.tables, strict=True)):
        return found
    said = {words for words, _ in told}
    kept = (replace(table, titles=_but(table.titles, said), notes=_but(table.notes, said)) for table in tables)
    return replace(found, tables=tuple(kept), texts=_but(found.texts, said))


def _but(texts: Sequence[Words], said: set[Words]) -> tuple[Words, ...]:
    return tuple(words for words in texts if words not in said)


def _entries(texts: Iterable[Words]) -> Iterator[tuple[Words, SizeOfCode]]:
    """What texts explain, in one cell or in two side by side, each with the text of the size."""
    texts = tuple(texts)
    for words in texts:
        yield from ((words, entry) for entry in sizes_of_codes(words.text))
    for name, said in pairwise(texts):
        beside = name.sheet == said.sheet and name.row == said.row and name.cell.column + 1 == said.cell.column
        if beside and len(name.text) <= _LONGEST_NAME:
            yield from (
                (said, entry) for entry in sizes_of_codes(f"{name.text.strip(' :=')} = {said.text.strip(' :=')}")
            )


_LONGEST_NAME = 24


def _listed(tables: Sequence[Table]) -> Iterator[Words]:
    """The cells of tables of two columns, codes and sizes: 'Code | Dimensions' over 'A | 28 x 40 in'."""
    for table in tables:
        if len(table.columns) == _FEWEST and not any(map(_names_a_thing, table.columns)):
            heads = [cell for column in table.columns for cell in column.heads]
            cells = [cell for row in table.rows for _, cell in sorted(table.view.rows[row.index].items())]
            for cell in sorted([*heads, *cells], key=lambda cell: (cell.row, cell.column)):
                yield Words(table.view.sheet, cell.row, cell, cell.text)


def _key_of(entries: Iterator[SizeOfCode]) -> dict[tuple[str, str], str]:
    """Label and code, folded -> size; a code explained two ways is left out."""
    key: dict[tuple[str, str], str] = {}
    clashing = set()
    for label, code, size in entries:
        if key.setdefault((label, code), size) != size:
            clashing.add((label, code))
    return {code: size for code, size in key.items() if code not in clashing}


def _in_words(table: Table, key: Mapping[tuple[str, str], str]) -> Table:
    told = {column.index: sizes for column in table.columns if (sizes := _sizes_down(table, column, key))}
    named = {column.index for column in table.columns if column.index in told and _names_sizes(column)}
    told = {index: sizes for index, sizes in told.items() if index in named or not named}
    if not told:
        return _in_heads(table, key)
    rows = dict(table.view.rows)
    for index, sizes in told.items():
        for row, cell in sizes.items():
            rows[row] = rows[row] | {index: cell}
    columns = (
        _of_sizes(column) if column.index in told and column.index not in named else column for column in table.columns
    )
    return replace(table, columns=tuple(columns), view=replace(table.view, rows=rows))


def _sizes_down(table: Table, column: HeadedColumn, key: Mapping[tuple[str, str], str]) -> dict[int, Cell]:
    """The column's cells with their sizes. Under a head that names no sizes all of them, two at least, must be codes of
    the key: 'Class A' may be anything."""
    if _names_a_thing(column):
        return {}
    cells = dict(table.view.down(column.index, (row.index for row in table.rows)))
    head = fold(column.called).strip(" .:")
    sizes = {row: size for row, cell in cells.items() if (size := _size_of(cell.text, head, key)) is not None}
    called = any(label == head for label, _ in key)
    whole = len(sizes) == len(cells) and len(set(sizes.values())) >= _FEWEST
    if not _names_sizes(column) and not (whole and (called or not _is_other(column))):
        return {}
    return {row: cells[row]._replace(value=size, text=size, number_format="General") for row, size in sizes.items()}


def _size_of(text: str, head: str, key: Mapping[tuple[str, str], str]) -> str | None:
    """The size of a cell with 'A' or 'Size A'."""
    labelled = _LABELLED.fullmatch(text.strip())
    own = labelled is not None and (
        fold(labelled["label"]) == head or phrases("size_codes").whole(labelled["label"]) is not None
    )
    code = fold(labelled["code"] if labelled is not None and own else text).strip()
    return key.get((head, code)) or key.get(("", code))


def _names_sizes(column: HeadedColumn) -> bool:
    roles = header_roles(column.heads[-1].text) if column.heads else ()
    return bool(roles) and roles[0].role is Role.SHEET_SIZE


def _names_a_thing(column: HeadedColumn) -> bool:
    """'Pallet A = 28 x 40 in' under 'Pallet', and a table of 'Pallet code | Dimensions', tell of no sheets."""
    return bool(phrases("sized_things").find(column.called))


def _is_other(column: HeadedColumn) -> bool:
    """'Grade', 'Mill' and 'Price', and a head that nobody knows; 'Code' and 'Class' may be of sizes."""
    head = column.heads[-1].text if column.heads else ""
    roles = header_roles(head)
    if any(phrases(section).whole(head.strip(" .:")) is not None for section in ("size_codes", "tiers")):
        return False
    return not roles or roles[0].role not in _MAY_BE_SIZES


def _of_sizes(column: HeadedColumn) -> HeadedColumn:
    *above, lowest = column.heads
    return replace(column, heads=(*above, lowest._replace(value=_SIZE, text=_SIZE)), named=column.called)


def _in_heads(table: Table, key: Mapping[tuple[str, str], str]) -> Table:
    """'Size A | Size B' over prices, two at least."""
    told = {column.index: column for column in table.columns if _sized(column, key) is not column}
    if len(told) < _FEWEST:
        return table
    return replace(table, columns=tuple(_sized(column, key) for column in table.columns))


def _sized(column: HeadedColumn, key: Mapping[tuple[str, str], str]) -> HeadedColumn:
    for place, cell in enumerate(column.heads):
        labelled = _LABELLED.fullmatch(cell.text.strip())
        named = labelled is not None and phrases("size_codes").whole(labelled["label"]) is not None
        size = key.get(("", fold(labelled["code"]))) if labelled is not None and named else None
        if size is not None:
            heads = (*column.heads[:place], cell._replace(value=size, text=size), *column.heads[place + 1 :])
            return replace(column, heads=heads)
    return column
