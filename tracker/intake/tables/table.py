"""What finding tables yields: each table with the texts that head its columns, its rows and what stands around it."""

from dataclasses import dataclass

from tracker.intake.grid import Cell
from tracker.intake.tables.heads import head_text
from tracker.intake.tables.view import View


@dataclass(frozen=True, slots=True)
class Words:
    """Something said outside the columns: a title, a note, a sub-heading. A label and its value are one text."""

    sheet: str
    row: int
    cell: Cell
    text: str


@dataclass(frozen=True, slots=True)
class HeadedColumn:
    """One column of a table: the header texts above it from the top down (empty where it has none)."""

    index: int
    heads: tuple[Cell, ...] = ()

    @property
    def text(self) -> str:
        return "\n".join(head_text(cell) for cell in self.heads)


@dataclass(slots=True)
class BodyRow:
    """One row with figures: its number in the table's view, and the sub-headings above it, oldest first.

    `headings` holds groups: those that stand together above the same row are one group.
    """

    index: int
    headings: tuple[tuple[Words, ...], ...] = ()
    after_gap: bool = False


@dataclass
class Table:
    """A block of rows under one header (or under none). `titles` and `notes` belong to it alone."""

    view: View
    columns: tuple[HeadedColumn, ...]
    rows: list[BodyRow]
    first_row: int
    last_row: int
    titles: tuple[Words, ...] = ()
    notes: tuple[Words, ...] = ()


@dataclass(frozen=True, slots=True)
class SheetTables:
    """All that a sheet holds: its tables, and the texts outside them that hold for the whole sheet."""

    view: View
    tables: tuple[Table, ...]
    texts: tuple[Words, ...]
