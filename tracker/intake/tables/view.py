"""A sheet as rows of cells, the way round it is read: as it stands, or turned so that its columns become rows.

Cells keep the address they have in the vendor's file, so what is found in a turned view still points at the right cell.
"""

import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property, lru_cache
from typing import Protocol, runtime_checkable

from tracker.intake.grid import Cell, Grid, MergedRange

_LARGEST_SPREAD = 20_000
"""A merged block of more cells than this is decoration; spreading it would only cost memory."""

_KEPT_CELLS = 450_000
"""Up to so many cells are made once and kept; of larger sheets a row is made each time it is asked for."""

_UNTIDY = re.compile(r"^\s|\s$|  |[^\S \n]|\s\n|\n\s")


@runtime_checkable
class ByRow(Protocol):
    """Cells that can be asked for row by row."""

    def row_numbers(self) -> Iterable[int]: ...
    def row(self, number: int) -> dict[int, Cell]: ...


class PassingRows(Mapping[int, dict[int, Cell]]):
    """The rows of a long sheet, made when asked for and not kept, so that memory stays flat."""

    def __init__(self, cells: ByRow) -> None:
        self._cells = cells
        self._numbers = dict.fromkeys(cells.row_numbers())

    def __getitem__(self, number: int) -> dict[int, Cell]:
        if number not in self._numbers:
            raise KeyError(number)
        return {column: tidied(cell) for column, cell in self._cells.row(number).items()}

    def __contains__(self, number: object) -> bool:
        return number in self._numbers

    def __iter__(self) -> Iterator[int]:
        return iter(self._numbers)

    def __len__(self) -> int:
        return len(self._numbers)


@dataclass
class View:
    """Rows and columns count from 0 in the view's own direction. `rows` holds only rows with content, in order."""

    sheet: str
    rows: Mapping[int, dict[int, Cell]]
    merged: tuple[MergedRange, ...] = ()
    hidden_rows: frozenset[int] = frozenset()
    hidden_columns: frozenset[int] = frozenset()
    hidden: bool = False
    turned: bool = False

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
        found = self.rows.get(row)
        return None if found is None else found.get(column)

    def spread_cell(self, row: int, column: int) -> Cell | None:
        """The cell at a position, or the one whose merged block covers it."""
        return self.cell(row, column) or self.spread.get((row, column))

    def span(self, cell: Cell) -> tuple[int, int]:
        """First and last column that a cell covers through merging, in this view."""
        row, column = (cell.column, cell.row) if self.turned else (cell.row, cell.column)
        block = self._blocks.get((row, column))
        return (column, column) if block is None else (block.left, block.right)

    def is_hidden(self, row: int, column: int) -> bool:
        """Whether a position stands in a hidden row, column or sheet."""
        return self.hidden or row in self.hidden_rows or column in self.hidden_columns

    @cached_property
    def _blocks(self) -> dict[tuple[int, int], MergedRange]:
        return {(block.top, block.left): block for block in self.merged}


def view_of(grid: Grid) -> View:
    """A grid as it stands."""
    return View(grid.sheet, _rows_of(grid), grid.merged, grid.hidden_rows, grid.hidden_columns, grid.hidden)


def _rows_of(grid: Grid) -> Mapping[int, dict[int, Cell]]:
    if len(grid.cells) > _KEPT_CELLS and isinstance(grid.cells, ByRow):
        return PassingRows(grid.cells)
    rows: dict[int, dict[int, Cell]] = {}
    number = -1
    for cell in grid.cells.values():
        if cell.fault is not None or cell.text.strip():
            if cell.row != number:
                number = cell.row
                here = rows.setdefault(number, {})
            here[cell.column] = tidied(cell)
    return rows


def tidied(cell: Cell) -> Cell:
    """The cell with its text's spaces made plain: no-break and double spaces, and spaces at the ends, say nothing."""
    if not isinstance(cell.value, str):
        return cell
    plain = _plain(cell.text)
    return cell if plain is None else cell._replace(value=plain, text=plain)


@lru_cache(maxsize=16384)
def _plain(text: str) -> str | None:
    """The text tidied, None where it is tidy."""
    if not _UNTIDY.search(text):
        return None
    return "\n".join(" ".join(line.split()) for line in text.splitlines()).strip()


def part_of(view: View, rows: Iterable[int], columns: range | None = None) -> View:
    """A view of some rows, and of a band of columns of them, with its positions unchanged."""
    kept = {row: _within(view.rows[row], columns) for row in rows if row in view.rows}
    return View(
        view.sheet,
        {row: cells for row, cells in kept.items() if cells},
        view.merged,
        view.hidden_rows,
        view.hidden_columns,
        view.hidden,
        view.turned,
    )


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
