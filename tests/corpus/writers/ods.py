"""Writes .ods with odfpy: typed values, currency and percentages by attribute, covered and repeated cells."""

import io
from datetime import date, datetime
from decimal import Decimal
from typing import Any

from odf.opendocument import OpenDocumentSpreadsheet
from odf.style import Style, TableProperties, TextProperties
from odf.table import CoveredTableCell, Table, TableCell, TableColumn, TableRow
from odf.text import P

from tests.corpus.model import CellPlan, FilePlan, SheetPlan

_CURRENCY_OF_FORMAT = {"€": "EUR", "EUR": "EUR", "£": "GBP", "USD": "USD", "SEK": "SEK", "CHF": "CHF", "CAD": "CAD"}


def write_ods(plan: FilePlan) -> bytes:
    book = OpenDocumentSpreadsheet()
    hidden = _style(book, "table", "hiddensheet")
    hidden.addElement(TableProperties(display="false"))
    struck = _style(book, "table-cell", "struck")
    struck.addElement(TextProperties(textlinethroughstyle="solid"))
    for sheet in plan.sheets:
        table = Table(name=sheet.name, **({"stylename": hidden} if sheet.hidden else {}))
        _fill(table, sheet, struck)
        book.spreadsheet.addElement(table)
    stream = io.BytesIO()
    book.write(stream)
    return stream.getvalue()


def _style(book: Any, family: str, name: str) -> Style:
    style = Style(name=name, family=family)
    book.automaticstyles.addElement(style)
    return style


def _fill(table: Table, sheet: SheetPlan, struck: Style) -> None:
    for column in range(sheet.width):
        look = {"visibility": "collapse"} if column in sheet.hidden_columns else {}
        table.addElement(TableColumn(**look))
    spans = {(top, left): (bottom - top + 1, right - left + 1) for top, left, bottom, right in sheet.merged}
    under = {
        (row, column)
        for top, left, bottom, right in sheet.merged
        for row in range(top, bottom + 1)
        for column in range(left, right + 1)
    } - spans.keys()
    for row in range(sheet.height):
        line = TableRow(**({"visibility": "collapse"} if row in sheet.hidden_rows else {}))
        column = 0
        while column < sheet.width:
            column += _put(line, sheet, spans, under, row, column, struck)
        table.addElement(line)


def _put(line: TableRow, sheet: SheetPlan, spans: Any, under: Any, row: int, column: int, struck: Style) -> int:
    """Add one cell, or a run of empty ones as one repeated cell; returns how many columns it covers."""
    if (row, column) in under:
        line.addElement(CoveredTableCell())
        return 1
    cell = sheet.cells.get((row, column))
    if cell is None and (row, column) not in spans:
        run = 1
        while column + run < sheet.width and _is_free(sheet, spans, under, row, column + run):
            run += 1
        line.addElement(TableCell(numbercolumnsrepeated=run) if run > 1 else TableCell())
        return run
    line.addElement(_cell(cell or CellPlan(), spans.get((row, column)), struck))
    return 1


def _is_free(sheet: SheetPlan, spans: Any, under: Any, row: int, column: int) -> bool:
    return not ({(row, column)} & (sheet.cells.keys() | spans.keys() | under))


def _cell(plan: CellPlan, span: tuple[int, int] | None, struck: Style) -> TableCell:
    attributes: dict[str, Any] = {}
    if span:
        attributes |= {"numberrowsspanned": span[0], "numbercolumnsspanned": span[1]}
    if plan.struck:
        attributes["stylename"] = struck
    value = plan.value
    if isinstance(value, Decimal | int):
        currency = next((code for sign, code in _CURRENCY_OF_FORMAT.items() if sign in plan.fmt), None)
        attributes |= {"valuetype": "float", "value": format(Decimal(value), "f")}
        if currency:
            attributes |= {"valuetype": "currency", "currency": currency}
        elif "%" in plan.fmt:
            attributes["valuetype"] = "percentage"
    elif isinstance(value, datetime | date):
        attributes |= {"valuetype": "date", "datevalue": value.isoformat()}
    elif value is not None:
        attributes["valuetype"] = "string"
    cell = TableCell(**attributes)
    for part in _shown(plan).split("\n"):
        cell.addElement(P(text=part))
    return cell


def _shown(plan: CellPlan) -> str:
    if isinstance(plan.value, datetime | date):
        return f"{plan.value:%d.%m.%Y}"
    if isinstance(plan.value, Decimal) and "%" in plan.fmt:
        return f"{(plan.value * 100).normalize():f}%"
    if isinstance(plan.value, Decimal) and plan.places is not None:
        return format(plan.value.quantize(Decimal(1).scaleb(-plan.places)), "f")
    return "" if plan.value is None else str(plan.value)
