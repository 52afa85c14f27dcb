"""Cross-tabs that give a board several lines: 'GC1 | g/m²' over 'GC1 | £/t', with calipers across.

A figure of such a table is a price or a measure by the label of its line. Each column of each board becomes a row of
its own, board, value across, measures and price beside each other, whose cells keep the address they have in the sheet.
"""

from collections.abc import Iterator
from dataclasses import dataclass, field, replace

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import BOARD_ROLES, Head, head_of
from tracker.intake.tables.table import BodyRow, HeadedColumn, Table
from tracker.intake.tables.view import View
from tracker.intake.values.heads.roles import MEASURES

_MOST_ROWS = 400


@dataclass
class _Board:
    """The lines of one board: the cells that name it, and each line with its label."""

    named: dict[int, Cell]
    lines: list[tuple[BodyRow, Cell]] = field(default_factory=list)


def without_line_pairs(table: Table) -> Table:
    """The table with a row for each price; the table itself where its lines are not told apart so."""
    if table.view.passing or not 2 <= len(table.rows) <= _MOST_ROWS or any(len(one.heads) > 1 for one in table.columns):
        return table
    labels = _label_column(table)
    across = [] if labels is None else [one for one in table.columns if one.index > labels and one.heads]
    corner = None if labels is None else _corner(table, labels)
    if labels is None or len(across) < 2 or not all(_spreads(one, corner) for one in across):
        return table
    return _laid_out(table, list(_boards(table, labels)), across, corner)


def _label_column(table: Table) -> int | None:
    """The column that says of every line whether it holds prices or measures, with lines of both."""
    first = table.view.rows[table.rows[0].index]
    for index, cell in sorted(first.items()):
        if not isinstance(cell.value, str) or not _names_line(head_of(cell)):
            continue
        labels = [table.view.rows[row.index].get(index) for row in table.rows]
        heads = [None if label is None else head_of(label) for label in labels]
        if all(map(_names_line, heads)) and {True, False} == {head.price for head in heads if head is not None}:
            return index
    return None


def _names_line(head: Head | None) -> bool:
    return head is not None and (head.price or (head.named and head.role in MEASURES))


def _corner(table: Table, labels: int) -> Cell | None:
    """The head at the left that names what is spread across."""
    heads = [one.heads[0] for one in table.columns if one.index <= labels and one.heads]
    named = [cell for cell in heads if (head := head_of(cell)) is not None and head.named and head.role in MEASURES]
    return named[0] if len(named) == 1 else None


def _spreads(column: HeadedColumn, corner: Cell | None) -> bool:
    head = head_of(column.heads[0])
    if head is None:
        return False
    return head.across in ("caliper", "weight") or (head.number is not None and corner is not None)


def _boards(table: Table, labels: int) -> Iterator[_Board]:
    """The lines in groups: a board's name begins one, and so does a measure below a price where none is named."""
    board: _Board | None = None
    named_once = any(min(table.view.rows[row.index]) < labels for row in table.rows)
    for row in table.rows:
        cells = table.view.rows[row.index]
        label = cells[labels]
        named = {index: cell for index, cell in cells.items() if index < labels}
        begins = bool(named) if named_once else _after_a_price(board, label, row)
        if board is None or begins:
            if board is not None:
                yield board
            board = _Board(named)
        board.lines.append((row, label))
    if board is not None:
        yield board


def _after_a_price(board: _Board | None, label: Cell, row: BodyRow) -> bool:
    if board is None or row.headings is not board.lines[-1][0].headings:
        return True
    return not _is_price(label) and _is_price(board.lines[-1][1])


def _is_price(label: Cell) -> bool:
    head = head_of(label)
    return head is not None and head.price


def _laid_out(table: Table, boards: list[_Board], across: list[HeadedColumn], corner: Cell | None) -> Table:
    names = sorted({index for board in boards for index in board.named})
    said = {label.text: label for board in boards for _, label in board.lines}
    place = {text: len(names) + 1 + order for order, text in enumerate(said)}
    width = max(one.index for one in across) + 1
    rows: dict[int, dict[int, Cell]] = {}
    body: list[BodyRow] = []
    hidden: set[int] = set()
    for board in boards:
        for column in across:
            cells = {order: board.named[index] for order, index in enumerate(names) if index in board.named}
            cells[len(names)] = column.heads[0]
            own = [row for row, _ in board.lines if column.index in table.view.rows[row.index]]
            figures = {place[label.text]: table.view.rows[row.index].get(column.index) for row, label in board.lines}
            cells |= {index: cell for index, cell in figures.items() if cell is not None}
            if own:
                # A number that no other row has, so that each price is a row of its own.
                number = own[0].index * width + column.index
                rows[number] = cells
                body.append(BodyRow(number, own[0].headings))
                hidden |= {number for row in own if table.view.is_hidden(row.index, column.index)}
    heads = {one.index: one.heads for one in table.columns}
    columns = [HeadedColumn(order, _of_board(heads.get(index, ()))) for order, index in enumerate(names)]
    columns.append(HeadedColumn(len(names), () if corner is None else (corner,)))
    columns += [HeadedColumn(place[text], (label,)) for text, label in said.items()]
    view = View(table.view.sheet, rows, (), frozenset(hidden), frozenset(), table.view.hidden, table.view.turned)
    return replace(table, view=view, columns=tuple(columns), rows=body)


def _of_board(heads: tuple[Cell, ...]) -> tuple[Cell, ...]:
    """The heads of a column of boards, without the words for what is spread across."""
    found = [(cell, head_of(cell)) for cell in heads]
    kept = BOARD_ROLES - MEASURES
    return tuple(cell for cell, head in found if head is None or head.role is None or head.role in kept)
