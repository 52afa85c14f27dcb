"""Boards on two lines: 'GC1 Faltschachtelkarton | 1204' with '250 g/m², 405 µm' on the line below it.

Such a line stands where a heading for the next board would, and says of the wrong board what it measures unless it is
told from one. The whole table tells which it is; where it does not, a board is said to be what the lines on both sides
of it say, which is asked wherever they differ.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from decimal import Decimal
from itertools import pairwise, takewhile

from tracker.intake.grid import Cell
from tracker.intake.tables.rows.body import Body
from tracker.intake.tables.rows.lines_between import Lined, Side, describes, side_of
from tracker.intake.tables.view import View
from tracker.intake.values.changes.totals import is_total
from tracker.intake.values.prices.money import price_text

_FEWEST = 2


def with_second_lines(view: View, rows: Sequence[int], body: Body, valued: frozenset[int]) -> View | None:
    """The view with each second line joined to its board's own, and gone from where it stood; None without such lines.

    `rows`: those below the table's header; `body`: which of them hold boards; `valued`: the columns of prices.
    """
    if view.passing or len(body.rows) < _FEWEST:
        return None
    lined = _lined(view, rows, [row.index for row in body.rows], valued)
    side = Side.ABOVE if lined is None else side_of(lined)
    if lined is None or side is Side.ABOVE:
        return None
    joined: dict[int, dict[int, Cell]] = {}
    for place, board in enumerate(lined.boards):
        own = lined.below[place] if side is Side.BELOW else lined.around(place)
        cells = _with_lines(view.rows[board], [view.rows[line] for line in own], valued)
        if cells is None:
            return None
        joined[board] = cells
    gone = {line for lines in (lined.first if side is Side.UNTOLD else (), *lined.below) for line in lines}
    left = {row: joined.get(row, cells) for row, cells in view.rows.items() if row not in gone}
    return replace(view, rows=left)


def _lined(view: View, rows: Sequence[int], priced: Sequence[int], valued: frozenset[int]) -> Lined | None:
    """The boards, where each but the last has describing lines below it or is described on its own line; totals among
    them and behind the last are no boards."""
    edge = min(view.rows[priced[0]])
    boards = [row for row in priced if edge in view.rows[row]]
    worded = {row for row in set(priced).difference(boards) if _goes_on(view, row, valued)}
    sums = set(priced).difference(boards, worded)
    if not all(_sums_up(view, row) for row in sums if row < boards[-1]):
        return None
    # 'Rolle, 400 µm | (ab 10 t: 1.121,00)' says more of the price above it, and is no board of its own.
    others = set(rows) - set(priced) | worded
    if not others:
        return None
    spacing = min((below - above for above, below in pairwise(sorted(rows))), default=1)
    *between, last = (_worded(view, _touching(others, board, spacing)) for board in boards)
    # 'Payment 30 days' behind the last board's own lines goes on with the whole list.
    last = last[: max(map(len, between), default=0)]
    below = [_describing(view, lines) for lines in (*between, last)]
    first = tuple(reversed(tuple(_touching(others, boards[0], -spacing))))
    lined = Lined(view, boards, below, _describing(view, first))
    if len(boards) < _FEWEST or sum(map(bool, below)) < min(_FEWEST, len(boards) - 1):
        # Before the boards' own words are looked at, which takes seconds for a long list.
        return None
    told = all(lines or (own and not lined.own[0]) for lines, own in zip(below[:-1], lined.own[:-1], strict=True))
    return lined if told else None


def _goes_on(view: View, row: int, valued: frozenset[int]) -> bool:
    """Words that describe a board, and in a column of prices a figure among words that make no price of it; '£1,090/t'
    and 'on request' are another board's, whose grade is written once."""
    priced = [cell for column, cell in view.rows[row].items() if column in valued]
    prices = [price_text(cell.text) for cell in priced]
    return (
        bool(_describing(view, (row,)))
        and all(any(map(str.isdigit, cell.text)) for cell in priced)
        and all(price is None or bool(price.rest) for price in prices)
    )


def _sums_up(view: View, row: int) -> bool:
    """'Subtotal' and 'Carried forward' at the foot of a page."""
    return any(is_total(cell.text) for cell in view.rows[row].values() if isinstance(cell.value, str))


def _worded(view: View, lines: Iterable[int]) -> tuple[int, ...]:
    """The lines of words up to the first with a figure: 'Carried forward | 29 382.44' is no board's own."""
    return tuple(takewhile(lambda line: _is_worded(view.rows[line].values()), lines))


def _touching(others: set[int], board: int, step: int) -> Iterator[int]:
    """The lines that follow a board without a blank row between, where not every row has one, or stand before it."""
    row = board + step
    while row in others:
        yield row
        row += step


def _describing(view: View, lines: tuple[int, ...]) -> tuple[int, ...]:
    """The lines, where they are words alone with a grade or a measure of board among them."""
    cells = [cell for line in lines for cell in view.rows[line].values()]
    return lines if _is_worded(cells) and any(describes(cell.text) for cell in cells) else ()


def _is_worded(cells: Iterable[Cell]) -> bool:
    return all(isinstance(cell.value, str) and any(map(str.isalpha, cell.text)) for cell in cells)


def _with_lines(
    board: dict[int, Cell], lines: Sequence[dict[int, Cell]], valued: frozenset[int]
) -> dict[int, Cell] | None:
    """The board's cells with the words of its lines behind its own; what stands below a figure that is no price goes on
    with the words left of it, and None where there are none."""
    cells = dict(board)
    for line in lines:
        for column, below in line.items():
            place = column if column in valued else _place(board, column)
            if place is None:
                return None
            own = cells.get(place)
            text = below.text if own is None else f"{own.text}\n{below.text}"
            cells[place] = below if own is None else own._replace(value=text, text=text)
    return cells


def _place(cells: dict[int, Cell], column: int) -> int | None:
    """The column of a line's words; below 'Pos. 10' they belong to what stands beside it, and '0,41 mm' below '5,5' to
    the words before that."""
    if column == min(cells) and isinstance(cells[column].value, Decimal):
        column += 1
    own = cells.get(column)
    if own is None or isinstance(own.value, str) or _numbers_an_item(own):
        return column
    return max((index for index in cells if index < column and isinstance(cells[index].value, str)), default=None)


_LEAST_NUMBER = 1000


def _numbers_an_item(cell: Cell) -> bool:
    """'4711001': the number of an item, and no measure of it."""
    return isinstance(cell.value, Decimal) and cell.value >= _LEAST_NUMBER and cell.value == int(cell.value)
