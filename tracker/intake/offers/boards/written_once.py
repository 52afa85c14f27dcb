"""The columns whose values are written on the first row of their group only, and hold for the rows below it."""

from collections.abc import Iterable, Mapping, Sequence
from functools import cache, lru_cache

from tracker.intake.columns.column import Column, Columns
from tracker.intake.grid import Cell
from tracker.intake.tables.table import Table
from tracker.intake.values.heads.roles import MEASURES, Role
from tracker.intake.values.notes.unless import left_unmarked
from tracker.intake.words.lists import words

BOARD = (Role.PRODUCT, Role.GRADE, Role.COATING, Role.CALIPER, Role.WEIGHT, Role.SHEET_SIZE, Role.FORM)
"""The columns that describe a board."""


_NAMES = (Role.PRODUCT, Role.GRADE)
_UNITS = (Role.BASIS, Role.CURRENCY)


def written_once(table: Table, columns: Columns, filled: Sequence[Column], texts: Iterable[str] = ()) -> frozenset[int]:
    """The columns whose values are written on the first row of their group only.

    `texts`: those around the table, which may say what empty unit cells mean: 'prices without a currency are pesos'.
    """
    explained = frozenset(role for text in texts for role in left_unmarked(text))
    left = [_Once(columns, column) for column in filled if column.role not in _UNITS or column.role not in explained]
    rows = table.view.rows
    for row in table.rows:
        cells = rows[row.index]
        left = [once for once in left if once.still(cells, rows, row.index)]
        if not left:
            break
    return frozenset(once.index for once in left if once.blanks and not once.left_open)


class _Once:
    """Follows one column down a table: whether its values are written on the first row of their group only.

    Such a column never repeats itself from one row to the next, and is empty only where every column of the board to
    its left is empty too; a column that repeats its values means nothing by an empty cell. Names of boards may follow
    what each of them measures: 'g/m² | µm | Board'. A caliper that is missing here and there beside a weight of the
    row's own is not told at all.
    """

    def __init__(self, columns: Columns, column: Column) -> None:
        self.index, self.blanks = column.index, 0
        ahead = _NAMES if column.role in _NAMES and column.sure else BOARD
        self._left = [other.index for other in columns.of(*ahead) if other.index < column.index]
        self._of_board = column.role in BOARD
        self._of_unit = column.role in _UNITS
        others = columns.of(*MEASURES) if column.role in MEASURES else []
        self._other_measures = [other.index for other in others if other.role is not column.role]
        self._before: str | None = None
        self._values = self._groups = 0
        self._measured_alone = False

    def still(self, cells: dict[int, Cell], rows: Mapping[int, dict[int, Cell]], row: int) -> bool:
        """Whether it may still be such a column after this row."""
        cell = cells.get(self.index)
        if cell is None:
            self.blanks += 1
            self._groups += not self._after_blank(rows, row)
            self._measured_alone |= any(index in cells for index in self._other_measures)
            if self._of_unit and self._before is None:
                # 'USD' on some rows below others without any marks those rows, and begins no group.
                return False
            return not (self._of_board and any(index in cells for index in self._left))
        if says_same(cell.text):
            return True
        if cell.text == self._before and not self._after_blank(rows, row):
            return False
        self._before = cell.text
        self._values += 1
        return True

    @property
    def left_open(self) -> bool:
        """Few of its values have rows without any below them, and such a row measures its board otherwise."""
        return self._measured_alone and 2 * self._groups < self._values

    def _after_blank(self, rows: Mapping[int, dict[int, Cell]], row: int) -> bool:
        """The row above this one leaves the column empty: then the same value again begins a new group."""
        above = rows.get(row - 1)
        return above is None or self.index not in above


@lru_cache(maxsize=4096)
def says_same(text: str) -> bool:
    """A ditto: '"', 'dto.', 'id.', '-"-'."""
    return text.strip(" -–—").casefold() in _dittos()


@cache
def _dittos() -> frozenset[str]:
    return frozenset(text.casefold() for text in words("ditto").get("any", ()))
