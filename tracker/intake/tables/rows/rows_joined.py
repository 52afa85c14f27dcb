"""Pairs of rows at the top of a sheet that say one thing between them, made whole before the sheet is read."""

from collections.abc import Callable
from dataclasses import replace
from itertools import pairwise

from tracker.intake.grid import Cell
from tracker.intake.tables.view import View

Cells = dict[int, Cell]
_LOOKED_AT = 60


def with_rows_joined(view: View, join: Callable[[Cells, Cells], tuple[Cells, Cells] | None]) -> View:
    """The view with both rows of each pair as `join` makes them, rows left without cells gone; None leaves a pair."""
    if view.passing:
        return view
    joined: dict[int, Cells] = {}
    for upper, lower in pairwise(view.order[:_LOOKED_AT]):
        if lower != upper + 1 or upper in joined:
            continue
        made = join(view.rows[upper], view.rows[lower])
        if made is not None:
            joined[upper], joined[lower] = made
    if not joined:
        return view
    return replace(view, rows={row: cells for row in view.order if (cells := joined.get(row, view.rows[row]))})
