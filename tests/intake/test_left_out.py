"""A question that has no answer in the sheet: its lines can be left out, and only its lines."""

from decimal import Decimal

from tracker.intake.grid import Cell, Grid, Workbook
from tracker.intake.read import read_workbook
from tracker.trade.offer import LEAVE_OUT, Answers, Reading, State

ROWS = (
    ("Product", "Grade", "Caliper (pt)", "Basis weight (g/m²)", "Price USD/tonne"),
    ("Fenlight 18", "SBS", 18, 335, 1240),
    ("Fenlight 20", "SBS", 20, 3650, 1230),
)


def read(**settled: str) -> Reading:
    cells = {
        (row, column): Cell(row, column, value if isinstance(value, str) else Decimal(value), str(value), "General")
        for row, values in enumerate(ROWS)
        for column, value in enumerate(values)
    }
    return read_workbook(Workbook("f.xlsx", "0", "xlsx", (Grid("P", cells),)), Answers(settled))


def test_lines_of_an_impossible_weight_are_left_out_and_say_so() -> None:
    asked = read()
    assert [question.key for question in asked.questions] == ["weight"]
    left = read(weight=LEAVE_OUT)
    assert left.questions == ()
    assert [line.state for line in left.lines] == [State.ACCEPTED, State.REFUSED]
    assert left.lines[0] == asked.lines[0]
    assert left.lines[1].notes[-1].text == "Left out, as you decided."


def test_leaving_out_is_never_taken_for_a_currency_or_a_unit() -> None:
    assert read(currency=LEAVE_OUT, basis=LEAVE_OUT, ton=LEAVE_OUT, decimal=LEAVE_OUT) == read()
