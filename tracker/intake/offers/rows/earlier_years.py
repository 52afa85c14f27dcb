"""Tables with a column of years that are over, below or beside the list in force: 'Board | Year | $/ST' over 2023 and
2024."""

import re
from collections.abc import Iterator, Sequence
from datetime import date

from tracker.intake.grid import Cell
from tracker.intake.offers.sheet import ReadSheet, ReadTable
from tracker.intake.tables.table import HeadedColumn
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.lists import phrases

_YEAR = re.compile(r"\b(?:19|20)\d\d\b")


def earlier_years_aside(sheets: Sequence[ReadSheet], list_date: date | None) -> None:
    """Passes over the tables that price boards by years before the list's, where another table is offered. A list
    without a date of its own is as old as the first day that its texts name."""
    list_year = _first_year(sheets) if list_date is None else list_date.year
    offering = [read for sheet in sheets for read in sheet.tables if not read.passed_over]
    over = [read for read in offering if _is_over(read, list_year)]
    for read in over if len(over) < len(offering) else ():
        read.passed_over = "prices of earlier years"


def _first_year(sheets: Sequence[ReadSheet]) -> int:
    texts = [text for sheet in sheets for text in sheet.all_texts()]
    days = [reading.year for text in texts for day in find_dates(text) for reading in day.readings]
    # 'Price list November 2026', 'Price list Q4 2026'.
    named = [int(year) for text in texts if phrases("list_names").find(text) for year in _YEAR.findall(text)]
    return min((*days, *named), default=0)


def _is_over(read: ReadTable, list_year: int) -> bool:
    """Each board has prices of several years, and all are before the list's. Stocks of several years tell when each
    board was made."""
    words = (*read.table.titles, *read.table.headings())
    if any(match.value in _STOCKS for said in words for match in phrases("list_parts").find(said.text)):
        return False
    for column in read.table.columns:
        boards: dict[tuple[str, ...], set[int]] = {}
        for year, board in _years(read, column):
            boards.setdefault(board, set()).add(year)
        recur = bool(boards) and all(len(years) > 1 for years in boards.values())
        if recur and max(year for years in boards.values() for year in years) < list_year:
            return True
    return False


_STOCKS = ("lots", "stock")


def _years(read: ReadTable, column: HeadedColumn) -> Iterator[tuple[int, tuple[str, ...]]]:
    """The years of a column headed so, each with the board of its row; none where anything else stands there."""
    headed = phrases("year_heads").whole(column.text.strip()) == "any"
    rows = [read.table.view.rows[row.index] for row in read.table.rows] if headed else []
    cells = [cells[column.index] for cells in rows if column.index in cells]
    if not all(map(_is_year, cells)):
        return
    naming = [board.index for board in read.columns.of(*_NAMES) if board.index != column.index]
    for cells_of_row in rows:
        if column.index in cells_of_row:
            board = tuple(cells_of_row[index].text.strip() for index in naming if index in cells_of_row)
            yield int(cells_of_row[column.index].text), board


_NAMES = (Role.PRODUCT, Role.GRADE, Role.COATING, Role.CALIPER, Role.WEIGHT)


def _is_year(cell: Cell) -> bool:
    return _YEAR.fullmatch(cell.text.strip()) is not None
