"""Order sizes of a column that go on in the row below: 'from 5,000 lb | 63.90' over 'to less than 20,000 lb'."""

from collections.abc import Iterator
from dataclasses import replace
from itertools import pairwise

from tracker.intake.grid import Cell
from tracker.intake.tables.figures import is_figure
from tracker.intake.tables.rows.rows_joined import Cells
from tracker.intake.tables.view import View
from tracker.intake.values.orders.brackets import Bracket, bracket_text, is_bare_order_size
from tracker.intake.values.orders.broken_sizes import breaks_off, goes_on

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
    return replace(view, rows={row: cells for row in view.order if (cells := joined.get(row, view.rows[row]))})


def _whole(upper: Cells, lower: Cells) -> Iterator[tuple[int, Cell]]:
    """The columns where a row with a price and the words below it say one order size between them."""
    # The first figure of a row of its own tells it, with what its board measures or costs, and nearly all rows are.
    if any(map(is_figure, lower.values())) or sum(any(map(str.isdigit, cell.text)) for cell in lower.values()) > 1:
        return
    for column, rest in lower.items():
        piece = upper.get(column)
        priced = any(is_figure(cell) for index, cell in upper.items() if index > column)
        if piece is None or not priced or max(len(piece.text), len(rest.text)) > _LONGEST_PIECE:
            continue
        text = f"{piece.text.strip()} {rest.text.strip()}"
        if _is_one_size(piece.text, rest.text, text):
            yield column, piece._replace(value=text, text=text, number_format="General")


def _is_one_size(piece: str, rest: str, text: str) -> bool:
    """Not 'under 5 t' over 'up to 10 t': two sizes, of which one has no price."""
    if breaks_off(piece) or (goes_on(rest) and _begins(bracket_text(piece))):
        return True
    halves = any(map(str.isdigit, piece)) != any(map(str.isdigit, rest))
    return halves and (_is_size(bracket_text(text)) or is_bare_order_size(text)) and not _is_whole(piece)


def _is_size(size: Bracket | None) -> bool:
    return size is not None and not size.not_weight


def _begins(size: Bracket | None) -> bool:
    return size is not None and _is_size(size) and size.start is not None and size.end is None


def _is_whole(piece: str) -> bool:
    """'20,000 lb +' ends by itself; a bare '20,000 lb' may go on."""
    size = bracket_text(piece)
    return size is not None and not size.alone and not size.not_weight
