"""Order sizes of a column that go on in the row below: 'from 5,000 lb | 63.90' over 'to less than 20,000 lb'."""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import pairwise

from tracker.intake.grid import Cell
from tracker.intake.tables.figures import is_figure
from tracker.intake.tables.rows.rows_joined import Cells
from tracker.intake.tables.view import View
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.orders.sizes_in_two_pieces import leads_on, one_size
from tracker.intake.values.prices.money import price_text

_LONGEST_PIECE = 30


def with_sizes_on_one_row(view: View) -> View:
    """The view with each such order size whole in the row of its price, and gone from the row below. One that is broken
    off and that nobody can make whole is made one text all the same, to be asked about."""
    if view.passing:
        return view
    joined: dict[int, Cells] = {}
    for upper, lower in pairwise(view.order):
        if lower != upper + 1 or upper in joined:
            continue
        whole = dict(_whole(view.rows[upper], view.rows[lower]))
        if whole:
            joined[upper] = {**view.rows[upper], **whole}
            joined[lower] = {column: cell for column, cell in view.rows[lower].items() if column not in whole}
    if not joined:
        return view
    rows = {row: cells for row in view.order if (cells := joined.get(row, view.rows[row]))}
    return replace(view, rows=rows, joined_rows=view.joined_rows | (joined.keys() - rows.keys()))


def _whole(upper: Cells, lower: Cells) -> Iterator[tuple[int, Cell]]:
    """The columns where a row with a price and the words below it say one order size between them."""
    # The first figure of a row of its own tells it, with what its board measures or costs, and nearly all rows are.
    if len(lower) > 1 and any(map(is_figure, lower.values())):
        return
    if sum(any(map(str.isdigit, cell.text)) for cell in lower.values()) > 1:
        return
    for column, rest in lower.items():
        piece = upper.get(column)
        priced = any(is_figure(cell) for index, cell in upper.items() if index > column)
        if piece is None or not priced or max(len(piece.text), len(rest.text)) > _LONGEST_PIECE:
            continue
        text = one_size(piece.text, rest.text)
        others = [cell for index, cell in lower.items() if index != column]
        if text is not None and not (others and _is_a_row(piece, rest, others)):
            yield column, piece._replace(value=text, text=text, number_format="General")


def _is_a_row(piece: Cell, rest: Cell, others: Sequence[Cell]) -> bool:
    """Whether 'CUK' or 'call' beside a size make it that of another board or another price; 'natural white' beside
    what can only go on may be the rest of the board above."""
    if not leads_on(piece.text, rest.text):
        return True
    return any(find_grade(cell.text) is not None or _withheld(cell.text) for cell in others)


def _withheld(text: str) -> bool:
    price = price_text(text)
    return price is not None and bool(price.no_price)
