"""The columns under a header of several rows, each with the texts that stand above it."""

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import is_bare_number
from tracker.intake.tables.table import HeadedColumn
from tracker.intake.tables.view import View


def headed_columns(view: View, rows: list[int]) -> list[HeadedColumn]:
    """Every column of the header in these rows, with the texts above it from the top down.

    Upper cells run right over blanks as far as lower heads go.
    """
    indices = sorted({column for row in rows for column in view.rows[row]})
    columns = []
    for index in _with_merged(view, rows, indices):
        heads: list[Cell] = []
        for level in range(len(rows)):
            cell = _head_over(view, rows, level, index)
            if cell is not None and cell not in heads:
                heads.append(cell)
        columns.append(HeadedColumn(index, tuple(heads)))
    return columns


def _with_merged(view: View, rows: list[int], indices: list[int]) -> list[int]:
    """Columns covered by a header's merged block count, so that a blank column inside a group keeps its place."""
    lowest = rows[-1]
    covered = {column for column in range(indices[0], indices[-1] + 1) if (lowest, column) in view.spread}
    return sorted(covered.union(indices))


def _head_over(view: View, rows: list[int], level: int, index: int) -> Cell | None:
    row = rows[level]
    cell = view.spread_cell(row, index)
    if cell is not None or level == len(rows) - 1:
        return cell
    # A group's word set over its first column only: it runs right while lower rows have words of their own.
    if not any(view.cell(lower, index) is not None for lower in rows[level + 1 :]):
        return None
    before = [column for column in view.rows[row] if column < index]
    if not before:
        return None
    nearest = view.rows[row][max(before)]
    if view.span(nearest)[1] > view.span(nearest)[0]:
        return None
    return nearest if _is_group(view, rows, level, max(before), index) else None


def _is_group(view: View, rows: list[int], level: int, start: int, index: int) -> bool:
    """Whether the cell at `start` heads a group that reaches `index`: lower rows have words in every column between."""
    below = rows[level + 1 :]
    if _is_figure(view, rows[level], start) and _is_figure(view, below[0], start):
        # The 231 over '18' is of that figure, and not of the 'New core' or the '20' right of it.
        return False
    return all(any(view.spread_cell(row, column) is not None for row in below) for column in range(start, index + 1))


def _is_figure(view: View, row: int, column: int) -> bool:
    cell = view.spread_cell(row, column)
    return cell is not None and is_bare_number(cell)
