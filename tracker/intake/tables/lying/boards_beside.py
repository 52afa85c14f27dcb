"""A board's name left of a table that lies on its side: 'GC1' beside 'g/m² | 230 | 250', and below it µm and prices."""

from tracker.intake.tables.lying.turned import Labels
from tracker.intake.tables.view import View
from tracker.intake.values.boards.board_words import names_only_board
from tracker.intake.values.boards.grade import names_grade

_WIDEST_GAP = 2


def rows_named_beside(view: View, run: Labels) -> frozenset[int]:
    """The row of the labels that has such a name right before it, where no other has anything there."""
    before = {
        row: [cell for column, cell in view.rows[row].items() if column < run.column] for row in run.rows
    }  # fmt: skip
    named = [row for row, cells in before.items() if cells]
    if len(named) != 1 or len(before[named[0]]) != 1:
        return frozenset()
    (cell,) = before[named[0]]
    near = run.column - cell.column <= _WIDEST_GAP
    board = near and isinstance(cell.value, str) and names_only_board(cell.text) and names_grade(cell.text)
    return frozenset(named) if board else frozenset()
