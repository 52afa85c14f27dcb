"""Labels with their values beside each other: more of a form to the right of its first ('Grade | SBS | Caliper | 14 pt'
over 'Price | 1175')."""

from collections.abc import Iterator
from dataclasses import dataclass

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import head_of
from tracker.intake.tables.lying.label_units import Place
from tracker.intake.tables.lying.labels import is_label
from tracker.intake.tables.lying.turned import Labels
from tracker.intake.tables.view import View

_FEWEST = 2


@dataclass(frozen=True, slots=True)
class Pair:
    """A label and the value right beside it, with their places."""

    label: Cell
    value: Cell
    places: tuple[Place, Place]


def pairs_beside(view: View, run: Labels) -> list[Pair]:
    """What the columns of labels beside a form of one board say of it.

    Those say something of a board that the form does not, and no price: a card of its own says both.
    """
    values = {at for row in run.rows for at in view.rows[row] if run.column < at <= run.right}
    values -= {at for _, at in run.units}
    if len(values) != 1:
        return []
    said = {head.role for row in run.rows if (head := head_of(view.rows[row][run.column])) is not None}
    found: list[Pair] = []
    for column in sorted({at for row in run.rows for at in view.rows[row] if at > run.right}):
        pairs = list(_pairs(view, run, column))
        heads = [head for pair in pairs if (head := head_of(pair.label)) is not None]
        of_board = any(head.board for head in heads) and not any(head.price or head.role in said for head in heads)
        if len(pairs) >= _FEWEST and of_board:
            found += pairs
    return found


def _pairs(view: View, run: Labels, column: int) -> Iterator[Pair]:
    for row, label in view.down(column, run.rows):
        value = view.cell(row, column + 1)
        if value is not None and is_label(label) and not is_label(value):
            yield Pair(label, value, ((row, column), (row, column + 1)))


def with_pairs(side: View, run: Labels, pairs: list[tuple[Cell, Cell]]) -> View:
    """The turned form with a column for each of these labels and values, behind all columns of its own."""
    for place, (label, value) in enumerate(pairs, start=_BEYOND):
        for line in side.rows:
            side.rows[line][place] = label if line == run.column else value
    return side


_BEYOND = 2_000_000
"""More rows than a sheet has: a turned form has its rows as columns."""
