"""Rows that need no header because every cell says what it is: 'SBS C1S 18pt 75#/MSF' | '$1,145/ST'."""

from collections.abc import Iterable

from tracker.intake.grid import Cell
from tracker.intake.tables.table import HeadedColumn
from tracker.intake.tables.view import View
from tracker.intake.values.boards.caliper import find_calipers
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.weight import find_weights
from tracker.intake.values.figures.formats import number_format_currency
from tracker.intake.values.prices.basis import find_basis
from tracker.intake.values.prices.money import price_text


def priced_rows(view: View) -> list[int]:
    """Rows with a self-explaining price and, in another cell, words for a board."""
    return [row for row in view.order if _priced(view.rows[row].values()) and _board(view.rows[row].values())]


def described_columns(view: View, rows: list[int]) -> list[HeadedColumn]:
    """Every column that such rows use, without heads."""
    return [HeadedColumn(column) for column in sorted({column for row in rows for column in view.rows[row]})]


def price_columns(view: View, rows: list[int]) -> frozenset[int]:
    """The columns where such rows have their prices."""
    return frozenset(column for row in rows for column, cell in view.rows[row].items() if says_price(cell))


def says_price(cell: Cell) -> bool:
    """A price that carries its currency or its unit, in words or in the number format."""
    if cell.fault is not None or cell.value is None:
        return False
    if not isinstance(cell.value, str):
        return number_format_currency(cell.number_format) is not None
    price = price_text(cell.text)
    if price is None or not price.amounts or price.rest:
        return False
    # '5 t' is an order, '5/t' a price.
    return price.currency is not None or find_basis(cell.text) is not None


def _priced(cells: Iterable[Cell]) -> bool:
    return any(says_price(cell) for cell in cells)


def _board(cells: Iterable[Cell]) -> bool:
    return any(map(describes_board, cells))


def describes_board_whole(cells: Iterable[Cell]) -> bool:
    """A text among these that names a board's grade and a measure of it, as no head does."""
    texts = [cell.text for cell in cells if isinstance(cell.value, str)]
    graded = (text for text in texts if (grade := find_grade(text)) is not None and grade.grades)
    return any(find_calipers(text) or find_weights(text) for text in graded)


def describes_board(cell: Cell) -> bool:
    """Words that name a board's grade, caliper or weight, and no price."""
    if not isinstance(cell.value, str) or says_price(cell):
        return False
    grade = find_grade(cell.text)
    return bool(grade is not None and grade.grades) or bool(find_calipers(cell.text)) or bool(find_weights(cell.text))
