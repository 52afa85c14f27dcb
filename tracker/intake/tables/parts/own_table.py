"""Whether a stretch of columns has a table of its own, or figures of one beside it."""

from decimal import Decimal

from tracker.intake.grid import Cell
from tracker.intake.tables.headerless.headless import says_price
from tracker.intake.tables.headers.header_rows import is_header_row
from tracker.intake.tables.headers.heads import Head, head_of
from tracker.intake.tables.view import View
from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.heads.roles import ORDER_SIZES


def has_own_table(part: View) -> bool:
    """Heads that name board and price, with figures below: words alone are columns of the table beside them."""
    for row in part.order:
        if is_header_row(part, row):
            heads = [head for cell in part.rows[row].values() if (head := head_of(cell)) is not None]
            if any(map(_names_rows, heads)) and any(map(_spreads_prices, heads)):
                return any(has_figure(part, below) for below in part.order if below > row)
    return False


def _names_rows(head: Head) -> bool:
    """What the rows of a table are told apart by: boards and their measures, or order sizes."""
    return head.board or (head.named and head.role in ORDER_SIZES)


def _spreads_prices(head: Head) -> bool:
    """A head of prices: by name, or by the weight or order size they are for, said outright or as a bare figure."""
    return bool(head.price or head.across or head.number is not None)


def has_figure(part: View, row: int) -> bool:
    """Whether a number or a price stands in a row."""
    return any(_is_figure(cell) for cell in part.rows[row].values())


def _is_figure(cell: Cell) -> bool:
    """A number, or a text that is a number or a price; '20000 kg' behind 'minimum order' is neither."""
    if cell.fault is not None or isinstance(cell.value, Decimal):
        return True
    return isinstance(cell.value, str) and (bool(number_readings(cell.text)) or says_price(cell))
