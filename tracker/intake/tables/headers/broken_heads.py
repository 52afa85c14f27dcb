"""Order sizes that a head breaks over two rows: 'Under | 10,000 - | 40,000' over '10,000 lb | 39,999 lb | lb & up'."""

from collections.abc import Iterator

from tracker.intake.grid import Cell
from tracker.intake.tables.rows.rows_joined import Cells, with_rows_joined
from tracker.intake.tables.view import View
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.orders.brackets import bracket_text
from tracker.intake.values.orders.broken_sizes import breaks_off
from tracker.intake.values.orders.sizes_in_two_pieces import ends_with_dash, one_size
from tracker.intake.values.orders.worded_brackets import begins_or_ends

_FEWEST = 2
_LONGEST_PIECE = 20


def with_whole_order_sizes(view: View) -> View:
    """The view with both pieces of each such order size in the lower row, and gone from the upper one."""
    return with_rows_joined(view, _joined)


def _joined(upper: Cells, lower: Cells) -> tuple[Cells, Cells] | None:
    whole = dict(_whole(upper, lower))
    if len(whole) < _FEWEST and not any(breaks_off(upper[column].text) for column in whole):
        return None
    return {column: cell for column, cell in upper.items() if column not in whole}, {**lower, **whole}


def _whole(upper: Cells, lower: Cells) -> Iterator[tuple[int, Cell]]:
    """The columns where a row and the one below it make an order size that neither row tells whole."""
    for column, piece in upper.items():
        rest = lower.get(column)
        if rest is None or len(piece.text) > _LONGEST_PIECE or len(rest.text) > _LONGEST_PIECE:
            continue
        if _is_figure(piece.text) and any(map(str.isdigit, rest.text)) and not _leads_to(piece.text, rest.text):
            # A price above the head of the next table.
            continue
        if find_grade(piece.text) is not None or (_is_whole(rest) and _heads_the_next(column, upper, lower)):
            # 'GC1' over '< 5 t' heads a group of order sizes, and so does 'Part loads' over 'from 1 t | from 3 t'.
            continue
        text = one_size(piece.text, rest.text)
        size = bracket_text(text) if text is not None else None
        if text is not None and size is not None and begins_or_ends(size):
            yield column, rest._replace(value=text, text=text)


def _heads_the_next(column: int, upper: Cells, lower: Cells) -> bool:
    """Whether nothing but this piece stands over the next column, where a whole order size stands as well."""
    return column + 1 not in upper and column + 1 in lower and _is_whole(lower[column + 1])


def _is_whole(cell: Cell) -> bool:
    size = bracket_text(cell.text)
    return size is not None and begins_or_ends(size)


def _is_figure(text: str) -> bool:
    return bool(number_readings(text)) or breaks_off(text)


def _leads_to(piece: str, rest: str) -> bool:
    """'10,000 lb to' to 'under 20,000 lb' and '5,000 –' to '19,999 lb'; a bare 63.90 below either is a price."""
    return (breaks_off(piece) or ends_with_dash(piece)) and any(map(str.isalpha, rest))
