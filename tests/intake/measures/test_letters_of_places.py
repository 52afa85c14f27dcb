"""'Harlow Gap, IN' and 'Lisboa, PT' are places, and measure nothing in inches or points."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines, merged
from tracker.intake.values.boards.caliper import caliper_unit
from tracker.intake.values.figures.sheetsize import length_unit
from tracker.trade.offer import State

BLOCKS = merged((1, 1, 1, 2), (1, 3, 1, 4))


def by_town(first, second, unit="Delivered prices, US$ per cwt (100 lb)"):
    """Grade over caliper over basis weight, and towns down."""
    return lines(
        [
            [unit],
            ["Dock", "SBS C1S", None, "CRB C1S", None],
            [None, "16 pt", "20 pt", "18 pt", "22 pt"],
            ["lb/MSF", 67, 83, 70, 85],
            [first, 61.4, 60.75, 44.2, 43.75],
            [second, 62.1, 61.45, 44.9, 44.45],
        ],
        merged=BLOCKS,
    )


@pytest.mark.parametrize(
    "town",
    ["Harlow Gap, IN", "Fishers (IN)", "FISHERS, IN", "St. Orrin, IN", "Lisboa, PT", "Billings, MT", "Macon, GA"],
)
@pytest.mark.parametrize("first", [True, False])
def test_a_row_of_a_town_holds_prices(town, first):
    found = by_town(*((town, "Mill Ferry, TN") if first else ("Mill Ferry, TN", town)))
    assert len(found) == 8
    assert {line.state for line in found.values()} == {State.ACCEPTED}


@pytest.mark.parametrize("town", ["Fishers, IN", "Harlow Gap, IN", "Lisboa, PT", "Braga (PT)"])
def test_a_column_of_a_town_holds_prices(town):
    head = ["Board", "Caliper (pt)", town, "Macon, GA"]
    found = lines([["US$ per cwt, delivered"], head, ["SBS C1S", 18, 61.4, 62], ["CUK", 18, 51.4, 52]])
    assert list(found) == ["C3", "D3", "C4", "D4"]
    assert {line.offer.caliper_um for line in found.values()} == {Decimal("457.2")}
    assert not any("caliper-unknown" in codes(line) for line in found.values())


@pytest.mark.parametrize(
    ("head", "unit"), [("Caliper, IN", "in"), ("Thickness (IN)", "in"), ("CALIPER, PT", "pt"), ("Dicke, PT", "pt")]
)
def test_a_caliper_is_measured_in_them(head, unit):
    assert caliper_unit(head) == unit


@pytest.mark.parametrize("head", ["Width, IN", "Roll width (IN)", "Breite, IN", "Largeur (PO)"])
def test_so_is_a_width(head):
    assert length_unit(head) == "in"


def test_a_row_of_calipers_is_no_row_of_prices():
    rows = [["US$/cwt"], ["Board", "SBS", "CUK"], ["Caliper, IN", 0.018, 0.020], ["Rolls", 61.4, 50.75]]
    assert set(lines(rows)) == {"B4", "C4"}
