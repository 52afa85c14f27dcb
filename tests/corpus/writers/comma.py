"""Writes delimited text in the dialect the plan asks for. Row n of the first sheet is record n."""

import csv
import io
from datetime import date, datetime
from decimal import Decimal

from tests.corpus.model import CellPlan, Csv, FilePlan

NO_BREAK = "\u00a0"


def write_csv(plan: FilePlan) -> bytes:
    sheet, dialect = plan.sheets[0], plan.csv
    stream = io.StringIO()
    quoting = csv.QUOTE_ALL if dialect.quote_all else csv.QUOTE_MINIMAL
    writer = csv.writer(stream, delimiter=dialect.delimiter, lineterminator=dialect.newline, quoting=quoting)
    width = sheet.width
    for row in range(sheet.height):
        cells = [sheet.cells.get((row, column)) for column in range(width)]
        values = [as_text(cell, dialect) for cell in cells]
        writer.writerow(values if any(values) else [])
    return _encoded(stream.getvalue(), dialect.encoding)


def _encoded(text: str, encoding: str) -> bytes:
    """A program that can't save a letter in the old code page falls back to UTF-8."""
    try:
        return text.encode(encoding)
    except UnicodeEncodeError:
        return text.encode("utf-8-sig")


def as_text(cell: CellPlan | None, dialect: Csv) -> str:
    """What a spreadsheet program would save for the cell."""
    if cell is None or cell.value is None:
        return cell.error or "" if cell else ""
    value = cell.value
    if isinstance(value, Decimal) or (isinstance(value, int) and cell.places):
        return number_text(Decimal(value), cell.places, dialect)
    if isinstance(value, datetime | date):
        return f"{value:%Y-%m-%d}" if dialect.decimal == "." else f"{value:%d.%m.%Y}"
    return str(value)


def number_text(value: Decimal, places: int | None, dialect: Csv) -> str:
    """A number in the dialect; thousands are grouped only beside decimals, so that one reading is left."""
    shown = format(value if places is None else value.quantize(Decimal(1).scaleb(-places)), "f")
    whole, _, decimals = shown.partition(".")
    if dialect.thousands and decimals and len(decimals) != 3:
        whole = f"{int(whole):,}".replace(",", dialect.thousands)
    return whole + (dialect.decimal + decimals if decimals else "")
