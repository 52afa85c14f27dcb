"""Which events may follow which, and what a sample's events come to."""

from datetime import date, timedelta
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tracker.desk import readings, samples, verdicts
from tracker.desk.edits import undo
from tracker.desk.opening import Desk
from tracker.desk.sample_json import sample_object
from tracker.desk.sample_life import EventKind, SampleState
from tracker.desk.samples import Sample
from tracker.desk.trouble import Trouble

VENDOR = "Quillmere Board Works"
ASKED = date(2026, 11, 2)


def nov(day: int) -> date:
    return date(2026, 11, day)


def log(desk: Desk, vendor: str = VENDOR, on: date = ASKED, **more: object) -> int:
    return samples.log(desk, vendor, "sbs", Decimal("457.2"), on=on, **more).number


def only(desk: Desk, as_of: date | None = None) -> Sample:
    (sample,) = samples.samples(desk, as_of)
    return sample


def arrived(desk: Desk, vendor: str, on: date, days: int) -> None:
    number = log(desk, vendor, on)
    samples.record(desk, number, EventKind.ARRIVED, date.fromordinal(on.toordinal() + days))


def test_a_request_waits_from_the_day_it_was_made(desk: Desk) -> None:
    log(desk, quantity=" 20 sheets ", for_what="Tea")
    sample = only(desk)
    assert (sample.state, sample.waiting_days, sample.overdue_days) == (SampleState.REQUESTED, 23, None)
    assert (sample.vendor, sample.grade, sample.quantity, sample.for_what) == (VENDOR, "SBS", "20 sheets", "Tea")


def test_a_promise_makes_it_due_and_a_new_promise_moves_that(desk: Desk) -> None:
    number = log(desk)
    samples.record(desk, number, EventKind.PROMISED, nov(3), nov(10))
    sample = only(desk)
    assert (sample.state, sample.due, sample.due_from, sample.overdue_days) == (
        SampleState.PROMISED,
        nov(10),
        "promise",
        15,
    )
    samples.record(desk, number, EventKind.PROMISED, nov(12), nov(30))
    sample = only(desk)
    assert (sample.due, sample.overdue_days, sample.overdue) == (nov(30), -5, False)
    assert sample_object(sample)["overdue_days"] == 0
    assert len(samples.events(desk, number)) == 2


def test_arrival_ends_the_waiting_and_readings_make_it_tested(desk: Desk) -> None:
    number = log(desk)
    samples.record(desk, number, EventKind.SENT, nov(5))
    assert only(desk).state is SampleState.SENT
    samples.record(desk, number, EventKind.ARRIVED, nov(9))
    sample = only(desk)
    assert (sample.state, sample.waiting_days, sample.overdue_days) == (SampleState.ARRIVED, 7, None)
    readings.add(desk, number, "caliper", ["18.1", "18.0 pt", "17.9"], "pt", nov(10))
    assert only(desk).state is SampleState.TESTED
    assert [str(each.value) for each in readings.readings(desk, number)] == ["459.74", "457.2", "454.66"]


def test_the_past_is_seen_as_it_was_then(desk: Desk) -> None:
    number = log(desk)
    samples.record(desk, number, EventKind.PROMISED, nov(3), nov(10))
    samples.record(desk, number, EventKind.ARRIVED, nov(12))
    readings.add(desk, number, "caliper", ["457"], on=nov(14))
    assert samples.samples(desk, date(2026, 11, 1)) == ()
    assert only(desk, nov(2)).state is SampleState.REQUESTED
    assert only(desk, nov(11)).overdue_days == 1
    assert only(desk, nov(13)).state is SampleState.ARRIVED
    assert only(desk, nov(14)).state is SampleState.TESTED


@pytest.mark.parametrize(
    ("kind", "on", "until", "words"),
    [
        (EventKind.SENT, date(2026, 11, 1), None, "nothing can have happened"),
        (EventKind.SENT, date(2026, 11, 26), None, "still to come"),
        (EventKind.PROMISED, nov(5), None, "until when"),
        (EventKind.PROMISED, nov(5), nov(4), "a day before"),
    ],
)
def test_impossible_days_are_refused_in_a_sentence(
    desk: Desk, kind: EventKind, on: date, until: date | None, words: str
) -> None:
    number = log(desk)
    with pytest.raises(Trouble, match=words):
        samples.record(desk, number, kind, on, until)
    assert samples.events(desk, number) == ()


def test_nothing_happens_after_the_end_and_nothing_ends_twice(desk: Desk) -> None:
    number = log(desk)
    samples.record(desk, number, EventKind.ARRIVED, nov(9))
    for kind in (EventKind.ARRIVED, EventKind.REFUSED, EventKind.CANCELLED, EventKind.CHASED):
        with pytest.raises(Trouble):
            samples.record(desk, number, kind, nov(10))
    samples.record(desk, number, EventKind.SENT, nov(6))
    with pytest.raises(Trouble, match="sent on 2026-11-06 already"):
        samples.record(desk, number, EventKind.SENT, nov(7))
    assert [event.kind for event in samples.events(desk, number)] == ["sent", "arrived"]


def test_a_day_until_which_belongs_to_a_promise_and_is_not_dropped(desk: Desk) -> None:
    number = samples.log(desk, "Quillmere Board Works", "SBS", on=date(2026, 11, 2)).number
    with pytest.raises(Trouble, match="goes with 'promised'"):
        samples.record(desk, number, EventKind.SENT, date(2026, 11, 6), until=date(2026, 11, 20))


def test_it_can_not_arrive_before_it_was_sent(desk: Desk) -> None:
    number = log(desk)
    samples.record(desk, number, EventKind.SENT, nov(9))
    with pytest.raises(Trouble, match=r"sent on 2026-11-09.*2026-11-08"):
        samples.record(desk, number, EventKind.ARRIVED, nov(8))


KINDS = st.sampled_from(list(EventKind))


@given(st.lists(st.tuples(KINDS, st.integers(1, 25), st.integers(1, 30)), max_size=8))
def test_whatever_is_accepted_is_in_a_possible_order(steps: list[tuple[EventKind, int, int]]) -> None:
    from tracker.desk.sample_life import refuse_impossible, state_of
    from tracker.store.samples import Request, SampleEvent

    events: list[SampleEvent] = []
    for kind, day, until in steps:
        happened = tuple(sorted(events, key=lambda event: event.on))
        request = Request(1, VENDOR, "SBS", None, "", "", ASKED, None, "Ada", happened, ())
        try:
            refuse_impossible(request, kind, nov(day), nov(until), nov(25))
        except Trouble:
            continue
        events.append(SampleEvent(len(events), kind.value, nov(day), nov(until), "", "Ada"))
    ends = [event for event in events if event.kind in ("arrived", "refused", "cancelled", "lost")]
    assert len(ends) <= 1
    assert all(event.on >= ASKED for event in events)
    assert all(event.on <= end.on for end in ends for event in events)
    assert state_of(events, measured=False).outstanding == (not ends)


def test_without_a_promise_a_vendor_is_held_to_its_own_usual_time(desk: Desk) -> None:
    for start in (1, 2, 3):
        arrived(desk, VENDOR, date(2026, 10, start), 10)
    for start in (1, 2, 3):
        arrived(desk, "Marrowby Paper", date(2026, 10, start), 30)
    log(desk)
    log(desk, "Newcomer Mill")
    by_vendor = {sample.vendor: sample for sample in samples.samples(desk) if sample.state.outstanding}
    assert (by_vendor[VENDOR].due, by_vendor[VENDOR].due_from) == (nov(12), "usual for this vendor")
    newcomer = by_vendor["Newcomer Mill"]
    assert newcomer.due_from == "usual for all vendors"
    assert newcomer.due is not None
    assert nov(12) <= newcomer.due <= date(2026, 12, 2)


def test_with_no_experience_the_day_it_is_needed_counts(desk: Desk) -> None:
    log(desk, needed=nov(20))
    assert (only(desk).due_from, only(desk).overdue_days) == ("needed by", 5)


def test_what_is_owed_comes_first_and_the_most_overdue_on_top(desk: Desk) -> None:
    numbers = [log(desk) for _ in range(3)]
    for number, until in zip(numbers, (20, 5, 30), strict=True):
        samples.record(desk, number, EventKind.PROMISED, nov(3), nov(until))
    done = log(desk)
    samples.record(desk, done, EventKind.CANCELLED, nov(4))
    assert [sample.number for sample in samples.samples(desk)] == [numbers[1], numbers[0], numbers[2], done]


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({"vendor": " "}, "which vendor"),
        ({"grade": "XYZ"}, "not a grade"),
        ({"caliper_um": Decimal(18)}, "check its unit"),
        ({"on": date(2026, 11, 26)}, "still to come"),
        ({"on": ASKED, "needed": date(2026, 11, 1)}, "before that"),
    ],
)
def test_an_impossible_request_is_refused_and_nothing_is_logged(desk: Desk, changes: dict, words: str) -> None:
    with pytest.raises(Trouble, match=words):
        samples.log(desk, **{"vendor": VENDOR, "grade": "SBS", **changes})
    assert samples.samples(desk) == ()


def test_an_unknown_number_is_said(desk: Desk) -> None:
    with pytest.raises(Trouble, match="no sample 7"):
        samples.record(desk, 7, EventKind.SENT)
    with pytest.raises(Trouble, match="no sample 7"):
        samples.events(desk, 7)
    with pytest.raises(Trouble, match="no sample 7"):
        readings.add(desk, 7, "caliper", ["457"])


def test_events_and_requests_are_undone(desk: Desk) -> None:
    logged = samples.log(desk, VENDOR, "SBS")
    edit = samples.record(desk, logged.number, EventKind.SENT)
    redo = undo(desk, edit)
    assert only(desk).state is SampleState.REQUESTED
    undo(desk, redo)
    assert only(desk).state is SampleState.SENT


@pytest.mark.parametrize(
    ("name", "values", "unit", "words"),
    [
        ("thickness", ["457"], "", "not a property that is measured: use one of caliper; basis weight; moisture"),
        ("weight", ["457"], "", "did you mean “basis weight”"),
        ("brightnes", ["84"], "", "did you mean “brightness, diffuse”"),
        ("caliper", ["457"], "furlong", "not measured in"),
        ("caliper", ["thick"], "", "not a number"),
        ("caliper", ["18.1", "18.0", "0.018"], "pt", "another unit"),
        ("caliper", ["-3"], "", "above 0"),
        ("caliper", ["17.2", "17.1"], "µm", "17.2 µm is no board's caliper .* choose the unit"),
        ("grammage", ["1710"], "g/m²", "no board's basis weight"),
    ],
)
def test_bad_readings_are_refused_and_none_is_kept(
    desk: Desk, name: str, values: list[str], unit: str, words: str
) -> None:
    number = log(desk)
    samples.record(desk, number, EventKind.ARRIVED, nov(9))
    with pytest.raises(Trouble, match=words):
        readings.add(desk, number, name, values, unit)
    assert readings.readings(desk, number) == ()


def test_a_single_reading_is_held_against_the_earlier_ones(desk: Desk) -> None:
    number = log(desk)
    samples.record(desk, number, EventKind.ARRIVED, nov(9))
    readings.add(desk, number, "moisture", ["6.1", "6.3"])
    with pytest.raises(Trouble, match="far from the earlier readings"):
        readings.add(desk, number, "moisture", ["61"])
    assert len(readings.readings(desk, number)) == 2


def test_a_bare_caliper_is_taken_in_the_unit_a_board_can_have_or_asked_for(desk: Desk) -> None:
    number = log(desk)
    samples.record(desk, number, EventKind.ARRIVED, nov(9))
    readings.add(desk, number, "caliper", ["457", "458"])
    readings.add(desk, number, "caliper", ["18.1"])
    assert [float(each.value) for each in readings.readings(desk, number)] == [457, 458, 459.74]
    with pytest.raises(Trouble, match="is no board's caliper: say the unit"):
        readings.add(desk, number, "caliper", ["5"])


def test_a_sample_that_has_not_arrived_can_not_be_measured(desk: Desk) -> None:
    number = log(desk)
    with pytest.raises(Trouble, match="has not arrived"):
        readings.add(desk, number, "caliper", ["457"])
    samples.record(desk, number, EventKind.ARRIVED, nov(9))
    with pytest.raises(Trouble, match="arrived on 2026-11-09"):
        readings.add(desk, number, "caliper", ["457"], on=nov(8))
    with pytest.raises(Trouble, match="still to come"):
        readings.add(desk, number, "caliper", ["457"], on=desk.today + timedelta(days=1))


def test_the_last_decision_on_a_sample_is_shown_with_it(desk: Desk) -> None:
    number = log(desk)
    verdicts.approve(desk, VENDOR, "Fenlight", "tea cartons", number)
    assert only(desk).verdict == "approved for tea cartons"
    verdicts.reject(desk, VENDOR, "Fenlight", "cracks on folding", number)
    assert only(desk).verdict == "rejected: cracks on folding"
    with pytest.raises(Trouble, match="why"):
        verdicts.reject(desk, VENDOR, "Fenlight", "  ")
