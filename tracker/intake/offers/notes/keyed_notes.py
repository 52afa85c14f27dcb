"""Notes that explain the keys of a column: 'D = delivered' below a column 'D' with an x in some rows, 'a = lead time 3
weeks' beside a column of remarks that says 'a' or 'a, b'."""

import re
from collections.abc import Iterable, Mapping

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.tables.table import Table
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.note_signs import RAISED
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases

_KEY = re.compile(r"\s*([^\W\d_]{1,3}|\d{1,2})\s*(?:[=:]|\s[-–]\s)\s*(?=[^\W_])")
KEYED = "="
"""What a key is told from a footnote's sign by."""
_KEYS = re.compile(r"(?:[^\W\d_]{1,3}|\d{1,2})(?:\s*[,;+/ ]\s*(?:[^\W\d_]{1,3}|\d{1,2}))*")


def key_ahead(text: str) -> str:
    """The key that a note explains, with the sign of equality, so that no footnote's sign is taken for it; '' for
    none."""
    found = _KEY.match(text)
    return f"{KEYED}{fold(found[1])}" if found is not None else ""


def without_key(text: str) -> str:
    """The note behind its key."""
    found = _KEY.match(text)
    return text if found is None else text[found.end() :]


class KeyedNotes:
    """The keys that some notes explain, in the columns of a table that hold them or marks below them."""

    def __init__(self, noted: Iterable[str], table: Table, columns: Columns) -> None:
        noted = frozenset(noted)
        known = {column.index for found in columns.by_role.values() for column in found}
        free = {column.index for column in columns.of(Role.REMARKS)} | {
            column.index for column in table.columns if column.index not in known
        }
        self._rows = [table.view.rows[row.index] for row in table.rows] if noted and not table.view.passing else []
        self._marked = {index: key for index, key in self._headed(table, free) if key in noted}
        self._listing = frozenset(index for index in free if index not in self._marked and self._lists(index, noted))
        self.keys = frozenset(self._marked.values()).union(*map(self.of_row, self._rows)) & noted

    def _headed(self, table: Table, free: set[int]) -> Iterable[tuple[int, str]]:
        """The columns that a key stands over, with nothing but marks in them."""
        for column in table.columns:
            cells = [cells[column.index] for cells in self._rows if column.index in cells]
            if column.index in free and column.heads and cells and all(map(_is_mark, cells)):
                head = fold(column.heads[-1].text).strip(" .")
                yield column.index, head.translate(RAISED) if not head[:1].isalnum() else f"{KEYED}{head}"

    def _lists(self, index: int, noted: frozenset[str]) -> bool:
        """Whether all its cells are keys that the notes explain."""
        cells = [cells[index] for cells in self._rows if index in cells]
        return bool(cells) and all(_keys(cell) and _keys(cell) <= noted for cell in cells)

    def of_row(self, cells: Mapping[int, Cell]) -> frozenset[str]:
        """The keys that hold for a row."""
        marked = {key for index, key in self._marked.items() if index in cells}
        return frozenset(marked).union(*(_keys(cells[index]) for index in self._listing if index in cells))

    @property
    def over_columns(self) -> frozenset[int]:
        """The columns whose head is a key for the rows marked below it."""
        return frozenset(self._marked)


def _is_mark(cell: Cell) -> bool:
    text = cell.text.strip()
    signed = not any(map(str.isalnum, text)) and bool(text.strip("-–—. "))
    return signed or fold(text) in _MARKS or phrases("answers").whole(text) == "yes"


_MARKS = frozenset({"x", "xx", "v", "1"})


def _keys(cell: Cell) -> frozenset[str]:
    text = cell.text.strip()
    return (
        frozenset(f"{KEYED}{fold(key)}" for key in re.findall(r"[^\W_]+", text))
        if _KEYS.fullmatch(text)
        else frozenset()
    )
