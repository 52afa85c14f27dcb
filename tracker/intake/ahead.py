"""What reading any file needs, loaded before there is a file: modules, word lists, what they are compiled to."""

from decimal import Decimal

from tracker.intake.grid import Cell, Grid, Workbook
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

_ROWS: tuple[tuple[str | int, ...], ...] = (
    ("Board", "Grade", "Caliper (pt)", "g/m²", "EUR/t", "Lead time"),
    ("White", "SBS", 18, 335, 1200, "4 weeks"),
)


def warm() -> None:
    """Reads a price list of one row that nobody sent."""
    import tracker.intake.files  # noqa: F401

    cells = {
        (row, column): Cell(row, column, value if isinstance(value, str) else Decimal(value), str(value))
        for row, values in enumerate(_ROWS)
        for column, value in enumerate(values)
    }
    read_workbook(Workbook("", "", "csv", (Grid("", cells),)), Answers())
