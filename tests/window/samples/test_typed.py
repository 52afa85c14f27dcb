from datetime import date
from decimal import Decimal

import pytest

from tracker.window.look.figures import Units
from tracker.window.samples.typed import Unclear, caliper_typed, day_typed, grade_typed, vendor_typed

TODAY = date(2026, 11, 24)


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("", None),
        ("12 Dec", date(2026, 12, 12)),
        ("12 december", date(2026, 12, 12)),
        ("3 Jan", date(2027, 1, 3)),
        ("20 Nov", date(2026, 11, 20)),
        ("5. Mar 2027", date(2027, 3, 5)),
        ("2026-12-01", date(2026, 12, 1)),
        ("2 weeks", date(2026, 12, 8)),
        ("+10 days", date(2026, 12, 4)),
        ("today", TODAY),
        ("tomorrow", date(2026, 11, 25)),
    ],
)
def test_days(text: str, meant: date | None) -> None:
    assert day_typed(text, TODAY) == meant


@pytest.mark.parametrize("text", ["3/4", "03/04/2026", "31 Feb", "soon", "12"])
def test_days_that_are_read_two_ways_or_none_are_not_guessed(text: str) -> None:
    with pytest.raises(Unclear, match="write 12 Dec"):
        day_typed(text, TODAY)


@pytest.mark.parametrize(
    ("text", "units", "um"),
    [
        ("18", Units.US, "457.2"),
        ("18 pt", Units.METRIC, "457.2"),
        ("457", Units.METRIC, "457"),
        ("457 µm", Units.US, "457"),
        ("0,46 mm", Units.US, "460"),
        ("20 points", Units.US, "508"),
    ],
)
def test_calipers(text: str, units: Units, um: str) -> None:
    assert caliper_typed(text, units) == Decimal(um)


@pytest.mark.parametrize(
    ("text", "units"), [("0.018", Units.US), ("18", Units.METRIC), ("thick", Units.US), ("900", Units.US)]
)
def test_calipers_that_no_board_has(text: str, units: Units) -> None:
    with pytest.raises(Unclear):
        caliper_typed(text, units)


def test_grades_by_letters_or_beginning_of_their_name() -> None:
    assert grade_typed("sbs") == "SBS"
    assert grade_typed("folding") == "FBB"
    with pytest.raises(Unclear, match="SBS"):
        grade_typed("coated")


def test_a_vendor_known_in_other_capitals_is_the_same_vendor() -> None:
    assert vendor_typed("tolmere  board", ["Tolmere Board"]) == "Tolmere Board"
    assert vendor_typed("New Mill", ["Tolmere Board"]) == "New Mill"
    with pytest.raises(Unclear):
        vendor_typed("  ", [])
