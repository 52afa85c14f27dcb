"""Samples: asked for, promised, sent, arrived, and which are still owed."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date, timedelta
from decimal import Decimal
from typing import TYPE_CHECKING, Any

from tracker.desk.edits import Edit, writing
from tracker.desk.sample_life import EventKind, SampleState, day_of, ended, refuse_impossible, state_of
from tracker.desk.trouble import Trouble
from tracker.desk.waits import turn_round_of
from tracker.trade.grades import grades

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.samples import Request
    from tracker.store.samples import SampleEvent as SampleEvent
    from tracker.store.verdicts import BoardVerdict as BoardVerdict

__all__ = ["EventKind", "Logged", "Sample", "SampleState", "events", "log", "record", "sample_object", "samples"]

FEWEST_FOR_USUAL = 3
"""Arrivals from which a vendor's own usual time counts; with fewer all vendors' together does."""


@dataclass(frozen=True, slots=True)
class Logged:
    """A request that was logged: the number for its label, and the edit."""

    number: int
    edit: Edit


@dataclass(frozen=True, slots=True)
class Sample:
    """One request as it stands on a day.

    waiting_days: from request to arrival, refusal or cancellation, or to the day. due: when it should be here, by
    `due_from` ('promise', 'needed by', 'usual for this vendor', 'usual for all vendors'); None where nothing tells.
    overdue_days: days past due, 0 or less while it is not; None once it is no longer outstanding, or with no due day.
    chased: how often. verdict: the last decision on it, in words.
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

    @property
    def overdue(self) -> bool:
        return self.overdue_days is not None and self.overdue_days > 0


@dataclass(frozen=True, slots=True)
class _Usual:
    """Usual days from request to arrival: of all vendors, and of each that has a record of its own."""

    pooled: float | None = None
    own: Mapping[str, float] = field(default_factory=dict)


def log(
    desk: Desk,
    vendor: str,
    grade: str,
    caliper_um: Decimal | None = None,
    quantity: str = "",
    needed: date | None = None,
    on: date | None = None,
    for_what: str = "",
) -> Logged:
    """Logs a request made on a day (today if not said). Trouble for no vendor, no such grade, a day still to come."""
    from tracker.store import samples as kept

    day, code = on or desk.today, grade.strip().upper()
    _refuse_request(vendor, code, caliper_um, needed, day, desk.today)
    values = {
        "grade": code,
        "caliper_um": caliper_um,
        "quantity": quantity.strip(),
        "for_what": for_what.strip(),
        "requested_on": day,
        "needed_by": needed,
    }
    with writing(desk, f"asked {vendor.strip()} for a sample of {code}") as pen:
        number, change = kept.log(pen, vendor, values)
    return Logged(number, Edit(f"log sample {number}", (change,)))


def record(
    desk: Desk, number: int, kind: EventKind, on: date | None = None, until: date | None = None, note: str = ""
) -> Edit:
    """Records what happened to a sample on a day (today if not said). Trouble for an impossible order of events."""
    from tracker.store import samples as kept

    text = f"sample {number} {kind.value}"
    with writing(desk, text) as pen:
        try:
            request = kept.get(pen.connection, number)
        except KeyError:
            raise Trouble(f"There is no sample {number}: look at the list of samples for its number.") from None
        day = on or desk.today
        refuse_impossible(request, kind, day, until, desk.today)
        change = kept.add_event(pen, number, kind.value, day, until if kind is EventKind.PROMISED else None, note)
    return Edit(text, (change,))


def samples(desk: Desk, as_of: date | None = None) -> tuple[Sample, ...]:
    """Every request as it stood on a day: outstanding first, the most overdue on top, then the latest."""
    from tracker.store import samples as kept
    from tracker.store import verdicts

    day = as_of or desk.today
    with desk.store.reading() as connection:
        requests = [request for request in kept.listing(connection) if request.requested <= day]
        decided = [verdict for verdict in verdicts.listing(connection) if verdict.on <= day]
    usual = _usual(requests, day)
    said = {verdict.sample: _verdict(verdict) for verdict in reversed(decided) if verdict.sample is not None}
    found = [_sample(request, day, usual, said.get(request.number)) for request in requests]
    return tuple(sorted(found, key=_urgency))


def events(desk: Desk, number: int) -> tuple[SampleEvent, ...]:
    """What happened to one sample, in the order of days. Trouble where there is none of that number."""
    from tracker.store import samples as kept

    with desk.store.reading() as connection:
        try:
            return kept.get(connection, number).events
        except KeyError:
            raise Trouble(f"There is no sample {number}: look at the list of samples for its number.") from None


def sample_object(sample: Sample) -> dict[str, Any]:
    """A sample as `samples --json` prints it."""
    return {
        "number": sample.number,
        "vendor": sample.vendor,
        "grade": sample.grade,
        "caliper_um": None if sample.caliper_um is None else float(sample.caliper_um),
        "quantity": sample.quantity,
        "requested": sample.requested.isoformat(),
        "needed": _iso(sample.needed),
        "promised": _iso(sample.promised),
        "sent": _iso(sample.sent),
        "arrived": _iso(sample.arrived),
        "state": sample.state.value,
        "waiting_days": sample.waiting_days,
        "due": _iso(sample.due),
        "due_from": sample.due_from,
        "overdue_days": None if sample.overdue_days is None else max(0, sample.overdue_days),
        "chased": sample.chased,
        "for": sample.for_what,
        "verdict": sample.verdict,
    }


def _refuse_request(
    vendor: str, grade: str, caliper_um: Decimal | None, needed: date | None, on: date, today: date
) -> None:
    if not vendor.strip():
        raise Trouble("Say which vendor is asked for the sample.")
    if grade not in grades():
        raise Trouble(f"{grade or 'Nothing'} is not a grade: use one of {', '.join(grades())}.")
    if caliper_um is not None and not 50 <= caliper_um <= 5000:
        raise Trouble(
            f"A caliper of {caliper_um.normalize():f} µm is no board's: check its unit (18 points are 457 µm)."
        )
    if on > today:
        raise Trouble(f"A request can't have been made on {on.isoformat()}, which is still to come.")
    if needed is not None and needed < on:
        raise Trouble(f"A sample asked for on {on.isoformat()} can't be needed by {needed.isoformat()}, before that.")


def _usual(requests: Iterable[Request], day: date) -> _Usual:
    rows = turn_round_of(requests, day)
    own = {
        row.vendor: row.median_days
        for row in rows
        if row.vendor is not None and row.median_days is not None and row.arrived >= FEWEST_FOR_USUAL
    }
    return _Usual(rows[0].median_days, own)


def _sample(request: Request, day: date, usual: _Usual, verdict: str | None) -> Sample:
    happened = [event for event in request.events if event.on <= day]
    state = state_of(happened, any(measured <= day for measured in request.measured_on))
    end = ended(happened)
    promises = [event.until for event in happened if event.kind == EventKind.PROMISED]
    due, due_from = _due(request, promises[-1] if promises else None, usual)
    return Sample(
        number=request.number,
        vendor=request.vendor,
        grade=request.grade,
        caliper_um=request.caliper_um,
        quantity=request.quantity,
        for_what=request.for_what,
        requested=request.requested,
        needed=request.needed,
        promised=promises[-1] if promises else None,
        sent=day_of(happened, EventKind.SENT),
        arrived=day_of(happened, EventKind.ARRIVED),
        state=state,
        waiting_days=((day if end is None else end.on) - request.requested).days,
        due=due,
        due_from=due_from,
        overdue_days=(day - due).days if due is not None and state.outstanding else None,
        chased=sum(event.kind == EventKind.CHASED for event in happened),
        verdict=verdict,
    )


def _due(request: Request, promised: date | None, usual: _Usual) -> tuple[date | None, str | None]:
    """When it should be here: by its promise, else by what the vendor, or all vendors, usually take.

    The day it is needed by is the buyer's wish and binds nobody, so it counts only where no experience tells more.
    """
    if promised is not None:
        return promised, "promise"
    days, whose = usual.own.get(request.vendor), "usual for this vendor"
    if days is None:
        days, whose = usual.pooled, "usual for all vendors"
    if days is not None:
        return request.requested + timedelta(days=round(days)), whose
    return (request.needed, "needed by") if request.needed is not None else (None, None)


def _verdict(verdict: BoardVerdict) -> str:
    if verdict.approved:
        return f"approved for {verdict.for_what}" if verdict.for_what else "approved"
    return f"rejected: {verdict.because}" if verdict.because else "rejected"


def _urgency(sample: Sample) -> tuple[bool, float, int]:
    if not sample.state.outstanding:
        return True, -sample.requested.toordinal(), -sample.number
    overdue = -10_000 if sample.overdue_days is None else sample.overdue_days
    return False, -overdue, sample.number


def _iso(day: date | None) -> str | None:
    return None if day is None else day.isoformat()
