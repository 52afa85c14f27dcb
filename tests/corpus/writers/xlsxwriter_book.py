"""Writes .xlsx with xlsxwriter: shared strings, and formulas with the value they had when saved."""

import io
from datetime import date
from decimal import Decimal
from typing import Any

import xlsxwriter

from tests.corpus.model import CellPlan, FilePlan, SheetPlan


def write_xlsx_shared(plan: FilePlan) -> bytes:
    stream = io.BytesIO()
    options = {"in_memory": True, "date_1904": plan.date1904, "strings_to_formulas": False}
    book = xlsxwriter.Workbook(stream, options)
    formats: dict[tuple[Any, ...], Any] = {}
    for sheet in plan.sheets:
        _fill(book, book.add_worksheet(sheet.name), sheet, formats)
    _show_the_first_visible(book, plan.sheets)
    book.close()
    return stream.getvalue()


def _show_the_first_visible(book: Any, sheets: list[SheetPlan]) -> None:
    visible = next(index for index, sheet in enumerate(sheets) if not sheet.hidden)
    book.worksheets()[visible].activate()
    book.worksheets()[visible].set_first_sheet()


def _fill(book: Any, target: Any, sheet: SheetPlan, formats: dict[tuple[Any, ...], Any]) -> None:
    covered = {(top, left): (bottom, right) for top, left, bottom, right in sheet.merged}
    for (row, column), cell in sorted(sheet.cells.items()):
        look = _format(book, cell, formats)
        if (row, column) in covered:
            target.merge_range(row, column, *covered[row, column], "", look)
        _write(target, row, column, cell, look)
    for row in sheet.hidden_rows:
        target.set_row(row, None, None, {"hidden": True})
    for column in sheet.hidden_columns:
        target.set_column(column, column, None, None, {"hidden": True})
    if sheet.hidden:
        target.hide()


def _format(book: Any, cell: CellPlan, formats: dict[tuple[Any, ...], Any]) -> Any:
    number = cell.fmt or ("dd/mm/yyyy" if isinstance(cell.value, date) else "")
    key = (number, cell.bold, cell.struck)
    if key == ("", False, False):
        return None
    if key not in formats:
        look = {"num_format": number} if number else {}
        formats[key] = book.add_format({**look, "bold": cell.bold, "font_strikeout": cell.struck})
    return formats[key]


def _write(target: Any, row: int, column: int, cell: CellPlan, look: Any) -> None:
    value = cell.value
    if cell.formula:  # a program that can't calculate stores 0, as if that were the result
        target.write_formula(row, column, cell.formula, look, float(value or 0))
    elif cell.error:
        target.write_formula(row, column, f"={cell.error}", look, cell.error)
    elif isinstance(value, bool):
        target.write_boolean(row, column, value, look)
    elif isinstance(value, Decimal | int):
        target.write_number(row, column, float(value), look)
    elif isinstance(value, date):
        target.write_datetime(row, column, value, look)
    elif value is None:
        target.write_blank(row, column, None, look)
    else:
        target.write_string(row, column, value, look)
    if cell.comment:
        target.write_comment(row, column, cell.comment)
