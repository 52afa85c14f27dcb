"""Sentences that go on in the row below: 'Sheets that are larger than 28 x 40 in,' over 'carry a surcharge of 3 %'.

Read by itself the second row is said of everything.
"""

from dataclasses import replace
from itertools import pairwise

from tracker.intake.grid import Cell
from tracker.intake.tables.view import View

_FEWEST_WORDS = 4
"""A head that ends in a comma has fewer: 'Price,' over 'in EUR'."""


def with_sentences_on_one_row(view: View) -> View:
    """The view with each such sentence whole where it begins. It stands alone in its rows, or last in them and apart
    from the table beside it."""
    if view.passing:
        return view
    taken: dict[int, Cell] = {}
    begun: dict[int, int] = {}
    for upper, lower in pairwise(view.order):
        column = max(view.rows[upper])
        first = begun.get(upper, upper)
        above = taken.get(first, view.rows[upper][column])
        if lower != upper + 1 or max(view.rows[lower]) != column or not _apart(view, upper, column):
            continue
        below = view.rows[lower][column]
        if _apart(view, lower, column) and _goes_on(above, below):
            text = f"{above.text.rstrip()} {below.text.strip()}"
            taken[first] = above._replace(value=text, text=text, comment=above.comment or below.comment)
            begun[lower] = first
    if not taken:
        return view
    rows = {row: dict(view.rows[row]) for row in view.order}
    for row in begun:
        del rows[row][max(rows[row])]
    for row, cell in taken.items():
        rows[row][cell.column] = cell
    left = {row: cells for row, cells in rows.items() if cells}
    return replace(view, rows=left, joined_rows=view.joined_rows | (rows.keys() - left.keys()))


def _apart(view: View, row: int, column: int) -> bool:
    return column - 1 not in view.rows[row]


def _goes_on(above: Cell, below: Cell) -> bool:
    """Whether words end in a comma and those below begin with a small letter, both too long for heads."""
    if not (isinstance(above.value, str) and isinstance(below.value, str)):
        return False
    upper, lower = above.text.strip(), below.text.strip()
    long = min(len(upper.split()), len(lower.split())) >= _FEWEST_WORDS
    return long and upper.endswith(",") and lower[:1].islower()
