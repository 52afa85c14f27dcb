"""Quantities by month beside a list are no prices, whatever heads them."""

import pytest

from tests.intake.sheets import read

MONTHS = ("January", "February", "March")


@pytest.mark.parametrize(
    "rows",
    [
        [["Shipments, tonnes"], ["Month", "GC1", "GC2"], *([one, 438, 675] for one in MONTHS), ["Total", 1314, 2025]],
        [["Your purchases"], ["Month", "Tonnes", "Invoice value GBP"], *([one, 84.2, 97420] for one in MONTHS)],
        [["Lieferungen in t"], ["Monat", "GD2", "GC1"], *([one, 438, 675] for one in ("Januar", "Februar", "März"))],
    ],
)  # fmt: skip
def test_they_are_passed_over_and_that_is_told(rows):
    told = read(rows)
    assert told.lines == ()
    assert "a history by months or years, no board" in {part.why for part in told.passed_over}


def test_prices_of_grades_by_month_may_be_offers():
    rows = [
        ["Contract prices, EUR per tonne"],
        ["Month", "GC1 250 g/m²", "GC2 300 g/m²"],
        *([month, 1200, 1100] for month in MONTHS),
    ]
    assert len(read(rows).lines) == 6
