from datetime import date
from decimal import Decimal

import pytest

from tracker.window.look.figures import Units
from tracker.window.samples.typed import (
    NewVendor,
    Unclear,
    caliper_exact,
    caliper_typed,
    calipers_typed,
    day_typed,
    grade_typed,
    msf_typed,
    vendor_typed,
    vendors_typed,
)

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
        ("1.12.2026", date(2026, 12, 1)),
        ("03. 01.", date(2027, 1, 3)),
        ("2 weeks", date(2026, 12, 8)),
        ("+10 days", date(2026, 12, 4)),
        ("today", TODAY),
        ("tomorrow", date(2026, 11, 25)),
    ],
)
def test_days(text: str, meant: date | None) -> None:
    assert day_typed(text, TODAY) == meant


@pytest.mark.parametrize("text", ["3/4", "03/04/2026", "31 Feb", "31.2.2026", "12.25", "soon", "12"])
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
        (".018 in", Units.METRIC, "457.2"),
        ("0.018in", Units.US, "457.2"),
        (".018", Units.US, "457.2"),
        ('0.018"', Units.US, "457.2"),
        ("18", Units.METRIC, "457.2"),
    ],
)
def test_calipers(text: str, units: Units, um: str) -> None:
    assert caliper_typed(text, units) == Decimal(um)


@pytest.mark.parametrize(
    ("text", "units"), [("0.0018", Units.US), ("3", Units.METRIC), ("thick", Units.US), ("900", Units.US)]
)
def test_calipers_that_no_board_has(text: str, units: Units) -> None:
    with pytest.raises(Unclear):
        caliper_typed(text, units)


def test_grades_by_letters_or_beginning_of_their_name() -> None:
    assert grade_typed("sbs") == "SBS"
    assert grade_typed("folding") == "FBB"
    assert [grade_typed(name) for name in ("wlc", "GC1", "white-lined chipboard")] == ["CRB", "FBB", "CRB"]
    with pytest.raises(Unclear, match="SBS"):
        grade_typed("coated")


def test_a_vendor_known_in_other_capitals_is_the_same_vendor() -> None:
    assert vendor_typed("tolmere  board", ["Tolmere Board"]) == "Tolmere Board"
    assert vendor_typed("New Mill", ["Tolmere Board"]) == "New Mill"
    assert vendor_typed("TOLMERE BOARD LTD.", ["Tolmere Board"]) == "Tolmere Board"
    with pytest.raises(Unclear):
        vendor_typed("  ", [])


def test_a_name_that_may_be_a_slip_is_asked_about_once() -> None:
    with pytest.raises(NewVendor, match="did you mean Tolmere Board") as doubt:
        vendor_typed("Tolmer Board", ["Tolmere Board"])
    assert vendor_typed("Tolmer Board", ["Tolmere Board"], {doubt.value.name}) == "Tolmer Board"


@pytest.mark.parametrize(
    ("text", "um"),
    [
        ("16 18 20", ["406.4", "457.2", "508"]),
        ("16; 18 pt", ["406.4", "457.2"]),
        ("16, 18", ["406.4", "457.2"]),
        ("16 pt 450 µm", ["406.4", "450"]),
        ("16,5", ["419.1"]),
        ("0,46 mm", ["460"]),
        ("18 18", ["457.2"]),
        ("", []),
    ],
)
def test_several_calipers(text: str, um: list[str]) -> None:
    assert calipers_typed(text, Units.US) == tuple(Decimal(each) for each in um)


def test_a_comma_between_two_calipers_is_asked_about() -> None:
    with pytest.raises(Unclear, match=r"16 18 or 16\.18"):
        calipers_typed("16,18", Units.US)


@pytest.mark.parametrize("um", ["457.2", "460", "406.4", "419.1", "457.123"])
def test_a_caliper_written_out_reads_back_the_same(um: str) -> None:
    assert calipers_typed(caliper_exact(Decimal(um)), Units.US) == (Decimal(um),)


def test_several_vendors_apart_by_semicolons() -> None:
    known = ["Tolmere Board", "Ulverby, Sons & Co."]
    assert vendors_typed("tolmere board; Ulverby, Sons & Co.;", known) == tuple(known)
    with pytest.raises(Unclear):
        vendors_typed(" ; ", known)


@pytest.mark.parametrize(("text", "msf"), [("30000", 30000), ("30,000", 30000), ("30 000 MSF", 30000), ("12.5", 12.5)])
def test_a_year_s_volume(text: str, msf: float) -> None:
    assert msf_typed(text) == msf


@pytest.mark.parametrize("text", ["30,5", "-3", "0", "much", ""])
def test_what_is_no_volume_is_said(text: str) -> None:
    with pytest.raises(Unclear, match="volume"):
        msf_typed(text)
