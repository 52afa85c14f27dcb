"""Writes the binary .xlsb: just the records a price sheet needs.

Record numbers and layouts after [MS-XLSB] (from memory, checked by opening the result in a spreadsheet program).
"""

import io
import struct
import zipfile
from collections import defaultdict
from datetime import date, datetime
from decimal import Decimal

from tests.corpus.model import CellPlan, FilePlan, SheetPlan

ROW, BLANK, ERROR, REAL, TEXT = 0, 1, 3, 5, 6
FMT, XF, COLUMN, BUNDLE_SHEET, BOOK_PROPERTIES, MERGE = 44, 47, 60, 156, 153, 176
SHEET, BOOK, SHEETS, DATA, MERGES, STYLES = (129, 130), (131, 132), (143, 144), (145, 146), (177, 178), (278, 279)
COLUMNS, FORMATS, CELL_FORMATS, STYLE_FORMATS = (390, 391), (615, 616), (617, 618), (626, 627)
FIRST_OWN_FORMAT = 164
ERRORS = {"#DIV/0!": 0x07, "#VALUE!": 0x0F, "#REF!": 0x17, "#N/A": 0x2A}

_TYPES = """<?xml version="1.0" encoding="UTF-8" standalone="yes"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
<Default Extension="bin" ContentType="application/vnd.ms-excel.sheet.binary.macroEnabled.main"/>
<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
{parts}<Override PartName="/xl/styles.bin" ContentType="application/vnd.ms-excel.styles"/></Types>"""
_SHEET_TYPE = '<Override PartName="/xl/worksheets/sheet{n}.bin" ContentType="application/vnd.ms-excel.worksheet"/>'
_RELATIONS = """<?xml version="1.0" encoding="UTF-8" standalone="yes"?>
<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">{relations}</Relationships>"""
_OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"


def write_xlsb(plan: FilePlan) -> bytes:
    codes = sorted({_code(cell) for sheet in plan.sheets for cell in sheet.cells.values()} - {"General"})
    style_of = {"General": 0} | {code: index for index, code in enumerate(codes, start=1)}
    numbers = range(1, len(plan.sheets) + 1)
    relations = [_relation(f"rId{n}", "worksheet", f"worksheets/sheet{n}.bin") for n in numbers]
    relations.append(_relation("rIdS", "styles", "styles.bin"))
    stream = io.BytesIO()
    with zipfile.ZipFile(stream, "w", zipfile.ZIP_DEFLATED) as archive:
        types = "".join(_SHEET_TYPE.format(n=n) for n in numbers)
        archive.writestr("[Content_Types].xml", _TYPES.format(parts=types))
        main = _relation("rId1", "officeDocument", "xl/workbook.bin")
        archive.writestr("_rels/.rels", _RELATIONS.format(relations=main))
        archive.writestr("xl/workbook.bin", _workbook(plan))
        archive.writestr("xl/_rels/workbook.bin.rels", _RELATIONS.format(relations="".join(relations)))
        archive.writestr("xl/styles.bin", _styles(codes))
        for n, sheet in zip(numbers, plan.sheets, strict=True):
            archive.writestr(f"xl/worksheets/sheet{n}.bin", _sheet(sheet, style_of, plan.date1904))
    return stream.getvalue()


def _relation(name: str, kind: str, target: str) -> str:
    return f'<Relationship Id="{name}" Type="{_OFFICE}/{kind}" Target="{target}"/>'


def _record(number: int, body: bytes = b"") -> bytes:
    head = bytes([number]) if number < 128 else bytes([(number & 0x7F) | 0x80, number >> 7])
    size, length = b"", len(body)
    while True:
        more = length > 0x7F
        size += bytes([(length & 0x7F) | (0x80 if more else 0)])
        length >>= 7
        if not more:
            return head + size + body


def _block(ends: tuple[int, int], content: bytes, count: int | None = None) -> bytes:
    return _record(ends[0], b"" if count is None else struct.pack("<I", count)) + content + _record(ends[1])


def _wide(text: str) -> bytes:
    return struct.pack("<I", len(text.encode("utf-16-le")) // 2) + text.encode("utf-16-le")


def _workbook(plan: FilePlan) -> bytes:
    sheets = b""
    for index, sheet in enumerate(plan.sheets, start=1):
        body = struct.pack("<II", int(sheet.hidden), index) + _wide(f"rId{index}") + _wide(sheet.name)
        sheets += _record(BUNDLE_SHEET, body)
    properties = _record(BOOK_PROPERTIES, struct.pack("<II", int(plan.date1904), 0) + _wide(""))
    return _block(BOOK, properties + _block(SHEETS, sheets))


def _styles(codes: list[str]) -> bytes:
    own = b"".join(
        _record(FMT, struct.pack("<H", FIRST_OWN_FORMAT + index) + _wide(code)) for index, code in enumerate(codes)
    )
    used = [0, *(FIRST_OWN_FORMAT + index for index in range(len(codes)))]
    formats = b"".join(_record(XF, struct.pack("<HHHHHBBI", 0, code, 0, 0, 0, 0, 0, 0x1000)) for code in used)
    base = _record(XF, struct.pack("<HHHHHBBI", 0xFFFF, 0, 0, 0, 0, 0, 0, 0x1000))
    parts = _block(FORMATS, own, len(codes)) if codes else b""
    return _block(STYLES, parts + _block(STYLE_FORMATS, base, 1) + _block(CELL_FORMATS, formats, len(used)))


def _sheet(sheet: SheetPlan, style_of: dict[str, int], date1904: bool) -> bytes:
    size = _record(148, struct.pack("<IIII", 0, max(sheet.height - 1, 0), 0, max(sheet.width - 1, 0)))
    columns = b"".join(_record(COLUMN, struct.pack("<IIIIH", c, c, 2560, 0, 1)) for c in sorted(sheet.hidden_columns))
    by_row = defaultdict(list)
    for row, column in sheet.cells:
        by_row[row].append(column)
    rows = b""
    for row in range(sheet.height):
        filled = sorted(by_row[row])
        if not filled and row not in sheet.hidden_rows:
            continue
        hidden = 0x10 if row in sheet.hidden_rows else 0
        rows += _record(ROW, struct.pack("<IIHBBBI", row, 0, 300, 0, hidden, 0, 0))
        for column in filled:
            cell = sheet.cells[row, column]
            rows += _cell(cell, column, style_of[_code(cell)], date1904)
    merged = b"".join(_record(MERGE, struct.pack("<IIII", t, b, le, r)) for t, le, b, r in sheet.merged)
    parts = size + (_block(COLUMNS, columns) if columns else b"") + _block(DATA, rows)
    return _block(SHEET, parts + (_block(MERGES, merged, len(sheet.merged)) if merged else b""))


def _cell(plan: CellPlan, column: int, style: int, date1904: bool) -> bytes:
    head = struct.pack("<II", column, style)
    if plan.formula:
        raise ValueError("a family with formulas can't be saved as .xlsb by this writer")
    if plan.error:
        return _record(ERROR, head + bytes([ERRORS[plan.error]]))
    value = plan.value
    if value is None:
        return _record(BLANK, head)
    if isinstance(value, date):
        start = date(1904, 1, 1) if date1904 else date(1899, 12, 30)
        day = value.date() if isinstance(value, datetime) else value
        return _record(REAL, head + struct.pack("<d", (day - start).days))
    if isinstance(value, Decimal | int):
        return _record(REAL, head + struct.pack("<d", float(value)))
    return _record(TEXT, head + _wide(str(value)))


def _code(cell: CellPlan) -> str:
    return cell.fmt or ("dd/mm/yyyy" if isinstance(cell.value, date) else "General")
