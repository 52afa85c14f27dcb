"""Keys that stand as small tables: 'Unit code | Meaning' over '1 | per short ton', 'FIELD | VALUE | MEANING' over
'GRADE_CODE | SB1 | Solid bleached sulfate'. Each of their rows is made the text that says the same in one cell."""

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby
from typing import NamedTuple

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import head_of, head_of_words
from tracker.intake.tables.headers.keys import Told
from tracker.intake.tables.rows.keyed_columns import explained_codes
from tracker.intake.tables.table import HeadedColumn, Table, Words
from tracker.intake.tables.view import View
from tracker.intake.values.heads.header import header
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.key_entries import key_entries
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases, without_words

_LOOKED_AT = 200
_LONGEST_HEAD = 30
_LONGEST_CODE = 6


class KeyRow(NamedTuple):
    """One row of a key: the head whose codes it explains, as the key says it, and its cells."""

    head: str
    code: Cell
    said: Cell


@dataclass(frozen=True)
class KeyTable:
    """`heads`: the places of what heads it; `width`: how many columns it has, whose first may name a head in every
    row."""

    heads: frozenset[tuple[int, int]]
    width: int
    rows: tuple[KeyRow, ...]

    @property
    def places(self) -> frozenset[tuple[int, int]]:
        """All of it."""
        return self.heads.union(*(self.places_of(row) for row in self.rows))

    def places_of(self, row: KeyRow) -> frozenset[tuple[int, int]]:
        """The places of one row."""
        last = row.said.column + 1
        return frozenset((row.said.row, column) for column in range(last - self.width, last))


def key_tables(view: View, tables: Sequence[Table]) -> list[KeyTable]:
    """What may be such keys in a sheet: a word for what codes mean heads their last column. `tables`: what was found
    in it."""
    if view.passing:
        return []
    bodies = {row.index for table in tables if not table.view.turned for row in table.rows}
    # Beside the first rows of a table such a key may begin; a long one is not read for that.
    looked_at = [*view.order[:_LOOKED_AT], *(row for row in view.order[_LOOKED_AT:] if row not in bodies)]
    heads = ((row, index) for row in looked_at for index in view.rows[row])
    found = (_headed_at(view, row, index) for row, index in heads)
    return [key for key in found if key is not None]


def _headed_at(view: View, row: int, index: int) -> KeyTable | None:
    """The key whose last column is headed by a cell."""
    cells = view.rows[row]
    if index - 1 not in cells or index + 1 in cells or not (_means(cells[index]) or _names_itself(view, row, index)):
        return None
    width = 3 if index - 2 in cells else 2
    first = index - width + 1
    if first < 0 or first - 1 in cells or not all(isinstance(cells[at].value, str) for at in range(first, index)):
        return None
    rows = tuple(_rows(view, row, first, index))
    return KeyTable(frozenset((row, at) for at in range(first, index + 1)), width, rows) if rows else None


def _means(cell: Cell) -> bool:
    """Whether a head says that what stands below it is what codes mean."""
    text = cell.text.strip(" :.")
    return isinstance(cell.value, str) and len(text) <= _LONGEST_HEAD and phrases("key_heads").whole(text) is not None


def _names_itself(view: View, row: int, index: int) -> bool:
    """'Code | Lead time': the head over what codes mean is that of the column in which they stand."""
    code, said = view.rows[row][index - 1], view.rows[row][index]
    alone = index - 2 not in view.rows[row] and isinstance(said.value, str) and len(said.text) <= _LONGEST_HEAD
    return alone and _is_of_codes(code) and head_of(said) is not None


def _is_of_codes(cell: Cell) -> bool:
    return isinstance(cell.value, str) and bool(_plain(cell.text)) and not _without_code(cell.text)


def _rows(view: View, top: int, first: int, last: int) -> Iterator[KeyRow]:
    """The rows below the heads, down to the first that is no code with what it means. A field may be named once, over
    all of its codes."""
    named = last - first > 1
    head = view.rows[top][first if named or _means(view.rows[top][last]) else last].text
    for row in range(top + 1, view.order[-1] + 1):
        cells = view.rows.get(row, {})
        if row not in view.rows and top + 1 < row and row + 1 in view.rows:
            # An empty row parts two entries.
            continue
        code, said = cells.get(last - 1), cells.get(last)
        if code is None or said is None or first - 1 in cells or last + 1 in cells:
            return
        if not _is_code(code.text) or not isinstance(said.value, str) or _means(said):
            return
        if named and (first in cells or row == top + 1):
            if first not in cells:
                return
            head = cells[first].text
        yield KeyRow(head, code, said)


def _is_code(text: str) -> bool:
    return len(text.strip()) <= _LONGEST_CODE and " " not in text.strip()


class SaidOf(NamedTuple):
    """A row of a key as a text, and the table whose column it explains."""

    row: KeyRow
    words: Words
    table: Table


def explaining(key: KeyTable, sheet: str, tables: Sequence[Table]) -> list[SaidOf]:
    """Those rows of what may be a key that explain the codes of a column, which its head or their fields name, each
    once for every table that has such a column. An index and a list of addresses explain no codes."""
    by_head = groupby(sorted(key.rows, key=lambda row: (fold(row.head), row.said.row)), lambda row: fold(row.head))
    found: list[SaidOf] = []
    for _, group in by_head:
        rows = list(group)
        for table in tables:
            found += _of_table(rows, sheet, table)
    return found


def _of_table(rows: Sequence[KeyRow], sheet: str, table: Table) -> list[SaidOf]:
    place = _named(rows[0].head, table.columns)
    if place is None:
        return []
    column = table.columns[place]
    if all(row.code.text.strip().isdigit() for row in rows) and _counts(column.called):
        return []
    said = {row: _as_text(row, column, sheet) for row in _of_these_codes(rows, table, column)}
    told = [entry for words in said.values() for entry in _entries(words, column)]
    if not said or len(told) != len(said) or explained_codes(table, place, told) is None:
        return []
    return [SaidOf(row, words, table) for row, words in said.items()]


def _counts(head: str) -> bool:
    """'Lead time (weeks)', 'Minimum (t)': the figures below are weeks and tonnes, and no codes."""
    said = header(head)
    of_orders = any(reading.role is Role.MINIMUM for reading in said.roles)
    return not phrases("code_words").find(_plain(head)) and (
        said.lead_unit is not None or (of_orders and bool(said.mass_units))
    )


def _of_these_codes(rows: Sequence[KeyRow], table: Table, column: HeadedColumn) -> list[KeyRow]:
    """The rows down to the last whose code is written as those of the column are: 'MOQ | 5 t' below the codes F and D
    of freight explains no code."""
    cells = table.view.down(column.index, (row.index for row in table.rows))
    written = {_SIGNS.sub(_kind_of_sign, cell.text.strip()) for _, cell in cells}
    own = [place for place, row in enumerate(rows) if _SIGNS.sub(_kind_of_sign, row.code.text.strip()) in written]
    return list(rows[: own[-1] + 1]) if own else []


_SIGNS = re.compile(r"[^\W_]")


def _kind_of_sign(sign: re.Match[str]) -> str:
    return "9" if sign[0].isdigit() else "A"


def _as_text(row: KeyRow, column: HeadedColumn, sheet: str) -> Words:
    """'Unit code: 1 = per short ton', under the name that the column has itself."""
    text = f"{column.called.strip()}: {row.code.text.strip()} = {row.said.text.strip()}"
    return Words(sheet, row.said.row, row.said, text)


def _entries(words: Words, column: HeadedColumn) -> Iterator[Told]:
    """What the text is read as, where that is all that its row says."""
    for entry in key_entries(words.text):
        if entry.whole and entry.label == fold(column.called).strip(" .") and words.cell.text.strip() == entry.said:
            yield Told(entry.code, entry.said, words, entry.label, whole=True)


def _named(head: str, columns: Sequence[HeadedColumn]) -> int | None:
    """The one column that a key's head names: 'Unit code', 'UNIT_CODE' or, where nothing else has such a head, 'Unit'
    for it; 'Code' alone names the one column of codes."""
    if not _without_code(head):
        coded = [place for place, one in enumerate(columns) if phrases("code_words").find(_plain(one.called))]
        return coded[0] if len(coded) == 1 else None
    for read in (_plain, _without_code, _kind):
        named = [place for place, column in enumerate(columns) if read(head) and read(column.called) == read(head)]
        if named:
            return named[0] if len(named) == 1 else None
    return None


def _kind(text: str) -> str:
    """What a head by another word is for: 'LT' is 'Lead time'."""
    head = head_of_words(text)
    return "" if head is None or head.role is None else head.role.value


def _plain(head: str) -> str:
    return " ".join(fold(head).replace("_", " ").replace("-", " ").split()).strip(" .:")


def _without_code(head: str) -> str:
    """'Unit code' and 'Code unité' as 'unit' and 'unite'."""
    return " ".join(without_words(_plain(head), "code_words").split())


def without_rows(key: KeyTable, said: Iterable[SaidOf]) -> frozenset[tuple[int, int]]:
    """The places of what is said of columns now, with those of the heads where nothing else is left below them."""
    told = {one.row for one in said}
    places = frozenset[tuple[int, int]]().union(*(key.places_of(row) for row in told))
    return places | key.heads if len(told) == len(key.rows) else places
