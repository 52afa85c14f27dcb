"""A vendor's file as plain cells: what every later step of reading works on.

Rows and columns count from 0 here; `address` gives the A1 form a person sees. A cell keeps the value as the file
stores it, the text a person would see, and what only formatting says (currency in the number format, hidden rows,
a formula that was never calculated).
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, datetime, time, timedelta
from decimal import Decimal
from enum import StrEnum
from functools import lru_cache
from typing import NamedTuple, Protocol, runtime_checkable

CellValue = str | Decimal | bool | date | datetime | time | timedelta | None


class CellFault(StrEnum):
    """Why a cell that should hold a value has none that can be trusted."""

    ERROR = "error"
    FORMULA_WITHOUT_VALUE = "formula-without-value"


class Cell(NamedTuple):
    """One cell. `value` is typed (numbers are Decimal, text is stripped of nothing); `text` is what a person sees.

    `number_format` is the spreadsheet's format code ('General' where none, '' in CSV); `fault` marks an error cell or
    a formula without a stored value (then `value` is None and `text` the error or the formula). `struck`: the text is
    struck through.

    A named tuple and not a frozen dataclass, because a long sheet makes hundreds of thousands: three times as quick.
    """

    row: int
    column: int
    value: CellValue
    text: str
    number_format: str = ""
    fault: CellFault | None = None
    comment: str = ""
    struck: bool = False


@dataclass(frozen=True, slots=True)
class MergedRange:
    """A merged block, first and last row and column inclusive, counted from 0."""

    top: int
    left: int
    bottom: int
    right: int


@dataclass(frozen=True, slots=True)
class Grid:
    """One sheet. `cells` holds only cells with content, keyed (row, column).

    A dict serves; the file readers give a compact mapping that makes each Cell when asked, because 200,000 rows of
    ready-made cells would take over a gigabyte. It iterates row by row, so keep the Cell while working on it.
    """

    sheet: str
    cells: Mapping[tuple[int, int], Cell]
    merged: tuple[MergedRange, ...] = ()
    hidden_rows: frozenset[int] = frozenset()
    hidden_columns: frozenset[int] = frozenset()
    hidden: bool = False
    height: int = field(init=False, compare=False)
    """Rows from the top to the last one with content."""
    width: int = field(init=False, compare=False)
    """Columns from the left to the last one with content."""

    def __post_init__(self) -> None:
        height, width = extent(self.cells)
        object.__setattr__(self, "height", height)
        object.__setattr__(self, "width", width)

    def cell(self, row: int, column: int) -> Cell | None:
        return self.cells.get((row, column))


@dataclass(frozen=True, slots=True)
class Workbook:
    """A vendor's file. `kind` is 'xlsx', 'xls', 'xlsb', 'ods' or 'csv'; CSV has one grid with the sheet name ''."""

    file: str
    sha256: str
    kind: str
    grids: tuple[Grid, ...] = field(default=())


class Unreadable(Exception):
    """A file that can't be read at all; the message is one plain sentence for the user."""


@runtime_checkable
class Measured(Protocol):
    """Cells that know how far they reach without being walked."""

    def extent(self) -> tuple[int, int]: ...


def extent(cells: Mapping[tuple[int, int], Cell]) -> tuple[int, int]:
    """Height and width: one more than the last row and column with content, (0, 0) for none."""
    if isinstance(cells, Measured):
        return cells.extent()
    return 1 + max((row for row, _ in cells), default=-1), 1 + max((column for _, column in cells), default=-1)


def address(row: int, column: int) -> str:
    """The A1 address of a cell counted from 0: address(4, 3) is 'D5'."""
    return f"{letters(column)}{row + 1}"


@lru_cache(maxsize=16384)
def letters(column: int) -> str:
    """The letters of a column counted from 0: letters(3) is 'D'."""
    name = ""
    column += 1
    while column:
        column, remainder = divmod(column - 1, 26)
        name = chr(ord("A") + remainder) + name
    return name
