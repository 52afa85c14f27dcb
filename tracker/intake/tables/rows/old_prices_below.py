"""Earlier prices on a board's second line: '1.148,00' over '(bisher 1.121,00)', below which no other board begins."""

import re
from dataclasses import replace
from decimal import Decimal
from itertools import pairwise

from tracker.intake.grid import Cell
from tracker.intake.tables.figures import is_figure
from tracker.intake.tables.rows.rows_joined import Cells
from tracker.intake.tables.view import View
from tracker.intake.values.boards.grade import names_grade
from tracker.intake.values.prices.money import price_text
from tracker.intake.values.prices.was_now import earlier_price_alone

_LONGEST = 40
_BEGINS_A_PRICE = re.compile(r"\s*(?:[A-Z]{3}\s|kr\s|[$€£])?\s*[.,]?\d")


def without_old_prices_below(view: View) -> View:
    """The view without each price that a word calls an earlier one, right below the price that came after it: nobody
    offers it, and what stands beside it describes the board above."""
    if view.passing:
        return view
    left: dict[int, Cells] = {}
    for upper, lower in pairwise(view.order):
        old = _old_prices(view.rows[upper], view.rows[lower]) if lower == upper + 1 else set()
        if old:
            left[lower] = {column: cell for column, cell in view.rows[lower].items() if column not in old}
    if not left:
        return view
    rows = {row: cells for row in view.order if (cells := left.get(row, view.rows[row]))}
    return replace(view, rows=rows, going_on=view.going_on | left.keys())


def _old_prices(upper: Cells, lower: Cells) -> set[int]:
    """The columns of the lower row where such a price stands, with nothing but words beside it. A line that names a
    grade is a board of its own, where the one above names one too."""
    # Only a text says that it was a price: of a long list most cells are passed at the first look.
    old = {
        column
        for column, cell in lower.items()
        if type(cell.value) is str and column in upper and _precedes(cell, upper[column])
    }
    others = [cell for column, cell in lower.items() if column not in old] if old else []
    if not all(isinstance(cell.value, str) and not is_figure(cell) and not _is_old(cell) for cell in others):
        return set()
    own = any(names_grade(cell.text) for cell in others)
    return set() if own and any(names_grade(cell.text) for cell in upper.values()) else old


def _precedes(below: Cell, price: Cell) -> bool:
    """The two are of a height: '(before 10.11)' is a day."""
    if not (isinstance(price.value, Decimal) or _BEGINS_A_PRICE.match(price.text)):
        # Nearly all texts of a long list are below words.
        return False
    old = _figures(earlier_price_alone(below.text)) if _is_old(below) else []
    return any(new < 2 * was and was < 2 * new for was in old for new in _figures(price.text))


def _is_old(cell: Cell) -> bool:
    return isinstance(cell.value, str) and len(cell.text) <= _LONGEST and bool(earlier_price_alone(cell.text))


def _figures(text: str) -> list[Decimal]:
    """The readings of a text that is a price and nothing else."""
    price = price_text(text)
    return [] if price is None or price.rest else [amount.value for amount in price.amounts]
