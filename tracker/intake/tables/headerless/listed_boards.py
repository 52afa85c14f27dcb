"""Boards described in one cell with a bare figure in the next, or alone over the sizes of orders for them, each with a
bare figure, under words that say what prices are in."""

from collections.abc import Iterable
from dataclasses import replace
from itertools import pairwise

from tracker.intake.grid import Cell
from tracker.intake.tables.figures import is_figure
from tracker.intake.tables.headerless.headless import describes_board_whole, says_price
from tracker.intake.tables.view import View
from tracker.intake.values.boards.caliper import find_calipers
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.weight import find_weights
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.orders.brackets import bracket_text
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency

_FEWEST = 2
_DESCRIBED = 2


def figured_rows(view: View, priced: Iterable[int]) -> list[int]:
    """'C1S 12pt 52#/MSF | 63.40' below 'US$ per cwt', all in the columns of the rows whose prices say what they are in
    (`priced`), where there are such."""
    if view.passing:
        return []
    rows = [row for row in view.order if _is_board_and_figure(view, row)]
    alike = [*rows, *(row for row in priced if len(view.rows[row]) == _DESCRIBED)]
    if not rows or len(alike) < _FEWEST or len({tuple(sorted(view.rows[row])) for row in alike}) > 1:
        return []
    return rows if _says_what_prices_are_in(view, min(alike)) else []


def _says_what_prices_are_in(view: View, below: int) -> bool:
    above = (cell.text for row in view.order if row < below for cell in view.rows[row].values())
    kinds = {type(said) for text in above for said in statements(text)}
    return {SaysCurrency, SaysBasis} <= kinds


def sized_rows(view: View) -> list[int]:
    """The boards and the rows below them of 'GC1 – 250 g/m² – 410 µm' alone over 'under 1,000 kg | 1330' and '1,000 kg
    and more | 1275', where every order size stands below a board and every figure in one column.

    Among them may stand other words with a figure: a bare size, a board with its one price, what sheeting costs. A
    board right over another has no prices, and is left out.
    """
    if view.passing:
        return []
    boards = [row for row in view.order if _is_a_board_alone(view, row)]
    sizes = [row for row in view.order if _is_size_and_figure(view, row)]
    if not boards or len(sizes) < _FEWEST or len({tuple(sorted(view.rows[row])) for row in sizes}) > 1:
        return []
    first, columns = min(boards), sorted(view.rows[sizes[0]])
    alike = [row for row in view.order if row > first and sorted(view.rows[row]) == columns and _is_priced(view, row)]
    last = max(alike, default=max(sizes))
    between = [row for row in view.order if first < row < last and row not in {*boards, *alike}]
    plain = all(says_price(view.rows[row][max(view.rows[row])]) for row in sizes)
    if min(sizes) < first or between or not (plain or _says_what_prices_are_in(view, first)):
        return []
    own = [row for row in view.order if row in {*boards, *alike} and row <= last]
    return [row for row, after in pairwise((*own, -1)) if not (row in boards and (after in boards or after < 0))]


def with_boards_apart(view: View, rows: Iterable[int]) -> View:
    """The rows with a board that has one price in a column of its own, so that no order size is asked of it."""
    own = max(column for cells in view.rows.values() for column in cells) + 1
    apart = {row: sorted(view.rows[row].items()) for row in rows if _is_board_and_figure(view, row)}
    moved = {row: {column: figure, own: board} for row, ((_, board), (column, figure)) in apart.items()}
    return replace(view, rows={**view.rows, **moved}) if moved else view


def _is_a_board_alone(view: View, row: int) -> bool:
    return len(view.rows[row]) == 1 and describes_board_whole(view.rows[row].values())


def _is_priced(view: View, row: int) -> bool:
    """Words and a figure."""
    words, figure = (cell for _, cell in sorted(view.rows[row].items()))
    return isinstance(words.value, str) and (is_figure(figure) or says_price(figure))


def _is_size_and_figure(view: View, row: int) -> bool:
    if len(view.rows[row]) != _DESCRIBED or not _is_priced(view, row):
        return False
    said = bracket_text(view.rows[row][min(view.rows[row])].text)
    return said is not None and not said.alone


def _is_board_and_figure(view: View, row: int) -> bool:
    if len(view.rows[row]) != _DESCRIBED:
        return False
    board, figure = (cell for _, cell in sorted(view.rows[row].items()))
    return is_figure(figure) and not says_price(figure) and _describes_plainly(board)


def _describes_plainly(cell: Cell) -> bool:
    """A board's grade with a measure, or both its measures: '18 pt' and 'SBS' alone may head something."""
    if not isinstance(cell.value, str) or says_price(cell):
        return False
    return describes_board_whole([cell]) or bool(find_calipers(cell.text) and find_weights(cell.text))


def heading_above(view: View, row: int) -> list[int]:
    """'SBS' alone right above the first of some boards, as other grades stand above those below them."""
    place = view.order.index(row)
    above = view.order[place - 1] if place else None
    if above is None or len(view.rows[above]) != 1 or min(view.rows[above]) != min(view.rows[row]):
        return []
    (cell,) = view.rows[above].values()
    grade = find_grade(cell.text) if isinstance(cell.value, str) else None
    alone = grade is not None and bool(grade.grades) and not statements(cell.text)
    return [above] if alone else []
