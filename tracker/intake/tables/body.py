"""The rows below a header: which hold figures, which are sub-headings for the rows after them, which are notes.

A row of words alone is a sub-heading when rows with figures follow it and a note when none do.
"""

from collections.abc import Iterable
from dataclasses import dataclass, field

from tracker.intake.grid import Cell
from tracker.intake.tables.heads import looks_priced
from tracker.intake.tables.table import BodyRow, Words
from tracker.intake.tables.view import View
from tracker.intake.tables.words import words_of


@dataclass
class Body:
    """Rows with figures, each with its sub-headings, and the rows of words that follow the last of them."""

    rows: list[BodyRow] = field(default_factory=list)
    after: list[int] = field(default_factory=list)


def body_of(view: View, rows: Iterable[int], valued: frozenset[int]) -> Body:
    """Rows of one table below its header. `valued`: the columns where prices stand."""
    body = Body()
    pending: list[int] = []
    headings: tuple[tuple[Words, ...], ...] = ()
    last: int | None = None
    for row in rows:
        cells = view.rows[row]
        if not _has_figures(cells, valued):
            pending.append(row)
            continue
        if pending:
            headings = (*headings, tuple(words_of(view, pending)))
            pending = []
        body.rows.append(BodyRow(row, headings, last is not None and row > last + 1))
        last = row
    body.after = pending
    return body


def _has_figures(cells: dict[int, Cell], valued: frozenset[int]) -> bool:
    """Something stands in a price column, beside or instead of what describes the board."""
    priced = [cells[column] for column in valued if column in cells]
    if any(looks_priced(cell) for cell in priced):
        return True
    # 'call' or a dash beside a board counts; a heading that happens to stand in a price column is alone.
    return bool(priced) and len(cells) > len(priced)
