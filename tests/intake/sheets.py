"""Small sheets for tests, written as rows of plain values."""

from decimal import Decimal

from tracker.intake.grid import Cell, Grid, MergedRange, Workbook
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers


def cell(row, column, value, **more):
    text = f"{value:f}" if isinstance(value, Decimal) else str(value)
    return Cell(row, column, value, text, **more)


def grid(rows, sheet="Sheet1", formats=(), **more):
    """Rows of values; None is empty, numbers become Decimals. `formats`: {(row, column): number format}."""
    formats = dict(formats)
    cells = {}
    for r, row in enumerate(rows):
        for c, value in enumerate(row):
            if value is None or value == "":
                continue
            exact = Decimal(str(value)) if isinstance(value, int | float) else value
            cells[r, c] = cell(r, c, exact, number_format=formats.get((r, c), "General"))
    return Grid(sheet, cells, **more)


def merged(*blocks):
    return tuple(MergedRange(*block) for block in blocks)


def book(*grids, kind="xlsx"):
    return Workbook("sheet.xlsx", "0" * 64, kind, grids)


def read(rows, answers=None, **more):
    """The Reading of one sheet."""
    return read_workbook(book(grid(rows, **more)), Answers(answers or {}))


def lines(rows, answers=None, **more):
    """Its lines by the address of their price."""
    return {line.offer.source.cell: line for line in read(rows, answers, **more).lines}


def codes(line):
    return {note.code.value for note in line.notes}


def prices(found):
    """Cell -> state, price and basis."""
    return {
        cell: (str(line.state), f"{line.offer.price:f}" if line.offer.price is not None else None, line.offer.basis)
        for cell, line in found.items()
    }
