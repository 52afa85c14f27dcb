"""Rows below a header that tell the weight or caliper of each column: 'Grammage g/m² | 250 | 300' under 'GC1 | GC2'."""

from collections.abc import Sequence
from decimal import Decimal

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import Head
from tracker.intake.tables.view import View
from tracker.intake.values.boards.caliper import in_unit
from tracker.intake.values.boards.weight import weight_in
from tracker.intake.values.heads.header import Header, header

_LIGHTEST, _HEAVIEST = 80, 3000
"""g/m², beyond any board; common practice, no source."""
_THINNEST, _THICKEST = 100, 3000
"""µm, likewise."""


def measures_across(view: View, main: int, row: int, heads: Sequence[Head]) -> bool:
    """Whether a row's first cell names a measure of board by its unit, and each column of the header has one of it."""
    label, *figures = view.rows[row].values()
    numbers = [head.number for head in heads[1:]]
    if len(figures) < 2 or heads[0].number is not None or not all(_under_a_head(view, main, cell) for cell in figures):
        return False
    said = header(label.text)
    named = said.currency is None and not said.calipers and not said.weights
    return named and all(number is not None and _can_be(said, number) for number in numbers)


def _under_a_head(view: View, main: int, cell: Cell) -> bool:
    return view.spread_cell(main, cell.column) is not None


def _can_be(said: Header, number: Decimal) -> bool:
    """Whether a board can measure so much in the unit that a label names."""
    if said.caliper_unit is not None and not said.weight_units:
        return _THINNEST <= in_unit(number, said.caliper_unit, "").um <= _THICKEST
    if len(said.weight_units) == 1 and said.caliper_unit is None:
        return _LIGHTEST <= weight_in(number, said.weight_units[0], "").gsm <= _HEAVIEST
    return False
