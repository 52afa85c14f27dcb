"""The cells of one sheet, kept small: a Cell is made when it is asked for.

200,000 rows by 15 columns are three million cells. As ready-made objects they take over a gigabyte; as a float or a
shared text in a row's tuple, with tuples of columns and styles that like rows share, they take about a tenth of that.
"""

from array import array
from bisect import bisect_left
from collections.abc import Callable, ItemsView, Iterator, KeysView, Mapping, Sequence, ValuesView
from dataclasses import dataclass, field
from datetime import date, datetime
from itertools import pairwise
from operator import itemgetter
from typing import NamedTuple

from tracker.intake.files.cell_values import shown, visible
from tracker.intake.files.number_formats import Shows, shows
from tracker.intake.grid import Cell, CellFault, CellValue


@dataclass(frozen=True, slots=True)
class Style:
    """What formatting says about a cell: its number format code, what that code shows, whether it is struck through."""

    number_format: str
    struck: bool = False
    shows: Shows = field(init=False, compare=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "shows", shows(self.number_format))


GENERAL = Style("General")

MOST_CELLS = 6_000_000
"""Cells with content in one sheet that are still read: twice 200,000 rows of 15 columns."""


class TooManyCells(Exception):
    """A sheet holds more than MOST_CELLS."""


class Special(NamedTuple):
    """A cell that is more than a plain number or text: a fault, a date written out, a partly struck text."""

    value: CellValue
    text: str
    fault: CellFault | None = None
    comment: str = ""
    struck: bool = False


Stored = str | float | bool | Special


class Row(NamedTuple):
    """One row's cells with content, by rising column."""

    columns: tuple[int, ...]
    styles: tuple[Style, ...]
    values: tuple[Stored, ...]


def error_cell(code: str) -> Special:
    return Special(None, code, CellFault.ERROR)


def formula_without_value(formula: str) -> Special:
    """`formula` without its leading equals sign, '' where the file leaves it to another cell."""
    return Special(None, "=" + (formula or "…"), CellFault.FORMULA_WITHOUT_VALUE)


def calculates_to_nothing(formula: str) -> bool:
    """Whether an empty text can be what a formula comes to, as of =IF(D6="","",D6*1.05) beside an empty D6; '' for one
    whose text another cell holds. D5-E5 with an empty text was never calculated."""
    return not formula or '""' in formula


def written_date(value: date | datetime) -> Special:
    """A date that the file writes out instead of counting days."""
    if isinstance(value, datetime) and value.hour == value.minute == value.second == value.microsecond == 0:
        value = value.date()
    return Special(value, visible(value))


def joined_runs(runs: list[tuple[str, bool]]) -> Stored:
    """A text from its runs, each with whether it is struck through.

    What is struck through is void: it is left out and told in the comment. Only a text that is struck through as a
    whole keeps its words and says so.
    """
    whole = "".join(text for text, _ in runs)
    void = "".join(text for text, struck in runs if struck).strip()
    if not void:
        return whole
    kept = "".join(text for text, struck in runs if not struck)
    if not kept.strip():
        return Special(whole, whole, struck=True)
    return Special(kept, kept, comment=f"Struck through in the cell: {void}")


class SheetCells(Mapping[tuple[int, int], Cell]):
    """Cells keyed (row, column), in order of rows and columns; `epoch_1904` says how serial dates count."""

    __slots__ = ("_comments", "_count", "_epoch_1904", "_rows")

    def __init__(
        self, rows: dict[int, Row], *, epoch_1904: bool = False, comments: Mapping[tuple[int, int], str] | None = None
    ) -> None:
        in_order = all(above < below for above, below in pairwise(rows))
        self._rows = rows if in_order else dict(sorted(rows.items()))
        self._epoch_1904 = epoch_1904
        self._comments = dict(comments or {})
        self._count = sum(len(row.columns) for row in rows.values())

    def __getitem__(self, key: tuple[int, int]) -> Cell:
        row_number, column = key
        row = self._rows[row_number]
        place = bisect_left(row.columns, column)
        if place == len(row.columns) or row.columns[place] != column:
            raise KeyError(key)
        return self._cell(row_number, column, row.styles[place], row.values[place])

    def __contains__(self, key: object) -> bool:
        if not isinstance(key, tuple) or len(key) != 2:
            return False
        row = self._rows.get(key[0])
        return row is not None and key[1] in row.columns

    def __iter__(self) -> Iterator[tuple[int, int]]:
        for row_number, row in self._rows.items():
            for column in row.columns:
                yield row_number, column

    def __len__(self) -> int:
        return self._count

    def keys(self) -> KeysView[tuple[int, int]]:
        return KeysView(self)

    def values(self) -> ValuesView[Cell]:
        return _Cells(self)

    def items(self) -> ItemsView[tuple[int, int], Cell]:
        return _KeyedCells(self)

    def __reduce__(self) -> tuple[Callable[..., "SheetCells"], tuple[object, ...]]:
        """Pickled flat: a tuple per row would cost the pickler several times the memory of the cells themselves."""
        layouts: dict[tuple[int, int], int] = {}
        shared: list[tuple[tuple[int, ...], tuple[Style, ...]]] = []
        used = array("L")
        for row in self._rows.values():
            number = layouts.setdefault((id(row.columns), id(row.styles)), len(shared))
            if number == len(shared):
                shared.append((row.columns, row.styles))
            used.append(number)
        values = [value for row in self._rows.values() for value in row.values]
        return _unpacked, (array("L", self._rows), used, shared, values, self._epoch_1904, self._comments)

    def extent(self) -> tuple[int, int]:
        """Height and width without making a cell."""
        if not self._rows:
            return 0, 0
        return 1 + next(reversed(self._rows)), 1 + max(row.columns[-1] for row in self._rows.values())

    def row_numbers(self) -> KeysView[int]:
        """The rows with content, from the top."""
        return self._rows.keys()

    def row_columns(self, number: int) -> tuple[int, ...]:
        """The columns that a row has content in, from the left."""
        return self._rows[number].columns

    def row(self, number: int) -> dict[int, Cell]:
        """A row's cells by column, made anew each time.

        The two usual kinds are made on the spot, without a call for each: a long sheet has hundreds of thousands.
        """
        epoch_1904, commented, made = self._epoch_1904, bool(self._comments), tuple.__new__
        cells: dict[int, Cell] = {}
        for column, style, stored in zip(*self._rows[number], strict=True):
            if commented or type(stored) is Special:
                cells[column] = self._cell(number, column, style, stored)
            elif type(stored) is str:
                usual = (number, column, stored, stored, style.number_format, None, "", style.struck)
                cells[column] = made(Cell, usual)
            else:
                value, text = shown(stored, style.shows, epoch_1904)
                cells[column] = made(Cell, (number, column, value, text, style.number_format, None, "", style.struck))
        return cells

    def each(self) -> Iterator[Cell]:
        """Every cell, row by row."""
        for number in self._rows:
            yield from self.row(number).values()

    def _cell(self, row: int, column: int, style: Style, stored: Stored) -> Cell:
        comment = self._comments.get((row, column), "") if self._comments else ""
        if isinstance(stored, str):
            return Cell(row, column, stored, stored, style.number_format, None, comment, style.struck)
        if isinstance(stored, Special):
            both = "\n".join(part for part in (comment, stored.comment) if part)
            struck = style.struck or stored.struck
            return Cell(row, column, stored.value, stored.text, style.number_format, stored.fault, both, struck)
        value, text = shown(stored, style.shows, self._epoch_1904)
        return Cell(row, column, value, text, style.number_format, None, comment, style.struck)


def _unpacked(
    numbers: Sequence[int],
    used: Sequence[int],
    shared: list[tuple[tuple[int, ...], tuple[Style, ...]]],
    values: list[Stored],
    epoch_1904: bool,
    comments: Mapping[tuple[int, int], str],
) -> SheetCells:
    """What SheetCells.__reduce__ packed."""
    rows: dict[int, Row] = {}
    at = 0
    for number, layout in zip(numbers, used, strict=True):
        columns, styles = shared[layout]
        rows[number] = Row(columns, styles, tuple(values[at : at + len(columns)]))
        at += len(columns)
    return SheetCells(rows, epoch_1904=epoch_1904, comments=comments)


class _Cells(ValuesView[Cell]):
    def __init__(self, cells: SheetCells) -> None:
        super().__init__(cells)
        self._cells = cells

    def __iter__(self) -> Iterator[Cell]:
        return self._cells.each()


class _KeyedCells(ItemsView[tuple[int, int], Cell]):
    def __init__(self, cells: SheetCells) -> None:
        super().__init__(cells)
        self._cells = cells

    def __iter__(self) -> Iterator[tuple[tuple[int, int], Cell]]:
        for cell in self._cells.each():
            yield (cell.row, cell.column), cell


class RowBuilder:
    """Collects one sheet's rows so that like rows share their column and style tuples.

    Raises TooManyCells beyond MOST_CELLS.
    """

    def __init__(self) -> None:
        self._count = 0
        self.rows: dict[int, Row] = {}
        self._columns: dict[tuple[int, ...], tuple[int, ...]] = {}
        self._styles: dict[tuple[Style, ...], tuple[Style, ...]] = {}

    def add(self, row: int, cells: list[tuple[int, Style, Stored | None]]) -> None:
        """Add cells to a row; blank ones (see is_blank) are left out, of two in one place the later stays."""
        kept = [cell for cell in cells if not is_blank(cell[2])]
        if not kept:
            return
        self.expect(len(kept))
        old = self.rows.get(row)
        if old is not None or any(left[0] >= right[0] for left, right in pairwise(kept)):
            before = [] if old is None else zip(*old, strict=True)
            kept = sorted({cell[0]: cell for cell in (*before, *kept)}.values(), key=itemgetter(0))
        columns, styles, values = zip(*kept, strict=True)
        self.rows[row] = Row(self._shared_columns(columns), self._shared_styles(styles), values)

    def expect(self, count: int) -> None:
        """Say that so many cells will follow or have come, so that too many are refused before they are made."""
        self._count += count
        if self._count > MOST_CELLS:
            raise TooManyCells

    def _shared_columns(self, columns: tuple[int, ...]) -> tuple[int, ...]:
        return self._columns.setdefault(columns, columns)

    def _shared_styles(self, styles: tuple[Style, ...]) -> tuple[Style, ...]:
        return self._styles.setdefault(styles, styles)


def is_blank(value: Stored | None) -> bool:
    """Nothing, or text of blanks only."""
    return value is None or (isinstance(value, str) and not value.strip())
