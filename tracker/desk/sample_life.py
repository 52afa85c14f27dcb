"""A sample's life: which events may follow which, and what state they come to. No database: pure rules."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from enum import StrEnum
from typing import TYPE_CHECKING

from tracker.desk.trouble import Trouble

if TYPE_CHECKING:
    from tracker.store.samples import Request, SampleEvent


class EventKind(StrEnum):
    PROMISED = "promised"
    SENT = "sent"
    ARRIVED = "arrived"
    REFUSED = "refused"
    CANCELLED = "cancelled"
    LOST = "lost"
    CHASED = "chased"


class SampleState(StrEnum):
    REQUESTED = "requested"
    PROMISED = "promised"
    SENT = "sent"
    ARRIVED = "arrived"
    TESTED = "tested"
    REFUSED = "refused"
    CANCELLED = "cancelled"
    LOST = "lost"

    @property
    def outstanding(self) -> bool:
        """Still to come."""
        return self in (SampleState.REQUESTED, SampleState.PROMISED, SampleState.SENT)


_ENDS = (EventKind.ARRIVED, EventKind.REFUSED, EventKind.CANCELLED, EventKind.LOST)
_HAPPENS_ONCE = (EventKind.SENT, *_ENDS)


def day_of(events: Sequence[SampleEvent], kind: EventKind) -> date | None:
    """The last day on which something of this kind happened."""
    return max((event.on for event in events if event.kind == kind), default=None)


def ended(events: Sequence[SampleEvent]) -> SampleEvent | None:
    """The event that ended the waiting: arrival, refusal, cancellation or loss."""
    return next((event for event in events if event.kind in _ENDS), None)


def state_of(events: Sequence[SampleEvent], measured: bool) -> SampleState:
    """What the events come to; `measured`: readings were taken."""
    kinds = {event.kind for event in events}
    if EventKind.ARRIVED in kinds:
        return SampleState.TESTED if measured else SampleState.ARRIVED
    for kind in (EventKind.REFUSED, EventKind.CANCELLED, EventKind.LOST, EventKind.SENT, EventKind.PROMISED):
        if kind in kinds:
            return SampleState(kind.value)
    return SampleState.REQUESTED


def refuse_impossible(request: Request, kind: EventKind, on: date, until: date | None, today: date) -> None:
    """Trouble, in a sentence, for an event that can't have happened so; back-dating is allowed."""
    name = f"Sample {request.number}"
    if on > today:
        raise Trouble(f"{name}: {on.isoformat()} is still to come; give the day on which it happened.")
    if on < request.requested:
        raise Trouble(
            f"{name} was asked for on {request.requested.isoformat()}, so nothing can have happened to it on "
            f"{on.isoformat()}: check the date."
        )
    if kind is EventKind.PROMISED:
        _refuse_promise(name, on, until)
    _refuse_second(name, request.events, kind)
    _refuse_disorder(name, request.events, kind, on)
    _refuse_contradiction(name, request.events, kind)


def _refuse_promise(name: str, on: date, until: date | None) -> None:
    if until is None:
        raise Trouble(f"{name}: say until when it is promised.")
    if until < on:
        raise Trouble(f"{name} can't be promised on {on.isoformat()} for {until.isoformat()}, a day before.")


def _refuse_second(name: str, events: Sequence[SampleEvent], kind: EventKind) -> None:
    if kind not in _HAPPENS_ONCE:
        return
    for event in events:
        if event.kind == kind:
            raise Trouble(f"{name} is recorded as {kind.value} on {event.on.isoformat()} already.")


def _refuse_disorder(name: str, events: Sequence[SampleEvent], kind: EventKind, on: date) -> None:
    end = ended(events)
    # What happened before the end may still be entered after it; nothing happens after it.
    if end is not None and (kind in _ENDS or on > end.on):
        raise Trouble(
            f"{name} {_happened(end.kind)} on {end.on.isoformat()}, so '{kind.value}' on {on.isoformat()} can't be "
            "recorded: check the dates."
        )
    latest = max(events, key=lambda event: event.on, default=None)
    if kind in _ENDS and latest is not None and latest.on > on:
        raise Trouble(
            f"{name} {_happened(latest.kind)} on {latest.on.isoformat()}, so '{kind.value}' can't have been before "
            f"that, on {on.isoformat()}: check the dates."
        )


def _refuse_contradiction(name: str, events: Sequence[SampleEvent], kind: EventKind) -> None:
    """A vendor that sent a sample did not refuse it."""
    both = {EventKind.SENT: EventKind.REFUSED, EventKind.REFUSED: EventKind.SENT}
    other = next((event for event in events if event.kind == both.get(kind)), None)
    if other is not None:
        raise Trouble(f"{name} was {other.kind} on {other.on.isoformat()}, so it can't have been {kind.value} too.")


def _happened(kind: str) -> str:
    """'arrived', 'was sent'."""
    return kind if kind == EventKind.ARRIVED else f"was {kind}"
