import numpy as np
import pytest

from tracker.market.survival import chance_within, kaplan_meier
from tracker.market.waits import chance_within_a_week, waits

DAYS = np.array([5.0, 9.0, 12.0, 30.0, 4.0, 40.0])
ARRIVED = np.array([True, True, True, False, True, False])
VENDOR = np.array([1, 1, 1, 1, 0, 0], np.int32)
VENDORS = ("beta boards", "Alpha Mill")


def test_all_vendors_first_then_each_by_name():
    records = waits(DAYS, ARRIVED, VENDOR, VENDORS)
    assert [record.vendor for record in records] == [None, "Alpha Mill", "beta boards"]
    assert [(record.n, record.arrived, record.outstanding) for record in records] == [(6, 4, 2), (4, 3, 1), (2, 1, 1)]


def test_a_median_is_the_day_by_which_half_has_come():
    by_vendor = {record.vendor: record.median.time for record in waits(DAYS, ARRIVED, VENDOR, VENDORS)}
    assert by_vendor == {None: 9.0, "Alpha Mill": 9.0, "beta boards": 4.0}


def test_a_median_not_reached_is_none():
    nothing_yet = waits(np.array([3.0, 8.0]), np.array([False, False]), np.array([0, 0], np.int32), VENDORS)
    assert [record.median.time for record in nothing_yet] == [None, None]


def test_no_record_at_all():
    (every,) = waits(np.zeros(0), np.zeros(0, bool), np.zeros(0, np.int32), VENDORS)
    assert (every.n, every.median.time) == (0, None)


def test_a_negative_wait_is_refused():
    with pytest.raises(ValueError, match="arrived before it was asked for"):
        waits(np.array([-1.0]), np.array([True]), np.array([0], np.int32), VENDORS)


def test_the_chance_of_the_next_week_given_the_wait_so_far():
    """Ten of which one comes every second day: of the five left after day 10, three come by day 16."""
    days = np.arange(2.0, 21.0, 2.0)
    survival = kaplan_meier(days, np.ones(10, bool))
    assert chance_within(survival, 10.0, 7.0) == pytest.approx(3 / 5)
    assert chance_within_a_week(days, np.ones(10, bool), np.array([0.0, 10.0])) == pytest.approx([0.3, 0.6])


def test_a_wait_longer_than_any_on_record_has_no_chance_named():
    assert chance_within_a_week(DAYS, ARRIVED, np.array([34.0, 40.0, 99.0])) == [None] * 3


def test_a_promise_is_not_made_from_a_record_that_ends_in_waiting():
    """Nothing arrived after day 12, and two still wait: the record knows of no arrival in the coming week."""
    assert chance_within_a_week(DAYS, ARRIVED, np.array([13.0])) == [0.0]
