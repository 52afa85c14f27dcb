"""A sheet as rows of cells, the way round it is read: as it stands, or turned so that its columns become rows.

Cells keep the address they have in the vendor's file, so what is found in a turned view still points at the right cell.
"""

import re
from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence, Set
from dataclasses import dataclass, replace
from functools import cached_property, lru_cache
from typing import Protocol, runtime_checkable

from tracker.intake.grid import Cell, Grid, MergedRange
from tracker.intake.values.firms.letterhead_pieces import letterhead_in_pieces
from tracker.intake.values.notes.wide_blanks import on_lines_of_their_own

_LARGEST_SPREAD = 20_000
"""A merged block of more cells than this is decoration; spreading it would only cost memory."""

_KEPT_CELLS = 750_000
"""Up to so many cells of a workbook are made once and kept, which takes about a fifth of a gigabyte; of the sheets of a
larger one a row is made each time it is asked for."""

_UNTIDY = re.compile(r"^\s|\s$|  |[^\S \n]|\s\n|\n\s")


@runtime_checkable
class ByRow(Protocol):
    """Cells that can be asked for row by row."""

    def row_numbers(self) -> Iterable[int]: ...
    def row_columns(self, number: int) -> tuple[int, ...]: ...
    def row(self, number: int) -> dict[int, Cell]: ...
    def get(self, place: tuple[int, int], /) -> Cell | None: ...


class PassingRows(Mapping[int, dict[int, Cell]]):
    """The rows of a long sheet, made when asked for and not kept, so that memory stays flat."""

    def __init__(self, cells: ByRow, numbers: Iterable[int], columns: range | None = None) -> None:
        self._cells, self._columns = cells, columns
        self._numbers = dict.fromkeys(number for number in numbers if self._has_content(number))
        # Whoever goes over the rows asks for each several times in turn, and now and then for the one above it.
        self._last: tuple[tuple[int, dict[int, Cell]], ...] = ()

    def __getitem__(self, number: int) -> dict[int, Cell]:
        for held, cells in self._last:
            if held == number:
                return cells
        if number not in self._numbers:
            raise KeyError(number)
        made = _within(_tidied_row(self._cells, number), self._columns)
        self._last = ((number, made), *self._last[:1])
        return made

    def __contains__(self, number: object) -> bool:
        return number in self._numbers

    def __iter__(self) -> Iterator[int]:
        return iter(self._numbers)

    def __len__(self) -> int:
        return len(self._numbers)

    def cell(self, number: int, column: int) -> Cell | None:
        """One cell, without the rest of its row."""
        if number not in self._numbers or (self._columns is not None and column not in self._columns):
            return None
        cell = self._cells.get((number, column))
        return tidied(cell) if cell is not None and _says_something(cell) else None

    def columns_of(self, number: int) -> tuple[int, ...]:
        """The columns of a row that have content, without making its cells."""
        used = self._cells.row_columns(number)
        return used if self._columns is None else tuple(column for column in used if column in self._columns)

    def part(self, numbers: Iterable[int], columns: range | None) -> "PassingRows":
        """Some of the rows, and a band of columns of them."""
        here = self._columns
        if columns is not None and here is not None:
            columns = range(max(columns.start, here.start), min(columns.stop, here.stop))
        kept = (number for number in numbers if number in self._numbers)
        return PassingRows(self._cells, kept, here if columns is None else columns)

    def _has_content(self, number: int) -> bool:
        used = self._cells.row_columns(number)
        return bool(used) if self._columns is None else any(column in self._columns for column in used)


@dataclass
class View:
    """Rows and columns count from 0 in the view's own direction. `rows`: only those with content, in order;
    `joined_rows`: those whose content went into the row above them, and which leave no gap; `going_on`: those known to
    go on with the row above."""

    sheet: str
    rows: Mapping[int, dict[int, Cell]]
    merged: tuple[MergedRange, ...] = ()
    hidden_rows: frozenset[int] = frozenset()
    hidden_columns: frozenset[int] = frozenset()
    hidden: bool = False
    turned: bool = False
    joined_rows: frozenset[int] = frozenset()
    going_on: frozenset[int] = frozenset()

    @property
    def passing(self) -> bool:
        """The rows are made when asked for: do not keep them."""
        # Not isinstance: of an abstract mapping's class that is a long look, and rows ask for it again and again.
        return type(self.rows) is PassingRows

    @cached_property
    def order(self) -> list[int]:
        """Numbers of the rows with content, from the top."""
        return sorted(self.rows)

    @cached_property
    def spread(self) -> dict[tuple[int, int], Cell]:
        """For every covered position of a merged block, the cell that holds the block's value."""
        covered: dict[tuple[int, int], Cell] = {}
        for block in self.merged:
            cell = self.rows.get(block.top, {}).get(block.left)
            if cell is None or _area(block) > _LARGEST_SPREAD:
                continue
            for row in range(block.top, block.bottom + 1):
                for column in range(block.left, block.right + 1):
                    covered[row, column] = cell
        return covered

    def cell(self, row: int, column: int) -> Cell | None:
        """The cell at a position, without looking at merged blocks."""
        rows = self.rows
        if type(rows) is PassingRows:
            return rows.cell(row, column)
        found = rows.get(row)
        return None if found is None else found.get(column)

    def down(self, column: int, rows: Iterable[int]) -> Iterator[tuple[int, Cell]]:
        """Those of the rows that have a cell in a column, with it."""
        held = self.rows
        if type(held) is PassingRows:
            found = ((row, held.cell(row, column)) for row in rows)
            yield from ((row, cell) for row, cell in found if cell is not None)
            return
        for row in rows:
            cells = held.get(row)
            cell = None if cells is None else cells.get(column)
            if cell is not None:
                yield row, cell

    def columns_of(self, row: int) -> Collection[int]:
        """The columns of a row with content that have cells."""
        return self.rows.columns_of(row) if type(self.rows) is PassingRows else self.rows[row].keys()

    def spread_cell(self, row: int, column: int) -> Cell | None:
        """The cell at a position, or the one whose merged block covers it."""
        return self.cell(row, column) or self.spread.get((row, column))

    def span(self, cell: Cell) -> tuple[int, int]:
        """First and last column that a cell covers through merging, in this view."""
        row, column = (cell.column, cell.row) if self.turned else (cell.row, cell.column)
        block = self._blocks.get((row, column))
        return (column, column) if block is None else (block.left, block.right)

    def column_of(self, cell: Cell) -> int:
        """The column of a cell in this view."""
        return cell.row if self.turned else cell.column

    def is_hidden(self, row: int, column: int) -> bool:
        """Whether a position stands in a hidden row, column or sheet."""
        return self.hidden or row in self.hidden_rows or column in self.hidden_columns

    @cached_property
    def _blocks(self) -> dict[tuple[int, int], MergedRange]:
        return {(block.top, block.left): block for block in self.merged}


def views_of(grids: Sequence[Grid]) -> list[View]:
    """The sheets of a workbook as they stand."""
    in_all = sum(len(grid.cells) for grid in grids)
    return [view_of(grid, in_all) for grid in grids]


def view_of(grid: Grid, in_all: int | None = None) -> View:
    """A grid as it stands. `in_all`: how many cells its workbook has, where that has more sheets."""
    keep = (len(grid.cells) if in_all is None else in_all) <= _KEPT_CELLS
    return View(grid.sheet, _rows_of(grid, keep), grid.merged, grid.hidden_rows, grid.hidden_columns, grid.hidden)


def _rows_of(grid: Grid, keep: bool) -> Mapping[int, dict[int, Cell]]:
    if isinstance(grid.cells, ByRow):
        if not keep:
            return PassingRows(grid.cells, grid.cells.row_numbers())
        made = {number: _tidied_row(grid.cells, number) for number in grid.cells.row_numbers()}
        return {number: cells for number, cells in made.items() if cells}
    rows: dict[int, dict[int, Cell]] = {}
    for (row, column), cell in grid.cells.items():
        if _says_something(cell):
            rows.setdefault(row, {})[column] = tidied(cell)
    return rows


def _tidied_row(cells: ByRow, number: int) -> dict[int, Cell]:
    row = cells.row(number)
    # Only texts can be untidy or blank, and hardly any is.
    untidy = [cell for cell in row.values() if isinstance(cell.value, str) and _plain(cell.text) is not None]
    for cell in untidy:
        if _says_something(cell):
            row[cell.column] = tidied(cell)
        else:
            del row[cell.column]
    return row


def _says_something(cell: Cell) -> bool:
    return cell.fault is not None or bool(cell.text.strip())


_LEADERS = re.compile(r"(?:[._…·] ?){4,}")
"""What leads the eye from a board to its price: 'SBS C1S 18 pt ........ $1,248/ST'."""
_LONGEST_TEXT = 4000
"""Signs of one cell that are read: two pages of terms."""


def tidied(cell: Cell) -> Cell:
    """The cell with its text's spaces made plain: no-break and double spaces, and spaces at the ends, say nothing, nor
    do rows of dots. Wide spaces part what stands in a letterhead: behind a firm's name a stroke takes their place.

    Of a very long text the beginning is read: no list says its terms in more, and a spoilt one takes minutes.
    """
    if not isinstance(cell.value, str):
        return cell
    parted = letterhead_in_pieces(cell.text) if cell.row < _ROWS_OF_A_LETTERHEAD else None
    plain = _plain(cell.text) if parted is None else parted
    return cell if plain is None else cell._replace(value=plain, text=plain)


_ROWS_OF_A_LETTERHEAD, _LONGEST_HEAD = 3, 40


@lru_cache(maxsize=16384)
def _plain(text: str) -> str | None:
    """The text tidied, None where it is tidy."""
    if text and len(text) <= _LONGEST_TEXT and not _UNTIDY.search(text) and not _LEADERS.search(text):
        return None
    plain = _LEADERS.sub(" ", text[:_LONGEST_TEXT])
    plain = on_lines_of_their_own(plain) if len(plain) > _LONGEST_HEAD else plain
    return "\n".join(" ".join(line.split()) for line in plain.splitlines()).strip()


def part_of(view: View, rows: Iterable[int], columns: range | None = None) -> View:
    """A view of some rows, and of a band of columns of them, with its positions unchanged."""
    return replace(view, rows=_part_of_rows(view.rows, rows, columns))


def _part_of_rows(
    rows: Mapping[int, dict[int, Cell]], numbers: Iterable[int], columns: range | None
) -> Mapping[int, dict[int, Cell]]:
    if isinstance(rows, PassingRows):
        return rows.part(numbers, columns)
    kept = {number: _within(rows[number], columns) for number in numbers if number in rows}
    return {number: cells for number, cells in kept.items() if cells}


def without_cells(view: View, taken: Set[tuple[int, int]]) -> View:
    """The view without the cells at some positions, with the others where they are."""
    if not taken:
        return view
    rest = part_of(view, view.order)
    rest.rows = {
        row: left
        for row, cells in view.rows.items()
        if (left := {column: cell for column, cell in cells.items() if (row, column) not in taken})
    }
    return rest


def turned(view: View) -> View:
    """The view with rows and columns exchanged."""
    rows: dict[int, dict[int, Cell]] = {}
    for row, column, cell in _positions(view):
        rows.setdefault(column, {})[row] = cell
    blocks = tuple(MergedRange(block.left, block.top, block.right, block.bottom) for block in view.merged)
    return View(view.sheet, rows, blocks, view.hidden_columns, view.hidden_rows, view.hidden, not view.turned)


def _positions(view: View) -> Iterator[tuple[int, int, Cell]]:
    for row in sorted(view.rows):
        for column, cell in view.rows[row].items():
            yield row, column, cell


def _within(cells: dict[int, Cell], columns: range | None) -> dict[int, Cell]:
    return cells if columns is None else {column: cell for column, cell in cells.items() if column in columns}


def _area(block: MergedRange) -> int:
    return (block.bottom - block.top + 1) * (block.right - block.left + 1)
