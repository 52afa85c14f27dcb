"""A board's measures and terms beside its name in a row without a price, over its prices by order size, form or
delivery: 'GC1 | 240 | 385 | | 3 weeks' over 'under 3 t | | | 1348' and 'from 3 t | | | 1317'."""

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import replace
from decimal import Decimal

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import head_of_words, looks_priced
from tracker.intake.tables.lying.labels import is_form
from tracker.intake.tables.rows.charge_lines import names_charge
from tracker.intake.tables.table import HeadedColumn
from tracker.intake.tables.view import View
from tracker.intake.values.boards.caliper import find_calipers
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.heads.roles import MEASURES, Role
from tracker.intake.values.orders.brackets import bracket_text

_Cells = dict[int, Cell]


def with_measures_below(
    view: View, rows: Sequence[int], columns: Sequence[HeadedColumn], valued: Collection[int]
) -> View:
    """The view with such measures and terms in each row of prices that has no other, and the board's name alone left
    above them.

    They keep the address that they have in the vendor's file.
    """
    roles = {column.index: _role(column) for column in columns if column.index not in valued}
    measured = frozenset(index for index, role in roles.items() if role in MEASURES)
    told = frozenset(index for index, role in roles.items() if role in _TOLD)
    if view.passing or not measured:
        return view
    below: dict[int, list[int]] = {}
    board: int | None = None
    for row in rows:
        cells = view.rows[row]
        if board is not None and _goes_on(cells, measured, valued):
            below.setdefault(board, []).append(row)
        else:
            board = row if _names_and_measures(cells, measured, valued) else None
    if not below:
        return view
    changed: dict[int, _Cells] = {}
    for board, its in _of_boards(view, rows, below, valued).items():
        own = view.rows[board]
        changed |= {row: {column: own[column] for column in told & own.keys()} | view.rows[row] for row in its}
        changed[board] = {column: cell for column, cell in own.items() if column not in told}
    if not changed:
        return view
    return replace(view, rows={row: changed.get(row, cells) for row, cells in view.rows.items()})


def _of_boards(
    view: View, rows: Sequence[int], below: Mapping[int, list[int]], valued: Collection[int]
) -> dict[int, list[int]]:
    """The rows of each board whose prices they may be. Of one row below one board of the list, or of figures far below
    the other boards' prices, that is not told: a board without a price over 'Sheets | 60', which all sheets cost more.
    """
    told = len(below) > 1 or any(len(its) > 1 for its in below.values())
    others = {row for row in rows if not any(row in its for its in below.values())}
    usual = {column: _figures(view, others, column) for column in valued}
    return {
        board: its for board, its in below.items()
        if told and not any(
            found and min(own, default=min(found)) * _FAR_BELOW < min(found)
            for column, found in usual.items() for own in (_figures(view, its, column),)
        )
    }  # fmt: skip


_FAR_BELOW = 4


def _figures(view: View, rows: Iterable[int], column: int) -> list[Decimal]:
    cells = (view.rows[row][column] for row in rows if column in view.rows[row])
    return [readings[0].value for cell in cells if (readings := number_readings(cell.text))]


_TOLD = MEASURES | {Role.SHEET_SIZE, Role.LEAD_TIME, Role.MINIMUM, Role.VALIDITY}


def _role(column: HeadedColumn) -> Role | None:
    head = head_of_words(column.text) if column.heads else None
    return head.role if head is not None and not head.across else None


def _names_and_measures(cells: _Cells, measured: Collection[int], valued: Collection[int]) -> bool:
    """Words ahead of figures under 'g/m²' and 'µm', and nothing where prices stand."""
    if any(column in cells for column in valued):
        return False
    names = [column for column, cell in cells.items() if column not in measured and _is_worded(cell)]
    figures = [column for column in cells if column in measured and any(map(str.isdigit, cells[column].text))]
    return bool(names and figures) and min(names) < min(figures)


def _goes_on(cells: _Cells, measured: Collection[int], valued: Collection[int]) -> bool:
    """A price behind an order size, a form or a way of delivery, and no board or measure beside it."""
    if any(column in cells for column in measured) or names_charge(cells):
        return False
    labels = [cell for column, cell in cells.items() if column not in valued]
    priced = any(column in cells and looks_priced(cells[column]) for column in valued)
    if not labels or not priced or any(find_grade(cell.text) or find_calipers(cell.text) for cell in labels):
        return False
    return any(bracket_text(cell.text.strip()) or is_form(cell) or find_delivery(cell.text) for cell in labels)


def _is_worded(cell: Cell) -> bool:
    return isinstance(cell.value, str) and any(map(str.isalpha, cell.text))
