"""What finding tables yields: each table with the texts that head its columns, its rows and what stands around it."""

from collections.abc import Iterator
from dataclasses import dataclass

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import head_text
from tracker.intake.tables.view import View


@dataclass(frozen=True, slots=True)
class Words:
    """Something said outside the columns: a title, a note, a sub-heading. A label and its value are one text.
    `unsure`: it may be about other rows."""

    sheet: str
    row: int
    cell: Cell
    text: str
    unsure: bool = False


@dataclass(frozen=True, slots=True)
class HeadedColumn:
    """One column of a table: the header texts above it from the top down (empty where it has none).

    `lines`: what stands over the header about its group of columns alone, and `vendor` whose group it is. `priced`:
    bare figures that are prices by what stands beside and above them, under no head. `named`: the lowest head as it
    stands, where a key put another in its place.
    """

    index: int
    heads: tuple[Cell, ...] = ()
    lines: tuple[Cell, ...] = ()
    vendor: str = ""
    priced: bool = False
    named: str = ""

    @property
    def called(self) -> str:
        """What texts call the column by."""
        return self.named or (self.heads[-1].text if self.heads else "")

    @property
    def text(self) -> str:
        return "\n".join(head_text(cell) for cell in self.heads)


@dataclass(frozen=True, slots=True, eq=False)
class Headings:
    """The sub-headings right above some rows, and those above the rows before them.

    Each leads to the one before, as a list may have a sub-heading for every board.
    """

    own: tuple[Words, ...]
    before: "Headings | None" = None


@dataclass(slots=True)
class BodyRow:
    """One row with figures: its number in the table's view, and the sub-headings above it; rows below the same ones
    share them. `lines`: what stands right below it and goes on with it; `unsure`: what may do so, or head other rows.
    """

    index: int
    headings: Headings | None = None
    after_gap: bool = False
    lines: tuple[Words, ...] = ()
    unsure: bool = False


@dataclass
class Table:
    """A block of rows under one header (or under none). `titles` and `notes` belong to it alone. `keyed`: the cells
    whose prices have the unit that a key gives the letter behind them."""

    view: View
    columns: tuple[HeadedColumn, ...]
    rows: list[BodyRow]
    first_row: int
    last_row: int
    titles: tuple[Words, ...] = ()
    notes: tuple[Words, ...] = ()
    keyed: frozenset[tuple[int, int]] = frozenset()

    def headings(self) -> Iterator[Words]:
        """Every sub-heading among its rows, once."""
        above = dict.fromkeys(row.headings for row in self.rows)
        return (words for headings in above if headings is not None for words in headings.own)

    def lines(self) -> Iterator[Words]:
        """Every line that goes on with one of its rows."""
        return (words for row in self.rows if not row.unsure for words in row.lines)


@dataclass(frozen=True, slots=True)
class SheetTables:
    """All that a sheet holds: its tables, and the texts outside them that hold for the whole sheet."""

    view: View
    tables: tuple[Table, ...]
    texts: tuple[Words, ...]
