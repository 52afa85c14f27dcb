"""Boards on two lines: 'GC1 Faltschachtelkarton | 1204' with '250 g/m², 405 µm' on the line below it.

Such a line stands where a heading for the next board would, and says of the wrong board what it measures unless it is
told from one: no board stands without a line below it, and none of the lines stands above the first board.
"""

from collections.abc import Collection, Sequence
from dataclasses import replace

from tracker.intake.grid import Cell
from tracker.intake.tables.body import Body
from tracker.intake.tables.view import View
from tracker.intake.values.caliper import find_calipers
from tracker.intake.values.grade import find_grade
from tracker.intake.values.weight import find_weights

_FEWEST = 2


def with_second_lines(view: View, rows: Sequence[int], body: Body) -> View | None:
    """The view with each second line joined to its board's own, and gone from where it stood; None without such lines.

    `rows`: those below the table's header; `body`: which of them hold boards.
    """
    boards = [row.index for row in body.rows]
    if view.passing or len(boards) < _FEWEST or not _all_have_one(view, boards):
        return None
    others = set(rows) - set(boards)
    if boards[0] - 1 in others and _describes(view.rows[boards[0] - 1]):
        return None
    if not all(_fits(view.rows[board], view.rows[board + 1]) for board in boards):
        return None
    joined = {board: _joined(view.rows[board], view.rows[board + 1]) for board in boards}
    lines = {board + 1 for board in boards}
    left = {row: joined.get(row, cells) for row, cells in view.rows.items() if row not in lines}
    return replace(view, rows=left)


def _all_have_one(view: View, boards: Collection[int]) -> bool:
    return all(board + 1 not in boards and _describes(view.rows.get(board + 1, {})) for board in boards)


def _describes(cells: dict[int, Cell]) -> bool:
    """Words alone, with a grade or a measure of board among them."""
    if not cells or not all(isinstance(cell.value, str) for cell in cells.values()):
        return False
    return any(_measures(cell.text) or _names_grade(cell.text) for cell in cells.values())


def _measures(text: str) -> bool:
    return bool(find_weights(text) or find_calipers(text))


def _names_grade(text: str) -> bool:
    grade = find_grade(text)
    return grade is not None and bool(grade.grades)


def _fits(board: dict[int, Cell], line: dict[int, Cell]) -> bool:
    """No words stand below a figure, which they would be no part of."""
    return all(column not in board or isinstance(board[column].value, str) for column in line)


def _joined(board: dict[int, Cell], line: dict[int, Cell]) -> dict[int, Cell]:
    """The board's cells with the words below them behind their own."""
    cells = dict(board)
    for column, below in line.items():
        own = cells.get(column)
        text = below.text if own is None else f"{own.text}\n{below.text}"
        cells[column] = below if own is None else own._replace(value=text, text=text)
    return cells
