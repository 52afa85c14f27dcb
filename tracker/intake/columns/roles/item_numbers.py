"""Columns of a list's own numbers, told from those that name its boards."""

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from decimal import Decimal
from itertools import pairwise

from tracker.intake.columns.column import Column
from tracker.intake.grid import Cell
from tracker.intake.values.boards.board_words import begins_with_board
from tracker.intake.values.boards.grade import names_grade
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.orders.masses import find_mass_units
from tracker.intake.values.prices.currency import find_currencies

_LONGEST_CODE = 16


def item_numbers(columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """An 'article' column of codes beside one that names the board holds item numbers, and so does one of offers
    ('O-71', 'O-72') beside their prices."""
    columns = _numbers_of_offers(columns, samples)
    products = [column for column in columns if column.role in (Role.PRODUCT, Role.GRADE)]
    if len(products) < 2:
        return columns
    codes = {column.index for column in products if _are_codes(samples[column.index])}
    if len(codes) == len(products):
        return columns
    return [replace(column, role=Role.ITEM) if column.index in codes else column for column in columns]


def boards_in_items(columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """An 'item' column that says 'Plain chipboard' in some rows names the board there, where the columns that should
    name it hold quality classes ('A', 'B') or names of the mill's own: no heading says better what those rows are.
    Numbers that only look like a grade ('SBS-18') name none."""
    told = [cell for column in columns if column.role in (Role.PRODUCT, Role.GRADE) for cell in samples[column.index]]
    if not told or any(names_grade(cell.text) for cell in told):
        return columns
    return [
        replace(column, role=Role.PRODUCT)
        if column.role is Role.ITEM and _name_boards(samples[column.index])
        else column
        for column in columns
    ]


def _name_boards(cells: Sequence[Cell]) -> bool:
    """Some do, and none names a grade behind other words: 'Replaces SBS' and 'like CUK' are no board of that grade;
    'Coated unbleached kraft carrier' is one."""
    named = [cell for cell in cells if names_grade(cell.text)]
    return any(map(_says_board, named)) and all(begins_with_board(cell.text) for cell in named)


def _says_board(cell: Cell) -> bool:
    text = cell.text.strip()
    numbered = _NUMBERED.match(text) is not None or (" " not in text and sum(map(str.isdigit, text)) >= _FEWEST_DIGITS)
    return names_grade(text) and not numbered


_FEWEST_DIGITS = 2
_NUMBERED = re.compile(r"[^\W\d]{1,5}[-./ ]?\d{2,}\w*$")
"""'SBS-18', 'CUK 21'; 'GC2' and 'SBS C1S' are boards."""


def _numbers_of_offers(columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    priced = [column for column in columns if column.role is Role.PRICE]
    numbered = {column.index for column in priced if _number_offers(samples[column.index])}
    if not numbered or len(numbered) == len(priced):
        return columns
    return [replace(column, role=Role.ITEM) if column.index in numbered else column for column in columns]


def _number_offers(cells: Sequence[Cell]) -> bool:
    """Each another, and none a currency before an amount."""
    texts = [cell.text.strip() for cell in cells]
    codes = all(_OFFER.fullmatch(text) and not find_currencies(text) for text in texts)
    return codes and 1 < len(texts) == len(set(texts))


_OFFER = re.compile(r"[^\W\d_]{1,4}-\d{1,6}")


def is_code(cell: Cell) -> bool:
    """'CL-07' is a number of the list, though CL is a carload."""
    return _CODE.match(cell.text.strip()) is not None


def number_lots(column: Column, cells: Sequence[Cell]) -> bool:
    """Whether figures or codes under 'Lot' or '#' number what the rows are, and size no orders."""
    return not cells or any(map(is_code, cells)) or _number_the_lines(column, cells)


def _number_the_lines(column: Column, cells: Sequence[Cell]) -> bool:
    """1, 2, 3 or 10, 20, 30 down a column under '#' or 'Line #', where nothing but that sign would make pounds of them;
    nobody orders one pound or ten."""
    figures = [cell.value for cell in cells if isinstance(cell.value, Decimal)]
    rise = all(lower < higher for lower, higher in pairwise(figures))
    counted = bool(figures) and len(figures) == len(cells) and figures[0] in _FIRST_NUMBERS and rise
    return counted and not find_mass_units(column.text.replace("#", " "))


_FIRST_NUMBERS = frozenset(map(Decimal, ("1", "10")))


_CODE = re.compile(r"[^\W\d]{1,5}[-./ ]?\d+\w*$")


def _are_codes(cells: Sequence[Cell]) -> bool:
    """Short words with a digit and no space in them, none of which is a grade."""
    return bool(cells) and all(
        len(cell.text) <= _LONGEST_CODE
        and " " not in cell.text
        and any(sign.isdigit() for sign in cell.text)
        and not names_grade(cell.text)
        for cell in cells
    )
