"""An order size in the head over a table's boards: 'SMALL LOTS under 1 tonne | gsm | pence per kg'."""

from dataclasses import replace
from decimal import Decimal

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.orders.bracket_words import bracket_in_title
from tracker.intake.tables.table import Table, Words
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.statements import SaysMinimum, SaysOrders, statements
from tracker.trade.quantities import MassUnit


def with_size_of_corner(table: Table, columns: Columns) -> Table:
    """The table with such a head among its titles: what stands over the boards is no board, and holds for every row."""
    heads = dict.fromkeys(head for column in columns.of(Role.PRODUCT, Role.GRADE, Role.ITEM) for head in column.heads)
    said = tuple(Words(table.view.sheet, head.row, head, head.text.strip()) for head in heads if _is_about_orders(head))
    return replace(table, titles=(*table.titles, *said)) if said else table


def _is_about_orders(head: Cell) -> bool:
    """A size, a smallest order, or a load that somebody has to weigh: 'TRUCKLOADS'."""
    return _sizes_orders(head) or any(isinstance(said, SaysOrders | SaysMinimum) for said in statements(head.text))


def _sizes_orders(head: Cell) -> bool:
    """'Boards over 60 lb' are heavy boards, and no orders."""
    size = bracket_in_title(head.text)
    bounds = (size.start, size.end) if size is not None else ()
    in_kg = [bound.kg(MassUnit.TONNE) for bound in bounds if bound is not None]
    return any(kg is None or kg >= _LIGHTEST_ORDER_KG for kg in in_kg)


_LIGHTEST_ORDER_KG = Decimal(100)
"""Nobody orders less by weight; common practice, no source."""
