"""What is usual, and what is likely next week, by the record of those that came and those that have not."""

from datetime import date, timedelta

import numpy as np
import pytest

from tracker.desk.sample_life import EventKind
from tracker.desk.waiting import record_of
from tracker.desk.waits import turn_round_of
from tracker.market.survival import chance_within, kaplan_meier, median_time
from tracker.store.samples import Request, SampleEvent

TODAY = date(2026, 11, 25)
VENDOR, OTHER = "Quillmere Board Works", "Marrowby Paper"


def request(number: int, vendor: str, days: int, end: EventKind | None) -> Request:
    """Asked for so many days ago, or so many days before it came."""
    asked = TODAY - timedelta(days=days if end is None else days + 30)
    events = () if end is None else (SampleEvent(1, end.value, asked + timedelta(days=days), None, "", "Ada"),)
    return Request(number, vendor, "SBS", None, "", "", asked, None, "Ada", events, ())


def requests(vendor: str, came: list[int], waiting: list[int], start: int = 1) -> list[Request]:
    made = [(days, EventKind.ARRIVED) for days in came] + [(days, None) for days in waiting]
    return [request(start + place, vendor, days, end) for place, (days, end) in enumerate(made)]


def test_those_still_waiting_count_as_waiting() -> None:
    """The arrived ones alone have a median of 10 days; with the slow ones that never came it is 30."""
    usual = record_of(requests(VENDOR, [8, 10, 30], [40, 50]), TODAY).usual(VENDOR)
    assert usual is not None
    assert (usual.days, usual.arrived, usual.vendor) == (30, 3, VENDOR)
    assert str(usual) == "usually 30 days; at least 8, upper end not known yet (3 arrivals, this vendor's)"


@pytest.mark.parametrize("end", [EventKind.REFUSED, EventKind.CANCELLED, EventKind.LOST])
def test_what_never_came_is_not_an_arrival(end: EventKind) -> None:
    known = [*requests(VENDOR, [10, 12, 14], []), request(9, VENDOR, 3, end)]
    record = record_of(known, TODAY)
    assert record.arrived.sum() == 3
    assert not record.outstanding.any()
    assert record.days.tolist() == [10, 12, 14, 3]


def test_too_few_of_a_vendor_s_own_are_pooled_and_that_is_said() -> None:
    record = record_of(requests(VENDOR, [10], [3]) + requests(OTHER, [20, 21, 22], [], 10), TODAY)
    usual = record.usual(VENDOR)
    assert usual is not None
    assert usual.vendor is None
    assert "all vendors'" in str(usual)
    days, came = np.array([10, 3, 20, 21, 22], float), np.array([True, False, True, True, True])
    assert usual.days == median_time(kaplan_meier(days, came)).time


def test_nothing_on_record_tells_nothing() -> None:
    record = record_of(requests(VENDOR, [], [5]), TODAY)
    assert record.usual(VENDOR) is None
    assert record.chance_within_a_week(VENDOR, 5) is None
    assert record_of([], TODAY).usual(VENDOR) is None


def test_the_chance_of_a_week_is_given_how_long_it_has_waited() -> None:
    """Of four that came after 5, 10, 15 and 20 days, one that has waited 8 comes by day 15 in two of three cases."""
    record = record_of(requests(VENDOR, [5, 10, 15, 20], []), TODAY)
    assert record.chance_within_a_week(VENDOR, 8) == (pytest.approx(2 / 3), VENDOR)
    assert record.chance_within_a_week(VENDOR, 16) == (1.0, VENDOR)
    assert record.chance_within_a_week("Newcomer Mill", 8) == (pytest.approx(2 / 3), None)
    survival = kaplan_meier(np.array([5, 10, 15, 20], float), np.ones(4, bool))
    assert chance_within(survival, 8, 7) == pytest.approx(2 / 3)


def test_a_wait_beyond_the_record_is_not_foretold() -> None:
    assert record_of(requests(VENDOR, [5, 10, 15], []), TODAY).chance_within_a_week(VENDOR, 15) is None


def test_one_arrival_is_called_usual_of_no_vendor() -> None:
    """The figure itself stays for whoever reads the record; only three arrivals make it a vendor's usual time."""
    known = [*requests(VENDOR, [14], [3, 4]), *requests(OTHER, [10, 12, 20], [5], start=4)]
    whole, *rows = turn_round_of(known, TODAY)
    one, three = (next(row for row in rows if row.vendor == vendor) for vendor in (VENDOR, OTHER))
    assert (one.median_days, one.usual_days) == (14, None)
    assert three.usual_days == three.median_days == 12
    assert whole.usual_days == whole.median_days
