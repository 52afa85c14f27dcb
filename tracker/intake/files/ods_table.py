"""The tables of an OpenDocument spreadsheet, walked element by element into grids."""

import re
from datetime import datetime, timedelta

from tracker.intake.files.cell_values import clean, raised, visible
from tracker.intake.files.cells import (
    MOST_CELLS,
    RowBuilder,
    SheetCells,
    Special,
    Stored,
    Style,
    TooManyCells,
    calculates_to_nothing,
    error_cell,
    formula_without_value,
    is_blank,
    joined_runs,
    written_date,
)
from tracker.intake.files.markup import Attributes
from tracker.intake.files.ods_styles import OdsStyles
from tracker.intake.files.places import LAST_COLUMN, LAST_ROW, spread
from tracker.intake.files.xlsx_cell import number_or_text
from tracker.intake.grid import Grid, MergedRange

_NOT_CELLS = frozenset(
    ("tracked-changes", "dde-links", "shapes", "frame", "custom-shape", "rect", "ellipse", "g", "control", "line")
)
"""Elements whose insides may hold texts and tables that are no part of the sheet."""
_DURATION = re.compile(r"(-?)P(?:(\d+)D)?T?(?:(\d+)H)?(?:(\d+)M)?(?:(\d+)(?:[.,]\d+)?S)?")
_ERRORS = re.compile(r"#(?:N/A|NAME\?|REF!|VALUE!|DIV/0!|NUM!|NULL!)|Err:\d{3}")


class OdsTables:
    """Gathers grids from the body of a document."""

    def __init__(self, styles: OdsStyles) -> None:
        self.grids: list[Grid] = []
        self._styles = styles
        self._skipped = 0
        self._table: _Table | None = None
        self._cell: _CellText | None = None
        self._attributes: Attributes = {}

    def start(self, element: str, attributes: Attributes) -> None:
        if self._skipped or element in _NOT_CELLS:
            self._skipped += 1
        elif element == "table-cell" and self._table is not None:
            self._attributes = attributes
            self._cell = _CellText(self._styles)
        elif self._cell is not None:
            self._cell.start(element, attributes)
        elif element == "table-row" and self._table is not None:
            self._table.begin_row(attributes)
        elif element == "covered-table-cell" and self._table is not None:
            self._table.skip_cells(_count(attributes, "table:number-columns-repeated"))
        elif element == "table-column" and self._table is not None:
            self._table.add_columns(attributes)
        elif element == "table":
            self._table = _Table(self._styles, attributes)

    def end(self, element: str) -> None:
        if self._skipped:
            self._skipped -= 1
        elif element == "table-cell" and self._cell is not None and self._table is not None:
            self._table.add_cell(self._attributes, self._cell)
            self._cell = None
        elif self._cell is not None:
            self._cell.end(element)
        elif element == "table-row" and self._table is not None:
            self._table.end_row()
        elif element == "table" and self._table is not None:
            self.grids.append(self._table.grid())
            self._table = None

    def characters(self, text: str) -> None:
        if self._cell is not None and not self._skipped:
            self._cell.characters(text)


class _CellText:
    """The paragraphs of one cell, with their struck and raised spans, and its annotation."""

    def __init__(self, styles: OdsStyles) -> None:
        self.comment: list[str] = []
        self._styles = styles
        self._runs: list[tuple[str, bool]] = []
        self._spans: list[str] = []
        self._in_annotation = self._in_paragraph = False
        self._paragraphs = 0

    def start(self, element: str, attributes: Attributes) -> None:
        if element == "annotation":
            self._in_annotation = True
        elif element == "p":
            self._in_paragraph = True
            if self._in_annotation:
                self.comment.append("\n" if self.comment else "")
            else:
                self._paragraphs += 1
                if self._paragraphs > 1:
                    self.characters("\n")
        elif element == "span":
            self._spans.append(attributes.get("text:style-name", ""))
        elif element == "s":
            self.characters(" " * min(_count(attributes, "text:c"), 1000))
        elif element == "tab":
            self.characters("\t")
        elif element == "line-break":
            self.characters("\n")

    def end(self, element: str) -> None:
        if element == "annotation":
            self._in_annotation = False
        elif element == "p":
            self._in_paragraph = False
        elif element == "span" and self._spans:
            self._spans.pop()

    @property
    def is_written(self) -> bool:
        """Whether the cell shows anything, be it an empty line."""
        return self._paragraphs > 0

    def characters(self, text: str) -> None:
        if not self._in_paragraph:
            return
        if self._in_annotation:
            self.comment.append(text)
            return
        if not self._spans:
            self._runs.append((text, False))
            return
        if any(self._styles.is_raised(span) for span in self._spans):
            text = raised(text)
        self._runs.append((text, any(self._styles.is_struck(span) for span in self._spans)))

    def stored(self) -> Stored:
        if len(self._runs) == 1 and not self._runs[0][1]:
            return clean(self._runs[0][0])
        return joined_runs([(clean(text), struck) for text, struck in self._runs])


class _Table:
    """One table on the way to a grid; repeated rows and cells are written out where they hold something."""

    def __init__(self, styles: OdsStyles, attributes: Attributes) -> None:
        self._styles = styles
        self._name = attributes.get("table:name", "")
        self._hidden = attributes.get("table:style-name", "") in styles.unseen_tables
        self._builder = RowBuilder()
        self._merged: list[MergedRange] = []
        self._hidden_rows: list[tuple[int, int]] = []
        self._columns: list[tuple[int, int, str, bool]] = []
        self._comments: dict[tuple[int, int], str] = {}
        self._width = 0
        self._row = self._column = 0
        self._row_style = ""
        self._row_repeat = 1
        self._cells: list[tuple[int, Style, Stored | None]] = []

    def add_columns(self, attributes: Attributes) -> None:
        repeat = _count(attributes, "table:number-columns-repeated")
        style = attributes.get("table:default-cell-style-name", "")
        self._columns.append((self._width, self._width + repeat - 1, style, _is_unseen(attributes)))
        self._width += repeat

    def begin_row(self, attributes: Attributes) -> None:
        self._row_repeat = _count(attributes, "table:number-rows-repeated")
        self._row_style = attributes.get("table:default-cell-style-name", "")
        self._column = 0
        self._cells = []
        if _is_unseen(attributes):
            self._hidden_rows.append((self._row, self._row + self._row_repeat - 1))

    def end_row(self) -> None:
        if self._cells:
            if self._row + self._row_repeat - 1 > LAST_ROW:
                raise ValueError("cells lie outside the sheet")
            if self._row_repeat * len(self._cells) > MOST_CELLS:
                raise TooManyCells
            for row in range(self._row, self._row + self._row_repeat):
                self._builder.add(row, self._cells)
        self._row += self._row_repeat

    def skip_cells(self, count: int) -> None:
        """Cells under a merged one; what they may hold is not shown."""
        self._column += count

    def add_cell(self, attributes: Attributes, text: _CellText) -> None:
        repeat = _count(attributes, "table:number-columns-repeated")
        right = _count(attributes, "table:number-columns-spanned")
        down = _count(attributes, "table:number-rows-spanned")
        if right > 1 or down > 1:
            self._merged.append(MergedRange(self._row, self._column, self._row + down - 1, self._column + right - 1))
        stored = _stored(attributes, text)
        if not is_blank(stored):
            if self._column + repeat - 1 > LAST_COLUMN:
                raise ValueError("cells lie outside the sheet")
            style = self._style(attributes, text)
            self._cells.extend((column, style, stored) for column in range(self._column, self._column + repeat))
            if text.comment:
                self._comments[self._row, self._column] = clean("".join(text.comment))
        self._column += repeat

    def grid(self) -> Grid:
        cells = SheetCells(self._builder.rows, comments=self._comments)
        height, width = cells.extent()
        return Grid(
            self._name,
            cells,
            tuple(self._merged),
            spread(self._hidden_rows, height),
            spread(((first, last) for first, last, _, unseen in self._columns if unseen), width),
            self._hidden,
        )

    def _style(self, attributes: Attributes, text: _CellText) -> Style:
        name = attributes.get("table:style-name") or self._row_style or self._column_style()
        kind, currency = attributes.get("office:value-type"), attributes.get("office:currency", "")
        if kind == "currency" and not currency:
            currency = self._styles.shown_currency(name, visible_text(text))
        return self._styles.style(name, currency, kind == "percentage")

    def _column_style(self) -> str:
        return next((style for first, last, style, _ in self._columns if first <= self._column <= last), "")


def _is_unseen(attributes: Attributes) -> bool:
    return attributes.get("table:visibility", "visible") in ("collapse", "filter")


def _count(attributes: Attributes, name: str) -> int:
    """A repeat or span: at least 1."""
    text = attributes.get(name)
    if text is None:
        return 1
    return max(1, int(text)) if text.isascii() and text.isdigit() and len(text) < 9 else 1


def _stored(attributes: Attributes, text: _CellText) -> Stored | None:
    kind = attributes.get("office:value-type", "")
    formula = attributes.get("table:formula")
    if attributes.get("calcext:value-type") == "error":
        return error_cell(visible_text(text) or "#VALUE!")
    value = _value(kind, attributes, text)
    if formula is not None:
        if is_blank(value):
            is_nothing = (kind == "string" or text.is_written) and calculates_to_nothing(formula)
            return None if is_nothing else formula_without_value(clean(formula.partition("=")[2]))
        if isinstance(value, str) and _ERRORS.fullmatch(value.strip()):
            return error_cell(value.strip())
    return value


def visible_text(text: _CellText) -> str:
    stored = text.stored()
    return stored if isinstance(stored, str) else stored.text if isinstance(stored, Special) else ""


def _value(kind: str, attributes: Attributes, text: _CellText) -> Stored | None:
    if kind in ("float", "percentage", "currency"):
        raw = attributes.get("office:value", "")
        return number_or_text(raw) if raw else None
    if kind == "date":
        return _date(attributes.get("office:date-value", ""))
    if kind == "time":
        return _time(attributes.get("office:time-value", ""))
    if kind == "boolean":
        return attributes.get("office:boolean-value") == "true"
    written = attributes.get("office:string-value")
    return clean(written) if written is not None else text.stored()


def _date(raw: str) -> Stored:
    try:
        return written_date(datetime.fromisoformat(raw.partition(".")[0]).replace(tzinfo=None))
    except ValueError:
        return clean(raw)


def _time(raw: str) -> Stored:
    """A time of day below a day's length, else a duration; LibreOffice writes both as PT06H30M00S."""
    found = _DURATION.fullmatch(raw)
    if found is None:
        return clean(raw)
    days, hours, minutes, seconds = (int(part or 0) for part in found.groups()[1:])
    length = timedelta(days=min(days, 10**6), hours=hours, minutes=minutes, seconds=seconds)
    if found[1] or length >= timedelta(days=1):
        value = -length if found[1] else length
        return Special(value, visible(value))
    moment = (datetime.min + length).time()
    return Special(moment, visible(moment))
