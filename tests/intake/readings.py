"""Readings of rows of plain values, and what was accepted in them by the cell of its price."""

from decimal import Decimal
from typing import Any

from tracker.intake.grid import Cell, Grid, MergedRange, Workbook
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers, Line, NoteCode, Offer, Reading, State
from tracker.trade.quantities import MassUnit, kilograms

Rows = list[list[Any]]


def read_rows(rows: Rows, *, merged: tuple[MergedRange, ...] = (), hidden: frozenset[int] = frozenset()) -> Reading:
    cells = {}
    for row, values in enumerate(rows):
        for column, given in enumerate(values):
            if given is not None:
                value = Decimal(str(given)) if isinstance(given, int | float) else given
                cells[row, column] = Cell(row, column, value, str(given), "General")
    grid = Grid("Sheet1", cells, merged, frozenset(), hidden)
    return read_workbook(Workbook("list.xlsx", "0" * 64, "xlsx", (grid,)), Answers())


def by_cell(reading: Reading) -> dict[str, Line]:
    return {line.offer.source.cell: line for line in reading.lines}


def accepted(reading: Reading) -> dict[str, tuple[str | None, str, str | None, str | None]]:
    """Cell -> grade, price, currency, basis of every accepted line."""
    return {
        cell: (
            line.offer.grade,
            f"{line.offer.price:f}",
            line.offer.currency,
            str(line.offer.basis.value) if line.offer.basis else None,
        )
        for cell, line in by_cell(reading).items()
        if line.state is State.ACCEPTED
    }


def offer_below(*texts: str, apart: bool = False) -> Offer:
    """The offer of a list of one board in EUR per tonne, below texts; `apart`: with an empty row between them."""
    head, board = ["Grade", "µm", "g/m²", "EUR/tonne"], ["GC1", 450, 300, 1100]
    (line,) = read_rows([*([text] for text in texts), *([[]] if apart else []), head, board]).lines
    assert line.state is State.ACCEPTED
    return line.offer


def note_codes(line: Line) -> set[NoteCode]:
    return {note.code for note in line.notes}


def pounds(number: int) -> Decimal:
    mass = kilograms(Decimal(number), MassUnit.LB)
    return Decimal(mass.numerator) / Decimal(mass.denominator)
