"""Writes .xlsx and .xlsm with openpyxl: formulas have no stored value here."""

import io
import re
import zipfile

import openpyxl
from openpyxl.comments import Comment
from openpyxl.styles import Font
from openpyxl.utils.datetime import CALENDAR_MAC_1904
from openpyxl.worksheet.worksheet import Worksheet

from tests.corpus.model import CellPlan, FilePlan, SheetPlan

_XLSX_MAIN = b"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"
_XLSM_MAIN = b"application/vnd.ms-excel.sheet.macroEnabled.main+xml"


def write_xlsx(plan: FilePlan) -> bytes:
    book = openpyxl.Workbook()
    book.remove(book.active)
    if plan.date1904:
        book.epoch = CALENDAR_MAC_1904
    for sheet in plan.sheets:
        _fill(book.create_sheet(sheet.name), sheet)
    stream = io.BytesIO()
    book.save(stream)
    return _claim_a_million_rows(stream.getvalue()) if plan.huge_dimension else stream.getvalue()


def write_xlsm(plan: FilePlan) -> bytes:
    """The same, declared as a workbook that may carry macros (it carries none)."""
    return _replace(write_xlsx(plan), "[Content_Types].xml", lambda part: part.replace(_XLSX_MAIN, _XLSM_MAIN))


def _fill(target: Worksheet, sheet: SheetPlan) -> None:
    for (row, column), cell in sheet.cells.items():
        _write(target, row + 1, column + 1, cell)
    for top, left, bottom, right in sheet.merged:
        target.merge_cells(start_row=top + 1, start_column=left + 1, end_row=bottom + 1, end_column=right + 1)
    for row in sheet.hidden_rows:
        target.row_dimensions[row + 1].hidden = True
    for column in sheet.hidden_columns:
        target.column_dimensions[openpyxl.utils.get_column_letter(column + 1)].hidden = True
    if sheet.hidden:
        target.sheet_state = "hidden"


def _write(target: Worksheet, row: int, column: int, plan: CellPlan) -> None:
    cell = target.cell(row, column)
    if plan.formula:
        cell.value = plan.formula
    elif plan.error:
        cell.value = plan.error
        cell.data_type = "e"
    else:
        cell.value = plan.value
        if isinstance(plan.value, str):
            cell.data_type = "s"
    if plan.fmt:
        cell.number_format = plan.fmt
    if plan.bold or plan.struck:
        cell.font = Font(bold=plan.bold, strike=plan.struck)
    if plan.comment:
        cell.comment = Comment(plan.comment, "price desk")


def _claim_a_million_rows(data: bytes) -> bytes:
    def widen(part: bytes) -> bytes:
        return re.sub(rb'<dimension ref="[^"]*"', b'<dimension ref="A1:XFD1048576"', part)

    return _replace(data, "xl/worksheets/sheet1.xml", widen)


def _replace(data: bytes, name: str, change) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(data)) as old, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as new:
        for item in old.infolist():
            part = old.read(item.filename)
            new.writestr(item.filename, change(part) if item.filename == name else part)
    return out.getvalue()
