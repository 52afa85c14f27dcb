"""Samples: asked for, promised, sent, arrived, and which are still owed."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from decimal import Decimal
from typing import TYPE_CHECKING

from tracker.desk.edits import Edit, writing
from tracker.desk.sample_life import EventKind, SampleState, day_of, ended, refuse_impossible, state_of
from tracker.desk.sample_numbers import no_such_sample, number_text
from tracker.desk.sample_requests import Logged, log
from tracker.desk.trouble import Trouble
from tracker.desk.waiting import UsualTime, WaitingRecord, record_of
from tracker.trade.days import day_text

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.contacts import Contact
    from tracker.store.samples import Request
    from tracker.store.samples import SampleEvent as SampleEvent
    from tracker.store.verdicts import BoardVerdict as BoardVerdict

__all__ = ["EventKind", "Logged", "Sample", "SampleState", "events", "log", "record", "sample", "samples"]


@dataclass(frozen=True, slots=True)
class Sample:
    """One request as it stands on a day.

    waiting_days: from request to arrival, refusal, cancellation or loss, or to the day. due: when it should be here, by
    `due_from` ('promise', 'needed by', 'usual for this vendor', 'usual for all vendors'); None where nothing tells.
    overdue_days: days past due, 0 or less while it is not; None once it is no longer outstanding, or with no due day.
    chased: how often. verdict: the last decision on it, in words; verdict_by: whose, and when. board: the vendor's name
    of it, '' if not said.
    usual, chance_of_a_week: what is usual, and the chance that an outstanding one comes within seven days, by the
    record of chance_by ('this vendor', 'all vendors'); None where the record does not tell. events: in order of days.
    """

    number: int
    vendor: str
    grade: str
    caliper_um: Decimal | None
    quantity: str
    for_what: str
    requested: date
    needed: date | None
    promised: date | None
    sent: date | None
    arrived: date | None
    state: SampleState
    waiting_days: int
    due: date | None
    due_from: str | None
    overdue_days: int | None
    chased: int
    verdict: str | None
    verdict_by: str = ""
    board: str = ""
    form: str = ""
    pieces: int | None = None
    size_mm: tuple[Decimal, Decimal] | None = None
    contact: str = ""
    carrier: str = ""
    tracking: str = ""
    last_chased: date | None = None
    usual: UsualTime | None = None
    chance_of_a_week: float | None = None
    chance_by: str | None = None
    events: tuple[SampleEvent, ...] = ()

    @property
    def overdue(self) -> bool:
        return self.overdue_days is not None and self.overdue_days > 0

    @property
    def chance_tells(self) -> bool:
        """Whether the chance says anything: none or all of the few who waited as long is no chance."""
        return self.chance_of_a_week is not None and 0 < self.chance_of_a_week < 1

    @property
    def label(self) -> str:
        """The number as it stands on the label."""
        return number_text(self.number)


def record(
    desk: Desk,
    number: int,
    kind: EventKind,
    on: date | None = None,
    until: date | None = None,
    note: str = "",
    carrier: str = "",
    tracking: str = "",
) -> Edit:
    """Records what happened to a sample on a day (today if not said). Trouble for an impossible order of events."""
    from tracker.store import samples as kept

    if (carrier or tracking) and kind is not EventKind.SENT:
        raise Trouble("A carrier and a tracking number go with 'sent': record when it was sent.")
    if until is not None and kind is not EventKind.PROMISED:
        raise Trouble("A day until which goes with 'promised': record the promise.")
    text = f"sample {number} {kind.value}"
    with writing(desk, text) as pen:
        try:
            request = kept.get(pen.connection, number)
        except KeyError:
            raise no_such_sample(number) from None
        day = on or desk.today
        refuse_impossible(request, kind, day, until, desk.today)
        change = kept.add_event(pen, number, kind.value, day, until, note.strip(), carrier.strip(), tracking.strip())
    return Edit(text, (change,))


def samples(desk: Desk, as_of: date | None = None) -> tuple[Sample, ...]:
    """Every request as it stood on a day: outstanding first, the most overdue on top, then the latest."""
    from tracker.store import contacts, verdicts
    from tracker.store import samples as kept

    day = as_of or desk.today
    with desk.store.reading() as connection:
        requests = [request for request in kept.listing(connection) if request.requested <= day]
        decided = [verdict for verdict in verdicts.listing(connection) if verdict.on <= day]
        known = contacts.listing(connection)
    waits = record_of(requests, day)
    said = {verdict.sample: verdict for verdict in reversed(decided) if verdict.sample is not None}
    found = [_sample(request, day, waits, known.get(request.vendor), said.get(request.number)) for request in requests]
    return tuple(sorted(found, key=_urgency))


def sample(desk: Desk, number: int, as_of: date | None = None) -> Sample:
    """One request as it stood on a day. Trouble where there is none of that number."""
    found = next((each for each in samples(desk, as_of) if each.number == number), None)
    if found is None:
        raise no_such_sample(number)
    return found


def events(desk: Desk, number: int) -> tuple[SampleEvent, ...]:
    """What happened to one sample, in the order of days. Trouble where there is none of that number."""
    from tracker.store import samples as kept

    with desk.store.reading() as connection:
        try:
            return kept.get(connection, number).events
        except KeyError:
            raise no_such_sample(number) from None


def chance_words(sample: Sample) -> str:
    """'35 % chance to come within a week, by the record of this vendor'; '' where the record does not tell."""
    if sample.chance_of_a_week is None:
        return ""
    if not sample.chance_tells:
        return "too few arrivals to say whether it comes within a week"
    return f"{sample.chance_of_a_week:.0%} chance to come within a week, by the record of {sample.chance_by}"


def verdict_words(verdict: BoardVerdict) -> str:
    """A decision in words: 'approved for tea cartons', 'rejected: cracks on folding'."""
    if verdict.approved:
        return f"approved for {verdict.for_what}" if verdict.for_what else "approved"
    return f"rejected: {verdict.because}" if verdict.because else "rejected"


def _sample(
    request: Request, day: date, waits: WaitingRecord, contact: Contact | None, verdict: BoardVerdict | None
) -> Sample:
    happened = tuple(event for event in request.events if event.on <= day)
    state = state_of(happened, any(measured <= day for measured in request.measured_on))
    end = ended(happened)
    promised = _latest_promise(happened)
    usual = waits.usual(request.vendor)
    due, due_from = _due(request, promised, usual)
    waiting = ((day if end is None else end.on) - request.requested).days
    chance = waits.chance_within_a_week(request.vendor, waiting) if state.outstanding else None
    sent = next((event for event in happened if event.kind == EventKind.SENT), None)
    return Sample(
        number=request.number,
        vendor=request.vendor,
        grade=request.grade,
        caliper_um=request.caliper_um,
        quantity=request.quantity,
        for_what=request.for_what,
        requested=request.requested,
        needed=request.needed,
        promised=promised,
        sent=None if sent is None else sent.on,
        arrived=day_of(happened, EventKind.ARRIVED),
        state=state,
        waiting_days=waiting,
        due=due,
        due_from=due_from,
        overdue_days=(day - due).days if due is not None and state.outstanding else None,
        chased=sum(event.kind == EventKind.CHASED for event in happened),
        verdict=None if verdict is None else verdict_words(verdict),
        verdict_by="" if verdict is None else f"{verdict.by}, {day_text(verdict.on)}",
        board=request.product,
        form=request.form,
        pieces=request.pieces,
        size_mm=None
        if request.width_mm is None or request.length_mm is None
        else (request.width_mm, request.length_mm),
        contact=request.contact or (contact.name if contact else ""),
        carrier=sent.carrier if sent else "",
        tracking=sent.tracking if sent else "",
        last_chased=day_of(happened, EventKind.CHASED),
        usual=usual,
        chance_of_a_week=None if chance is None else chance[0],
        chance_by=None if chance is None else "all vendors" if chance[1] is None else "this vendor",
        events=happened,
    )


def _latest_promise(happened: Sequence[SampleEvent]) -> date | None:
    """The last one given counts; the earlier ones stay in the record."""
    return next((event.until for event in reversed(happened) if event.kind == EventKind.PROMISED), None)


def _due(request: Request, promised: date | None, usual: UsualTime | None) -> tuple[date | None, str | None]:
    """When it should be here: by its promise, else by what the vendor, or all vendors, usually take.

    The day it is needed by is the buyer's wish and binds nobody, so it counts only where no experience tells more.
    """
    if promised is not None:
        return promised, "promise"
    if usual is not None:
        whose = "usual for all vendors" if usual.vendor is None else "usual for this vendor"
        return request.requested + timedelta(days=round(usual.days)), whose
    return (request.needed, "needed by") if request.needed is not None else (None, None)


def _urgency(sample: Sample) -> tuple[bool, float, int]:
    if not sample.state.outstanding:
        return True, -sample.requested.toordinal(), -sample.number
    overdue = -10_000 if sample.overdue_days is None else sample.overdue_days
    return False, -overdue, sample.number
