"""Boxes of terms to the right of a table: 'Unsere Konditionen' over 'Lieferung frei Haus' and 'Gültig bis 15. Oktober',
line by line beside the boards, of which each line is said of all."""

from collections import Counter
from itertools import pairwise

from tracker.intake.tables.figures import is_figure
from tracker.intake.tables.table import Words
from tracker.intake.tables.view import View, part_of, without_cells
from tracker.intake.tables.words import words_of
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.notes.statements import statements
from tracker.intake.words.lists import phrases

_FEWEST, _MOST = 2, 16
"""Lines; a longer list beside the boards has one for each of them."""
_WIDEST_GAP = 2
_AROUND = " *~-–—:.!•·=_"


def with_terms_apart(view: View) -> tuple[View, list[Words]]:
    """The sheet without such a box, and what its lines say of all boards; the sheet as it is where it has none."""
    if view.passing:
        return view, []
    last = max((column for cells in view.rows.values() for column in cells), default=0)
    for column in range(_FEWEST, last + 1):
        box = part_of(view, view.order, range(column, last + 1))
        if _FEWEST <= len(box.order) <= _MOST and _is_box(view, box, column):
            taken = {(row, index) for row, cells in box.rows.items() for index in cells}
            return without_cells(view, taken), words_of(box, box.order)
    return view, []


def _is_box(view: View, box: View, column: int) -> bool:
    rows = box.order
    if any(lower - upper > _WIDEST_GAP for upper, lower in pairwise(rows)):
        return False
    figures = any(is_figure(cell) for cells in box.rows.values() for cell in cells.values())
    if figures or not _stands_beside_boards(view, rows, column):
        return False
    head, *lines = words_of(box, rows)
    headed = phrases("terms_heads").whole(head.text.strip(_AROUND)) is not None
    parted = not any(column - 1 in view.rows[row] for row in rows)
    return (headed or parted) and _tell_different_terms(lines if headed else [head, *lines])


def _stands_beside_boards(view: View, rows: list[int], column: int) -> bool:
    """Whether figures stand to the left of some lines, right below each other."""
    beside = [row for row in rows if sum(is_figure(cell) for at, cell in view.rows[row].items() if at < column) > 1]
    return len(beside) >= _FEWEST and beside[0] + 1 == beside[1]


def _tell_different_terms(lines: list[Words]) -> bool:
    """Freight, validity, a smallest order: each once. Remarks on boards tell the same of several of them."""
    # 'Carriage extra at £18.50' says in passing that prices are without it.
    told = [{type(one) for one in statements(words.text)} for words in lines]
    kinds = Counter(kind for one in told for kind in one if not (kind is Delivery and ChargeWords in one))
    return len(kinds) >= _FEWEST and max(kinds.values()) == 1
