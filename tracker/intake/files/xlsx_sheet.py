"""One worksheet part of an xlsx workbook: its cells, merged blocks, hidden rows and columns.

Two ways lead to the same result. Sheets written the usual way go through xlsx_rows, which is about four times as
quick; whatever departs from that (other prefixes, cells without addresses, comments in the markup) is walked element
by element here. The dimension tag is never read: it is often wrong.
"""

from dataclasses import dataclass, field

from tracker.intake.files.cells import Row, RowBuilder, Stored, Style
from tracker.intake.files.markup import Attributes, parse, truth
from tracker.intake.files.package import Package
from tracker.intake.files.places import LAST_COLUMN, LAST_ROW, merged_range, place
from tracker.intake.files.xlsx_cell import SheetContext, stored_value
from tracker.intake.files.xlsx_rows import Irregular, UsualSheet
from tracker.intake.files.xlsx_strings import RichText
from tracker.intake.grid import MergedRange

__all__ = ["SheetContext", "SheetParts", "read_sheet"]

_MOST_MERGED = 100_000


@dataclass(slots=True)
class SheetParts:
    """What a worksheet part holds; hidden columns as (first, last) pairs."""

    rows: dict[int, Row] = field(default_factory=dict)
    merged: list[MergedRange] = field(default_factory=list)
    hidden_rows: set[int] = field(default_factory=set)
    hidden_columns: list[tuple[int, int]] = field(default_factory=list)


def read_sheet(package: Package, part: str, context: SheetContext) -> SheetParts:
    """Read a worksheet part the quick way, and again the thorough way if it is not written as usual."""
    try:
        usual = UsualSheet(context)
        frame = usual.read(package.chunks(part))
    except Irregular:
        return walk_sheet(package, part, context)
    around = _Walk(context)
    parse([frame], around.start, around.end, around.characters)
    return SheetParts(usual.rows, around.parts.merged, usual.hidden_rows, around.parts.hidden_columns)


def walk_sheet(package: Package, part: str, context: SheetContext) -> SheetParts:
    """Read a worksheet part element by element."""
    walk = _Walk(context)
    parse(package.chunks(part), walk.start, walk.end, walk.characters)
    walk.parts.rows = walk.builder.rows
    return walk.parts


class _Walk:
    """Follows the elements of a worksheet part."""

    def __init__(self, context: SheetContext) -> None:
        self.parts = SheetParts()
        self.builder = RowBuilder()
        self._context = context
        self._row = self._column = -1
        self._in_row = False
        self._cells: list[tuple[int, Style, Stored | None]] = []
        self._cell: Attributes | None = None
        self._value: list[str] | None = None
        self._formula: list[str] | None = None
        self._inline: RichText | None = None
        self._target: list[str] | None = None

    def start(self, element: str, attributes: Attributes) -> None:
        if element == "c" and self._in_row:
            self._begin_cell(attributes)
        elif self._inline is not None:
            self._inline.start(element, attributes)
        elif element == "v" and self._cell is not None:
            self._target = self._value = []
        elif element == "f" and self._cell is not None:
            self._target = self._formula = [] if self._formula is None else self._formula
            self._formula_shared = bool(attributes)
        elif element == "is" and self._cell is not None:
            self._inline = RichText()
        elif element == "row" and not self._in_row:
            self._begin_row(attributes)
        elif element == "col":
            self._column_width(attributes)
        elif element == "mergeCell" and len(self.parts.merged) < _MOST_MERGED:
            block = merged_range(attributes.get("ref", ""))
            if block is not None:
                self.parts.merged.append(block)

    def end(self, element: str) -> None:
        if element == "c":
            self._end_cell()
        elif element == "row":
            self.builder.add(self._row, self._cells)
            self._cells = []
            self._in_row = False
        elif element in ("v", "f"):
            self._target = None
        elif self._inline is not None and element != "is":
            self._inline.end(element)

    def characters(self, text: str) -> None:
        if self._target is not None:
            self._target.append(text)
        elif self._inline is not None:
            self._inline.characters(text)

    def _begin_row(self, attributes: Attributes) -> None:
        number = attributes.get("r", "")
        self._row = int(number) - 1 if number.isascii() and number.isdigit() else self._row + 1
        self._column = -1
        self._in_row = True
        if self._row > LAST_ROW or self._row < 0:
            raise ValueError(f"row {number} lies outside a sheet")
        if is_hidden_row(attributes):
            self.parts.hidden_rows.add(self._row)

    def _begin_cell(self, attributes: Attributes) -> None:
        self._cell = attributes
        self._value = self._formula = self._inline = self._target = None
        where = place(attributes.get("r", ""))
        self._column = self._column + 1 if where is None else where[1]
        if self._column > LAST_COLUMN:
            raise ValueError("a cell lies outside the sheet")

    def _end_cell(self) -> None:
        if self._cell is None:
            return
        formula = None
        if self._formula is not None and (self._formula or self._formula_shared):
            formula = "".join(self._formula)
        inline = None if self._inline is None else self._inline.result()
        raw = "".join(self._value or ())
        style = self._context.style(self._cell.get("s"))
        self._cells.append(
            (self._column, style, stored_value(self._cell.get("t", "n"), raw, formula, inline, self._context))
        )
        self._cell = self._inline = None

    def _column_width(self, attributes: Attributes) -> None:
        if not (truth(attributes.get("hidden")) or is_zero(attributes.get("width"))):
            return
        first, last = attributes.get("min", "1"), attributes.get("max", "1")
        if first.isdigit() and last.isdigit():
            self.parts.hidden_columns.append((int(first) - 1, int(last) - 1))


def is_hidden_row(attributes: Attributes) -> bool:
    """Hidden, filtered away or of no height."""
    return truth(attributes.get("hidden")) or is_zero(attributes.get("ht"))


def is_zero(size: str | None) -> bool:
    return size is not None and size.strip("0.") == "" and "0" in size
