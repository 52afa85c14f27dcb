"""Numbers of items that happen to be as high as the prices beside them: '1003' and '1004' under 'Item'."""

from collections.abc import Sequence
from itertools import pairwise

from tracker.intake.columns.column import Column
from tracker.intake.grid import Cell
from tracker.intake.tables.figures import sure_figure
from tracker.intake.values.heads.roles import MEASURES, Role

_BOARDS = frozenset({Role.GRADE, Role.PRODUCT, *MEASURES})
_ITEMS = (Role.ITEM, Role.PRODUCT)
_PLAINLY = 0.95


def are_item_numbers(column: Column, columns: Sequence[Column], cells: Sequence[Cell]) -> bool:
    """Whole numbers that go up from row to row under a plain word for items, 'Item' or 'Artikel', left of all else that
    tells of the boards."""
    plainly = any(head.strength(role) >= _PLAINLY for head in column.said for role in _ITEMS)
    if column.role not in (*_ITEMS, None) or not plainly or any(map(str.isdecimal, column.text)):
        return False
    boards = [other.index for other in columns if other is not column and other.role in _BOARDS]
    figures = [figure for cell in cells if (figure := sure_figure(cell)) is not None]
    rising = len(figures) == len(cells) and all(one < other for one, other in pairwise(figures))
    return bool(boards) and column.index < min(boards) and rising and all(one == int(one) for one in figures)
