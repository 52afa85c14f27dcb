"""Which cells hold a bare number."""

from datetime import datetime
from decimal import Decimal

import pytest

from tracker.intake.grid import Cell, CellValue
from tracker.intake.tables.figures import figure_of, is_figure, sure_figure


@pytest.mark.parametrize(
    ("value", "least", "sure"),
    [
        (Decimal("845.50"), Decimal("845.50"), Decimal("845.50")),
        ("845,50", Decimal("845.50"), Decimal("845.50")),
        ("1,105", Decimal("1.105"), None),
        ("18 pt", None, None),
        ("$845", None, None),
        (datetime(2026, 3, 4), None, None),
    ],
)
def test_a_figure_is_a_number_also_as_text(value: CellValue, least: Decimal | None, sure: Decimal | None) -> None:
    cell = Cell(row=1, column=1, value=value, text=str(value))
    assert (figure_of(cell), sure_figure(cell)) == (least, sure)
    assert is_figure(cell) is (least is not None)
