"""Marks that a person made in an earlier sheet of the vendor: without a header row no other sheet is known by them, so
they are offered where the columns are filled alike, and used when the person says so."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import date
from typing import Any

from tracker.trade.layout import NOT_USED, Layout, MarkedColumn
from tracker.window.look.figures import counted, date_text
from tracker.window.take_in.marking import Marking

_IN_FIGURES = frozenset({"caliper", "weight", "price", "from_quantity", "below_quantity", "minimum", "freight"})
_FEWEST = 2
_FIGURE = re.compile(r"\d")


@dataclass(frozen=True, slots=True)
class EarlierMarks:
    """The marks as they come to lie in the sheet at hand, and the day they were made on."""

    marking: Marking
    marked_on: date | None

    @property
    def words(self) -> str:
        """What is offered, in a sentence."""
        day = f" on {date_text(self.marked_on)}" if self.marked_on is not None else ""
        columns = counted(len(self.marking.columns), "column")
        first = (self.marking.first_row or 0) + 1
        return f"You marked an earlier sheet of this vendor{day}; its {columns} fit here, from row {first} on."


def earlier_marks(grids: Iterable[Any], sha256: str, layouts: Iterable[Layout]) -> EarlierMarks | None:
    """The first of the vendor's layouts without a header row that fits a sheet of this file; None where one was marked
    in it already."""
    layouts, grids = tuple(layouts), tuple(grids)
    if any(layout.of_file == sha256 for layout in layouts):
        return None
    for layout in layouts:
        for grid in () if layout.serves_others else grids:
            rows = _rows_filled_alike(grid, layout)
            if rows:
                marking = Marking.of(layout)
                last = rows[-1] if layout.last_row is not None else None
                marking = replace(marking, sheet=grid.sheet, header_row=None, first_row=rows[0], last_row=last)
                return EarlierMarks(marking, layout.marked_on)
    return None


def _rows_filled_alike(grid: Any, layout: Layout) -> list[int]:
    """The rows with something in every column that was used, and figures where there were figures; none where the sheet
    has other columns filled in them than the one that was marked."""
    used = [column for column in layout.columns if column.role != NOT_USED]
    rows = [row for row in range(grid.height) if all(_fits(grid, row, column) for column in used)]
    width = max((column for _, column in grid.cells), default=0)
    reaches = max((column.index for column in layout.columns), default=0)
    return rows if len(rows) >= _FEWEST and reaches <= width else []


def _fits(grid: Any, row: int, column: MarkedColumn) -> bool:
    cell = grid.cells.get((row, column.index))
    if cell is None or not cell.text.strip():
        return False
    return column.role not in _IN_FIGURES or _FIGURE.match(cell.text.strip().lstrip("$€£ ")) is not None
