"""Binary Office Open XML workbooks (.xlsb). Record layouts: [MS-XLSB], section 2.4 (numbers below are record types).

Read here because no library gives the number formats of an .xlsb, and the currency often stands nowhere else.
"""

import struct
from collections.abc import Iterator
from dataclasses import dataclass, field

from tracker.intake.files.biff12 import Record, Take, records
from tracker.intake.files.cell_values import clean, raised
from tracker.intake.files.cells import (
    RowBuilder,
    SheetCells,
    Stored,
    Style,
    error_cell,
    formula_without_value,
    joined_runs,
)
from tracker.intake.files.number_formats import built_in
from tracker.intake.files.package import Package
from tracker.intake.files.places import LAST_COLUMN, LAST_ROW, spread
from tracker.intake.files.xlsx_cell import SheetContext
from tracker.intake.grid import Grid, MergedRange

_ROW, _BLANK, _RK, _ERROR, _BOOL, _REAL, _TEXT, _SHARED = 0, 1, 2, 3, 4, 5, 6, 7
_FORMULA_TEXT, _FORMULA_REAL, _FORMULA_BOOL, _FORMULA_ERROR, _RICH = 8, 9, 10, 11, 62
_STRING_ITEM, _FONT, _FORMAT, _XF, _COLUMNS, _BOOK, _SHEET = 19, 43, 44, 47, 60, 153, 156
_EMPTY_TEXT = b"\x17\x00\x00"
"""A token of [MS-XLSB] 2.5.97.89 that stands for "": a formula that holds it can come to nothing."""
_MERGED, _BEGIN_CELL_XFS, _END_CELL_XFS, _COMMENT, _COMMENT_TEXT = 176, 617, 618, 635, 637

_ERRORS = {
    0x00: "#NULL!",
    0x07: "#DIV/0!",
    0x0F: "#VALUE!",
    0x17: "#REF!",
    0x1D: "#NAME?",
    0x24: "#NUM!",
    0x2A: "#N/A",
    0x2B: "#GETTING_DATA",
}


@dataclass(frozen=True, slots=True)
class _Font:
    struck: bool
    raised: bool


@dataclass(slots=True)
class _Book:
    """What the sheets of one workbook share."""

    fonts: list[_Font] = field(default_factory=list)
    context: SheetContext = field(default_factory=SheetContext)
    listed: list[tuple[str, str, bool]] = field(default_factory=list)


def read_xlsb(package: Package) -> tuple[Grid, ...]:
    """Every worksheet in the workbook's order; the binary has no room for a formula that was never calculated."""
    part = next(name for name in package.names() if name.endswith("workbook.bin"))
    relations = package.relations(part)
    book = _Book()
    for record in _records(package, part):
        _take_listing(record, book)
    for kind, target in relations.values():
        if kind == "styles" and target in package:
            _take_styles(_records(package, target), book)
    for kind, target in relations.values():
        if kind == "sharedStrings" and target in package:
            strings = (record for record in _records(package, target) if record.kind == _STRING_ITEM)
            book.context.strings.extend(_rich_text(Take(record.body), book.fonts) for record in strings)
    return tuple(
        _grid(package, relations[relation][1], name, hidden, book)
        for name, relation, hidden in book.listed
        if relations.get(relation, ("", ""))[0] == "worksheet" and relations[relation][1] in package
    )


def _records(package: Package, part: str) -> Iterator[Record]:
    return records(package.read(part))


def _take_listing(record: Record, book: _Book) -> None:
    take = Take(record.body)
    if record.kind == _BOOK:
        book.context.epoch_1904 = bool(take.whole(4) & 1)
    elif record.kind == _SHEET:
        state = take.whole(4)
        take.skip(4)
        relation, name = take.text(), take.text()
        book.listed.append((name, relation, state in (1, 2)))


def _take_styles(found: Iterator[Record], book: _Book) -> None:
    codes: dict[int, str] = {}
    in_cell_formats = False
    for record in found:
        take = Take(record.body)
        if record.kind == _FORMAT:
            number = take.whole(2)
            codes[number] = take.text()
        elif record.kind == _FONT:
            take.skip(2)
            bits = take.whole(2)
            take.skip(2)
            book.fonts.append(_Font(bool(bits & 8), take.whole(2) == 1))
        elif record.kind in (_BEGIN_CELL_XFS, _END_CELL_XFS):
            in_cell_formats = record.kind == _BEGIN_CELL_XFS
        elif record.kind == _XF and in_cell_formats:
            take.skip(2)
            number, font = take.whole(2), take.whole(2)
            struck = font < len(book.fonts) and book.fonts[font].struck
            book.context.styles.append(Style(codes.get(number) or built_in(number), struck))


def _grid(package: Package, part: str, name: str, hidden: bool, book: _Book) -> Grid:
    sheet = _Sheet(book)
    for record in _records(package, part):
        sheet.take(record)
    sheet.end_row()
    comments: dict[tuple[int, int], str] = {}
    for kind, target in package.relations(part).values():
        if kind == "comments" and target in package:
            comments |= _comments(_records(package, target))
    cells = SheetCells(sheet.builder.rows, epoch_1904=book.context.epoch_1904, comments=comments)
    hidden_columns = spread(sheet.hidden_columns, cells.extent()[1])
    return Grid(name, cells, tuple(sheet.merged), frozenset(sheet.hidden_rows), hidden_columns, hidden)


class _Sheet:
    """One worksheet's records as they pass."""

    def __init__(self, book: _Book) -> None:
        self.builder = RowBuilder()
        self.merged: list[MergedRange] = []
        self.hidden_rows: set[int] = set()
        self.hidden_columns: list[tuple[int, int]] = []
        self._book = book
        self._row = -1
        self._cells: list[tuple[int, Style, Stored | None]] = []

    def take(self, record: Record) -> None:
        if _RK <= record.kind <= _FORMULA_ERROR or record.kind == _RICH:
            self._cell(record.kind, Take(record.body))
        elif record.kind == _ROW:
            self._begin_row(Take(record.body))
        elif record.kind == _MERGED:
            take = Take(record.body)
            top, bottom, left, right = (take.whole(4) for _ in range(4))
            self.merged.append(MergedRange(top, left, bottom, right))
        elif record.kind == _COLUMNS:
            take = Take(record.body)
            first, last, width = take.whole(4), take.whole(4), take.whole(4)
            take.skip(4)
            if take.whole(2) & 1 or width == 0:
                self.hidden_columns.append((first, last))

    def end_row(self) -> None:
        if self._cells:
            self.builder.add(self._row, self._cells)
            self._cells = []

    def _begin_row(self, take: Take) -> None:
        self.end_row()
        self._row = take.whole(4)
        if self._row > LAST_ROW:
            raise ValueError("a row lies outside the sheet")
        take.skip(4)
        height = take.whole(2)
        take.skip(1)
        if take.whole(1) & 0x10 or height == 0:
            self.hidden_rows.add(self._row)

    def _cell(self, kind: int, take: Take) -> None:
        column = take.whole(4)
        if column > LAST_COLUMN or self._row < 0:
            raise ValueError("a cell lies outside the sheet")
        style = self._book.context.style(str(take.whole(3)))
        take.skip(1)
        self._cells.append((column, style, self._stored(kind, take)))

    def _stored(self, kind: int, take: Take) -> Stored | None:
        if kind == _RK:
            return _rk(take.whole(4))
        if kind in (_REAL, _FORMULA_REAL):
            return take.real()
        if kind in (_ERROR, _FORMULA_ERROR):
            return error_cell(_ERRORS.get(take.whole(1), "#VALUE!"))
        if kind in (_BOOL, _FORMULA_BOOL):
            return bool(take.whole(1))
        if kind == _SHARED:
            index = take.whole(4)
            strings = self._book.context.strings
            return strings[index] if index < len(strings) else None
        if kind == _RICH:
            return _rich_text(take, self._book.fonts)
        text = clean(take.text())
        if kind == _FORMULA_TEXT and not text.strip():
            return None if _EMPTY_TEXT in take.rest() else formula_without_value("")
        return text


def _rk(packed: int) -> float:
    """A number packed in 32 bits ([MS-XLSB] 2.5.122): bit 1 an integer, bit 0 a hundredth of it."""
    if packed & 2:
        number = float(struct.unpack("<i", struct.pack("<I", packed))[0] >> 2)
    else:
        number = float(struct.unpack("<d", struct.pack("<Q", (packed & 0xFFFFFFFC) << 32))[0])
    return number / 100 if packed & 1 else number


def _rich_text(take: Take, fonts: list[_Font]) -> Stored:
    """A string with its runs: from which character on which font."""
    is_rich = bool(take.whole(1) & 1)
    text = take.text()
    if not is_rich:
        return clean(text)
    runs = [(take.whole(2), take.whole(2)) for _ in range(take.whole(4))]
    starts = [0, *(start for start, _ in runs), len(text)]
    plain = _Font(False, False)
    used = [plain, *(fonts[font] if font < len(fonts) else plain for _, font in runs)]
    pieces = zip(starts, starts[1:], used, strict=False)
    return joined_runs(
        [
            (clean(raised(text[start:stop]) if font.raised else text[start:stop]), font.struck)
            for start, stop, font in pieces
            if start < stop
        ]
    )


def _comments(found: Iterator[Record]) -> dict[tuple[int, int], str]:
    comments: dict[tuple[int, int], str] = {}
    where = (0, 0)
    for record in found:
        take = Take(record.body)
        if record.kind == _COMMENT:
            take.skip(4)
            row = take.whole(4)
            take.skip(4)
            where = (row, take.whole(4))
        elif record.kind == _COMMENT_TEXT:
            take.skip(1)
            comments[where] = clean(take.text())
    return comments
