"""Remarks on boards in a column of their own, with an empty one before it and no head: 'Lead time 4 weeks' beside one
board and 'Delivered' beside the next are each said of that board."""

from tracker.intake.tables.figures import is_figure
from tracker.intake.tables.view import View
from tracker.intake.values.firms.company import company_name
from tracker.intake.values.notes.statements import statements
from tracker.intake.words.lists import joined

_FEWEST_FIGURES = 2
"""Of a board in its row: its size or weight, and its price."""
_LONGEST = 60
_OF_ALL = ("all_of_them", "price_words", "price_lists", "list_names", "these_prices")


def remarks_rows(part: View, view: View) -> bool:
    """Whether a stretch of words right of a table holds such remarks: each beside a board, none said of all prices, and
    terms among them."""
    columns = {column for cells in part.rows.values() for column in cells}
    if len(columns) != 1:
        return False
    (column,) = columns
    cells = [part.rows[row][column] for row in part.order]
    if not all(_is_of_a_board(view, row, column) for row in part.order):
        return False
    if any(len(cell.text) > _LONGEST or joined(*_OF_ALL).find(cell.text) or company_name(cell.text) for cell in cells):
        return False
    return 2 * sum(bool(statements(cell.text)) for cell in cells) >= len(cells)


def _is_of_a_board(view: View, row: int, column: int) -> bool:
    left = [cell for at, cell in view.rows[row].items() if at < column]
    # '18 pt' measures it, too.
    told = sum(is_figure(cell) or any(map(str.isdigit, cell.text)) for cell in left)
    return told >= _FEWEST_FIGURES and any(map(is_figure, left))
