"""The order size of one row: in a column for it, as two limits in two columns, or among the remarks."""

from decimal import Decimal

from tracker.intake.columns.column import Column, Columns
from tracker.intake.columns.roles.cells import order_weight
from tracker.intake.columns.sizes.breaks import counts_this_order, names_a_stock
from tracker.intake.grid import Cell
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.rows.rows import WholeRow
from tracker.intake.tables.figures import is_figure, sure_figure
from tracker.intake.values.figures.numbers import NumberReading, number_readings
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.orders.brackets import Bracket, bracket_text, is_no_limit
from tracker.intake.values.orders.counted_orders import counted_in, counted_size
from tracker.intake.values.orders.masses import Mass
from tracker.intake.values.orders.minimum import begins_at
from tracker.intake.words.lists import phrases

NO_UNIT = "figure without a unit"
NOT_UNDERSTOOD = "not understood"


def size_of_row(whole: WholeRow, columns: Columns) -> Said[Bracket] | None:
    """The order size that a row says in columns of its own, or among its remarks."""
    limits = columns.first(Role.FROM_QUANTITY), columns.first(Role.BELOW_QUANTITY)
    if limits[0] is not None or limits[1] is not None:
        return _from_limits(whole, columns)
    column = columns.first(Role.BRACKET)
    if column is None:
        return _remarked(whole, columns)
    cell = whole.cells.get(column.index)
    if cell is None or phrases("any_size").whole(cell.text) or counts_this_order(cell, column, columns):
        return None
    return Said(_bracket(cell, column), at(cell), cell.text.strip())


def _remarked(whole: WholeRow, columns: Columns) -> Said[Bracket] | None:
    """'Ab 5 t' and nothing else beside a price, where no column is for order sizes."""
    for cell in columns.remarks_in(whole.cells):
        bracket = bracket_text(cell.text)
        if bracket is not None and not bracket.alone and not bracket.not_weight:
            return Said(bracket, at(cell), cell.text.strip())
    return None


def _bracket(cell: Cell, column: Column) -> Bracket:
    words = cell.text.strip()
    if column.role is Role.BRACKET and (names_a_stock(column) or (not column.sure and is_figure(cell))):
        return Bracket(words, not_weight=NOT_UNDERSTOOD)
    counted = counted_in(column.text) if not column.mass_units else ""
    size = counted_size(words, counted) if counted else None
    if size is not None:
        return size
    if isinstance(cell.value, Decimal):
        if not column.mass_units:
            return Bracket(words, not_weight=NO_UNIT)
        start = Mass((NumberReading(cell.value),), column.mass_units, words, column.lone_t)
        return Bracket(words, start=start, alone=True)
    if not column.mass_units and number_readings(words):
        return Bracket(words, not_weight=NO_UNIT)
    return bracket_text(cell.text, column.mass_units) or Bracket(words, not_weight=NOT_UNDERSTOOD)


def _from_limits(whole: WholeRow, columns: Columns) -> Said[Bracket] | None:
    """'From' and 'below' in two columns, either of which may be empty."""
    low = _limit(whole, columns, Role.FROM_QUANTITY)
    high = _limit(whole, columns, Role.BELOW_QUANTITY)
    if low is None and high is None:
        return None
    cell = (low or high or (None, None))[0]
    assert cell is not None
    words = " – ".join(found[0].text.strip() for found in (low, high) if found is not None)
    if any(found is not None and found[1] is None for found in (low, high)):
        return Said(Bracket(words, not_weight=NOT_UNDERSTOOD), at(cell), words)
    start, end = (found[1] if found is not None else None for found in (low, high))
    return Said(Bracket(words, start, end, end_included=_ends_within(columns)), at(cell), words)


def _ends_within(columns: Columns) -> bool:
    """'To kg | 4,999' holds for 4,999 kg; 'Below kg | 5,000' does not for 5,000."""
    column = columns.first(Role.BELOW_QUANTITY)
    return column is not None and not any(match.value == "below" for match in phrases("bracket").find(column.text))


def _limit(whole: WholeRow, columns: Columns, role: Role) -> tuple[Cell, Mass | None] | None:
    column = columns.first(role)
    cell = whole.cells.get(column.index) if column is not None else None
    # 'Below 0' is no limit; 'from 0' begins what ends where the next size of the board begins.
    unlimited = role is Role.BELOW_QUANTITY and cell is not None and sure_figure(cell) == 0
    if column is None or cell is None or unlimited or is_no_limit(cell.text.strip()):
        return None
    mass = order_weight(cell, column, nought=True)
    # 'Min. 10,000 lb' below 'Minimum'.
    worded = role is Role.FROM_QUANTITY and isinstance(cell.value, str)
    return cell, begins_at(cell.text) if mass is None and worded else mass
