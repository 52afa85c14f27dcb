"""Writes the old binary .xls with xlwt."""

import io
from datetime import date
from decimal import Decimal
from typing import Any

import xlwt

from tests.corpus.model import CellPlan, FilePlan, SheetPlan


def write_xls(plan: FilePlan) -> bytes:
    book = xlwt.Workbook(encoding="utf-8")
    book.dates_1904 = plan.date1904
    styles: dict[tuple[Any, ...], Any] = {}
    for sheet in plan.sheets:
        _fill(book.add_sheet(sheet.name, cell_overwrite_ok=True), sheet, styles)
    stream = io.BytesIO()
    book.active_sheet = next(index for index, sheet in enumerate(plan.sheets) if not sheet.hidden)
    book.save(stream)
    return stream.getvalue()


def _fill(target: Any, sheet: SheetPlan, styles: dict[tuple[Any, ...], Any]) -> None:
    covered = {(top, left): (bottom, right) for top, left, bottom, right in sheet.merged}
    for (row, column), cell in sorted(sheet.cells.items()):
        value, style = _value(cell), _style(cell, styles)
        if (row, column) in covered:
            bottom, right = covered[row, column]
            target.write_merge(row, bottom, column, right, value, style)
        else:
            target.write(row, column, value, style)
    for row in sheet.hidden_rows:
        target.row(row).hidden = True
    for column in sheet.hidden_columns:
        target.col(column).hidden = True
    if sheet.hidden:
        target.visibility = 1


def _value(cell: CellPlan) -> Any:
    if cell.error or cell.formula:
        raise ValueError("a family with formulas or error cells can't be saved as .xls by this writer")
    return float(cell.value) if isinstance(cell.value, Decimal) else cell.value  # None writes a blank with its format


def _style(cell: CellPlan, styles: dict[tuple[Any, ...], Any]) -> Any:
    number = cell.fmt or ("DD/MM/YYYY" if isinstance(cell.value, date) else "General")
    key = (number, cell.bold, cell.struck)
    if key not in styles:
        style = xlwt.XFStyle()
        style.num_format_str = number
        style.font.bold = cell.bold
        style.font.struck_out = cell.struck
        styles[key] = style
    return styles[key]
