"""'Min. qty' with several figures for one board: where its cheaper prices begin, and no smallest order."""

import re
from collections.abc import Iterable
from dataclasses import replace
from decimal import Decimal
from itertools import pairwise

from tracker.intake.columns.column import Column, Columns
from tracker.intake.columns.roles.cells import mass_of
from tracker.intake.grid import Cell
from tracker.intake.tables.figures import figure_of, is_figure, sure_figure
from tracker.intake.tables.headers.heads import PRICE_ROLES
from tracker.intake.tables.table import Headings, Table, Words
from tracker.intake.values.heads.roles import ORDER_SIZES, Role
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.orders.brackets import bracket_text
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.words.lists import phrases

_TELL_NO_BOARD = frozenset({*PRICE_ROLES, Role.MINIMUM, Role.ITEM, Role.LEAD_TIME, Role.REMARKS, Role.TOTAL})
_LOOKED_AT = 400


def breaks_of_boards(columns: list[Column], table: Table) -> list[Column]:
    """Makes a column of smallest orders one of order sizes, where a board's rows differ in these and the price alone.

    A vendor has one smallest order for a board; a higher one at a lower price is a price break.
    """
    least = [column for column in columns if column.role is Role.MINIMUM]
    prices = [column for column in columns if column.role in PRICE_ROLES]
    if len(least) != 1 or not prices or any(column.role in ORDER_SIZES for column in columns):
        return columns
    boards = _by_board(table, [column.index for column in columns if column.role not in _TELL_NO_BOARD])
    several = [rows for rows in boards if len(rows) > 1]
    if not several or not all(_are_breaks(table, rows, least[0], prices[0]) for rows in several):
        return columns
    return [replace(column, role=Role.FROM_QUANTITY) if column is least[0] else column for column in columns]


def sizes_among_quantities(columns: list[Column], table: Table) -> list[Column]:
    """Makes a column of quantities one of order sizes, where each board comes several times, the cheaper the more of it
    there is: 'kg | €/kg' over 1,000 at 0.85 and 5,000 at 0.80.

    What is bought in a year is no size of one order, though prices go by it: its head says so, and it is asked about.
    """
    held = [column for column in columns if column.role is Role.STOCK]
    if len(held) != 1 or not cheaper_by_the_figure(held[0], columns, table):
        return _sizes_under_strange_heads(columns, table)
    return [replace(column, role=Role.BRACKET, sure=True) if column is held[0] else column for column in columns]


def _sizes_under_strange_heads(columns: list[Column], table: Table) -> list[Column]:
    """Makes an unread column of figures one of order sizes, not sure of what they are, where each board comes several
    times and is cheaper the higher they are: 'Lb ladder' over 0, 5,000 and 20,000. They are asked about."""
    strange = next((one for one in columns if one.role is None and cheaper_by_the_figure(one, columns, table)), None)
    return [replace(one, role=Role.BRACKET, sure=False) if one is strange else one for one in columns]


def amounts_ordered(columns: list[Column], table: Table) -> list[Column]:
    """Makes a column of order sizes one of what was ordered, where a board comes several times, none of them cheaper
    the more of it a line asks for, and what each line comes to stands beside: 'Qty (lb) | $/cwt | Amount' over 24,000
    at 60.00 and 18,000 at 60.00 of one board in a pro forma. Where one board is cheaper by the size and none dearer,
    the sizes are those of a quotation, though a step or another board keeps its price. Without amounts, where one price
    holds for figures that do not ascend."""
    sizes = [column for column in columns if column.role is Role.BRACKET]
    prices = [column for column in columns if column.role in PRICE_ROLES]
    if len(sizes) != 1 or not prices or phrases("order_words").find(sizes[0].text):
        return columns
    tell = [column.index for column in columns if column is not sizes[0] and column.role not in _NOR_QUANTITIES]
    needed = {sizes[0].index, prices[0].index}
    boards = ([row for row in rows if needed <= table.view.rows[row].keys()] for rows in _by_board(table, tell))
    several = [rows for rows in boards if len(rows) > 1]
    if not several or not all(is_figure(cell) for rows in several for cell in _cells(table, rows, sizes[0])):
        return columns
    if any(column.role is Role.TOTAL for column in columns):
        by_size = [_are_breaks(table, rows, sizes[0], prices[0], some_keep=True) for rows in several]
        ordered = not all(by_size) or all(_one_price(table, rows, prices[0]) for rows in several)
    else:
        ordered = all(_one_price(table, rows, prices[0]) for rows in several) and not all(
            _ascends(table, rows, sizes[0]) for rows in several
        )
    return [replace(column, role=Role.STOCK) if ordered and column is sizes[0] else column for column in columns]


def _one_price(table: Table, rows: list[int], price: Column) -> bool:
    return len({cell.value for cell in _cells(table, rows, price)}) == 1


def _ascends(table: Table, rows: list[int], size: Column) -> bool:
    figures = [figure_of(cell) for cell in _cells(table, rows, size)]
    return all(one is not None and after is not None and one < after for one, after in pairwise(figures))


def lots_on_offer(columns: list[Column], table: Table, above: Iterable[Words]) -> list[Column]:
    """Makes a column of order sizes one of what there is, where each board comes once and the amounts are in units of
    several kinds: under 'Spot offers' the 'Qty' over '1 truck', '25 t' and '8 skids' says how much of a lot is left.
    Where all is said to be in stock, amounts of one kind do so too."""
    above = tuple(above)
    stock = any(map(_says_stock, above))
    if not stock and not any(
        match.value in _LOTS for words in above for match in phrases("list_parts").find(words.text)
    ):
        return columns
    sizes = [column for column in columns if column.role is Role.BRACKET]
    prices = [column for column in columns if column.role in PRICE_ROLES]
    if len(sizes) != 1 or not prices:
        return columns
    tell = [column.index for column in columns if column is not sizes[0] and column.role not in _NOR_QUANTITIES]
    rows = list(_by_board(table, tell))
    amounts = [_AMOUNT.fullmatch(cell.text.strip()) for cell in _cells(table, [row for (row, *_) in rows], sizes[0])]
    units = {match[1].rstrip("s.") for match in amounts if match is not None}
    once = len(amounts) >= _FEWEST_LOTS and None not in amounts and all(len(each) == 1 for each in rows)
    of_a_lot = once and (len(units) > 1 or stock) and not phrases("order_words").find(sizes[0].text)
    return [replace(column, role=Role.STOCK) if of_a_lot and column is sizes[0] else column for column in columns]


def _says_stock(words: Words) -> bool:
    return any(isinstance(said, LeadTime) and said.days == _FROM_STOCK for said in statements(words.text))


_FROM_STOCK = (0, 0)
_AMOUNT = re.compile(r"\d[\d.,]*\s*([^\W\d_]+\.?)")
_FEWEST_LOTS = 3
_LOTS = ("lots", "spot")


def cheaper_by_the_figure(held: Column, columns: list[Column], table: Table) -> bool:
    """Each board comes several times, the cheaper the higher this column's figure, and no other gives order sizes."""
    prices = [column for column in columns if column.role in PRICE_ROLES]
    if not prices or any(column.role in (*ORDER_SIZES, Role.MINIMUM) for column in columns):
        return False
    untold = _NOR_QUANTITIES if held.role is not None else {*_NOR_QUANTITIES, None}
    tell = [column.index for column in columns if column is not held and column.role not in untold]
    several = [rows for rows in _by_board(table, tell) if len(rows) > 1]
    steps = sum(len(rows) - 1 for rows in several)
    return steps >= _FEWEST_STEPS and all(_are_breaks(table, rows, held, prices[0]) for rows in several)


_NOR_QUANTITIES = _TELL_NO_BOARD | {Role.STOCK}
_FEWEST_STEPS = 2


def _by_board(table: Table, told_by: list[int]) -> Iterable[list[int]]:
    """The rows of each board; what is written once holds for the rows below it."""
    boards: dict[tuple[Headings | None, tuple[str, ...]], list[int]] = {}
    above = [""] * len(told_by)
    for row in table.rows[:_LOOKED_AT]:
        cells = table.view.rows[row.index]
        above = [cells[index].text if index in cells else said for index, said in zip(told_by, above, strict=True)]
        boards.setdefault((row.headings, tuple(above)), []).append(row.index)
    return boards.values()


def _are_breaks(table: Table, rows: list[int], least: Column, price: Column, *, some_keep: bool = False) -> bool:
    """The larger the order, the lower the price, in every step; `some_keep`: or the same."""
    sizes = [size for cell in _cells(table, rows, least) if (size := _size(cell, least)) is not None]
    prices = [figure for cell in _cells(table, rows, price) if (figure := sure_figure(cell)) is not None]
    if len(sizes) != len(rows) or len(prices) != len(rows):
        return False
    steps = sorted(zip(sizes, prices, strict=True))
    return all(
        size < next_size and (figure > next_figure or (some_keep and figure == next_figure))
        for (size, figure), (next_size, next_figure) in pairwise(steps)
    )


def _cells(table: Table, rows: list[int], column: Column) -> list[Cell]:
    cells = (table.view.rows[row].get(column.index) for row in rows)
    return [cell for cell in cells if cell is not None]


def _size(cell: Cell, column: Column) -> tuple[Decimal, bool] | None:
    """A figure to compare with the column's others, and whether the size begins there; of '5,000 lb' the larger
    reading, as of all of them."""
    if isinstance(cell.value, Decimal):
        return cell.value, True
    mass = mass_of(cell, column.mass_units)
    bracket = bracket_text(cell.text, column.mass_units) if mass is None else None
    bound = mass if bracket is None else bracket.start or bracket.end
    figure = max((amount.value for amount in bound.amounts), default=None) if bound is not None else None
    return None if figure is None else (figure, bracket is None or bracket.start is not None)


def names_a_stock(column: Column) -> bool:
    """'Annual usage' and 'Qty available': no size of one order, whatever prices go by it."""
    return any(head.strength(Role.STOCK) >= _PLAINLY for head in column.said)


_PLAINLY = 0.8


def counts_this_order(cell: Cell, column: Column, columns: Columns) -> bool:
    """'Qty (sheets)' before what the line comes to counts what was asked for, and bounds no order size."""
    return is_figure(cell) and not column.mass_units and columns.first(Role.TOTAL) is not None
