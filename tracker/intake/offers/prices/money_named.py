"""Every currency that a file names outright: what a shared sign ('ct') may then be a part of."""

from collections.abc import Iterable, Iterator

from tracker.intake.grid import Cell
from tracker.intake.offers.sheet import ReadSheet
from tracker.intake.values.figures.formats import number_format_currency
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.currency import CurrencyReading, find_currencies


def money_named(sheets: Iterable[ReadSheet]) -> frozenset[str]:
    """ISO 4217 codes that the file's texts, prices, unit cells and number formats name without a doubt."""
    return frozenset(reading.code for sheet in sheets for reading in _readings(sheet) if reading.code is not None)


def _readings(sheet: ReadSheet) -> Iterator[CurrencyReading]:
    cells = list(_cells(sheet))
    for text in {*sheet.all_texts(), *(cell.text for cell in cells if isinstance(cell.value, str))}:
        yield from find_currencies(text)
    for code in {cell.number_format for cell in cells}:
        reading = number_format_currency(code)
        if reading is not None:
            yield reading


def _cells(sheet: ReadSheet) -> Iterator[Cell]:
    for read in sheet.tables:
        priced = [price.column for price in read.columns.prices]
        for column in (*priced, *read.columns.of(Role.BASIS, Role.CURRENCY)):
            yield from read.cells(column)
