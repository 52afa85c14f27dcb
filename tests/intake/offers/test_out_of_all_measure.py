"""Figures far beyond any price, weight or order: told or asked, never a crash, and never an accepted absurd board."""

from decimal import Decimal

import pytest

from tracker.intake.grid import Cell, Grid, Workbook
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers, Reading, State

HEADS = (
    "Item", "Grade", "Caliper (pt)", "Weight (lb/MSF)", "Price USD/short ton", "Min. order (lb)", "Lead time (days)",
    "Freight USD/cwt",
)  # fmt: skip
PRICE = 4
SOUND = ("A1", "SBS C1S", "18", "75", "1100", "20000", "21", "2")
# A spreadsheet's number is a binary one of double precision, so that it lies between these.
FIGURES = ("1.79E+308", "1E+120", "1E-300", "1E+27", "-1E+27", "0", "0.0000001")


def read(row: list[str]) -> Reading:
    cells = {(0, column): Cell(0, column, text, text) for column, text in enumerate(HEADS)}
    for line in range(1, 4):
        for column, value in enumerate(row if line == 2 else (f"A{line}", *SOUND[1:])):
            number = value if column < 2 else Decimal(value)
            cells[line, column] = Cell(line, column, number, f"{number:f}" if column > 1 else value)
    return read_workbook(Workbook("list.xlsx", "", "xlsx", (Grid("", cells),)), Answers())


@pytest.mark.parametrize("column", range(2, len(HEADS)), ids=HEADS[2:])
@pytest.mark.parametrize("figure", FIGURES)
def test_a_number_out_of_all_measure(column, figure):
    row: list[str] = list(SOUND)
    row[column] = figure
    lines = {line.offer.source.cell: line for line in read(row).lines}
    if column == PRICE:
        assert lines["E3"].state in (State.QUESTION, State.REFUSED)
        assert all(len(note.text) < 200 for note in lines["E3"].notes)
        return
    assert lines["E2"].state is lines["E4"].state is State.ACCEPTED
    if column in (2, 3):
        assert lines["E3"].state is State.QUESTION


@pytest.mark.parametrize("column", range(2, len(HEADS)), ids=HEADS[2:])
@pytest.mark.parametrize("figure", ["9" * 30, "9" * 400, "0." + "0" * 400 + "1", "1e400", "1,000" + ",000" * 90])
def test_a_text_out_of_all_measure(column, figure):
    cells = {(0, place): Cell(0, place, text, text) for place, text in enumerate(HEADS)}
    for line in range(1, 4):
        for place, text in enumerate(SOUND):
            own = figure if (line, place) == (2, column) else f"A{line}" if place == 0 else text
            cells[line, place] = Cell(line, place, own, own)
    lines = read_workbook(Workbook("list.csv", "", "csv", (Grid("", cells),)), Answers()).lines
    assert {line.offer.source.cell for line in lines} >= {"E2", "E4"}
    assert all(line.offer.price < 10**12 for line in lines if line.state is State.ACCEPTED)
