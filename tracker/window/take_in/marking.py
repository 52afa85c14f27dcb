"""A table being marked by hand: what was said so far, and the layout it comes to."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from datetime import date
from typing import Any

from tracker.trade.layout import Layout, MarkedColumn
from tracker.window.take_in.cells import column_letters


@dataclass(frozen=True, slots=True)
class Marking:
    """Marks of one sheet of one file; rows and columns count from 0. None is not said yet, of `last_row` the end."""

    sheet: str = ""
    columns: dict[int, MarkedColumn] = field(default_factory=dict)
    header_row: int | None = None
    first_row: int | None = None
    last_row: int | None = None
    currency: str | None = None
    grade: str | None = None

    @property
    def priced(self) -> bool:
        return any(column.role == "price" for column in self.columns.values())

    def named(self, column: MarkedColumn) -> Marking:
        """With a column named, in the place of what it was."""
        return replace(self, columns={**self.columns, column.index: column})

    def unnamed(self, index: int) -> Marking:
        return replace(self, columns={at: column for at, column in self.columns.items() if at != index})

    def headed_by(self, row: int) -> Marking:
        """With the header in a row; offers begin below it unless they were said to begin further down."""
        first = self.first_row if self.first_row is not None and self.first_row > row else row + 1
        last = self.last_row if self.last_row is not None and self.last_row >= first else None
        return replace(self, header_row=row, first_row=first, last_row=last)

    def beginning_at(self, row: int) -> Marking:
        header = self.header_row if self.header_row is not None and self.header_row < row else None
        last = self.last_row if self.last_row is not None and self.last_row >= row else None
        return replace(self, header_row=header, first_row=row, last_row=last)

    def ending_at(self, row: int) -> Marking:
        first = self.first_row if self.first_row is not None and self.first_row <= row else None
        return replace(self, first_row=first, last_row=row)

    def layout(self, grid: Any, sha256: str, today: date) -> Layout | None:
        """The layout for that grid; None until it is known where offers begin and which column is the price."""
        if self.first_row is None or not self.priced:
            return None
        return Layout(
            self.sheet,
            sha256,
            tuple(self.columns[index] for index in sorted(self.columns)),
            self.first_row,
            self.header_row,
            self.last_row,
            _texts_of(grid, self.header_row),
            _text_after(grid, self.last_row),
            self.currency,
            self.grade,
            today,
        )

    @classmethod
    def of(cls, layout: Layout) -> Marking:
        """The marks that a layout was made from."""
        columns = {column.index: column for column in layout.columns}
        rows = layout.header_row, layout.first_row, layout.last_row
        return cls(layout.sheet, columns, *rows, layout.currency, layout.grade)

    def told(self, grid: Any) -> str:
        """What is marked and what is lacking, in a sentence or two."""
        if self.first_row is None:
            return "Go to the row with the columns' names and press Header; where there is none, press First."
        header = f"Header in row {self.header_row + 1}, offers" if self.header_row is not None else "Offers"
        until = f"to row {self.last_row + 1}" if self.last_row is not None else "to the end"
        if not self.priced:
            return f"{header} from row {self.first_row + 1} {until}. Now name the columns; the price is needed first."
        left = [column_letters(index) for index in _filled(grid, self) if index not in self.columns]
        rest = f" Not named, so not used: column{'s' if len(left) > 1 else ''} {', '.join(left)}." if left else ""
        return f"{header} from row {self.first_row + 1} {until}.{rest}"


def _texts_of(grid: Any, row: int | None) -> tuple[tuple[int, str], ...]:
    if row is None:
        return ()
    cells = ((column, grid.cells.get((row, column))) for column in range(grid.width))
    return tuple((column, cell.text) for column, cell in cells if cell is not None and cell.text.strip())


def _text_after(grid: Any, row: int | None) -> str:
    """The first text below a row, '' where there is none."""
    if row is None:
        return ""
    for below in range(row + 1, grid.height):
        texts = _texts_of(grid, below)
        if texts:
            return texts[0][1]
    return ""


def _filled(grid: Any, marking: Marking) -> list[int]:
    """Columns with anything in the first rows of offers."""
    first = marking.first_row or 0
    last = grid.height - 1 if marking.last_row is None else marking.last_row
    rows = range(first, min(last, first + 40) + 1)
    return [column for column in range(grid.width) if any((row, column) in grid.cells for row in rows)]
