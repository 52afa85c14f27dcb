"""Rows below a group's word: 'Northport | Lake Hollow' under 'Delivered to', the units of other columns beside them."""

from collections.abc import Collection, Sequence

from tracker.intake.tables.figures import is_figure
from tracker.intake.tables.headers.heads import Head
from tracker.intake.tables.view import View

_FEWEST = 2
_NEXT_ROWS = 2


def under_group(view: View, main: int, columns: Collection[int]) -> bool:
    """Whether all these columns stand under header cells that are merged or run to the right over blanks."""
    if not all(_is_grouped(view, main, column) for column in columns):
        return False
    return len(columns) >= _FEWEST or all(view.cell(main, column) is None for column in columns)


def beside_units(view: View, main: int, row: int, heads: Sequence[Head]) -> bool:
    """Whether a row parts one group of columns by words and says the units of the columns beside it: 'pt | lb/MSF |
    Northport | Lake Hollow' under 'Caliper | Basis weight | Delivered to', with figures under each word."""
    columns = list(view.rows[row])
    own = [column for column in columns if view.cell(main, column) is not None and not _is_grouped(view, main, column)]
    grouped = [column for column in columns if column not in own]
    units = all(head.unit for column, head in zip(columns, heads, strict=True) if column in own)
    if not own or not units or len(grouped) < _FEWEST or not under_group(view, main, grouped):
        return False
    one_group = len({_group_over(view, main, column) for column in grouped}) == 1
    return one_group and _heads_figures(view, row, grouped)


def _heads_figures(view: View, row: int, columns: Collection[int]) -> bool:
    """Of the next rows, below which a board may stand as a sub-heading, one has a figure under each word."""
    following = (view.rows.get(row + step, {}) for step in range(1, _NEXT_ROWS + 1))
    return any(all(column in cells and is_figure(cells[column]) for column in columns) for cells in following)


def _is_grouped(view: View, main: int, column: int) -> bool:
    cell = view.cell(main, column)
    if cell is None:
        return _runs_over(view, main, column)
    left, right = view.span(cell)
    return right > left or view.spread_cell(main, column + 1) is None


def _group_over(view: View, main: int, column: int) -> int:
    """The column in which the head that covers this one stands."""
    return max((left for left in view.rows[main] if left <= column), default=column)


def _runs_over(view: View, row: int, column: int) -> bool:
    """Whether a header cell further left covers this column: merged over it, or with only blanks between."""
    return (row, column) in view.spread or any(left < column for left in view.rows.get(row, {}))
