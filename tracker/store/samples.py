"""Sample requests, what happened to each, and the readings taken on them."""

from collections import defaultdict
from dataclasses import dataclass
from datetime import UTC, date, datetime
from decimal import Decimal
from typing import Any

from sqlalchemy import Connection, select

from tracker.store import vendors
from tracker.store.changes import Pen
from tracker.store.tables import reading, sample_event, sample_request, vendor
from tracker.store.types import exact_values, join


@dataclass(frozen=True, slots=True)
class SampleEvent:
    """Something that happened to a sample on a day; `until` is the day a promise is for."""

    id: int
    kind: str
    on: date
    until: date | None
    note: str
    recorded_by: str


@dataclass(frozen=True, slots=True)
class Request:
    """A sample asked for, its events in the order of their days, and the days readings were taken on it."""

    number: int
    vendor: str
    grade: str
    caliper_um: Decimal | None
    quantity: str
    for_what: str
    requested: date
    needed: date | None
    logged_by: str
    events: tuple[SampleEvent, ...]
    measured_on: tuple[date, ...]


@dataclass(frozen=True, slots=True)
class Measured:
    """One measurement on a sample, in the unit it was taken in."""

    id: int
    property: str
    value: Decimal
    unit: str
    on: date
    by: str


def log(pen: Pen, vendor_name: str, values: dict[str, Any]) -> tuple[int, int]:
    """Adds a request; gives its number and the log's entry."""
    vendor_id = vendors.id_of(pen.connection, vendor_name)
    return pen.insert(sample_request, {"vendor_id": vendor_id, "logged_by": pen.who, **values})


def add_event(pen: Pen, number: int, kind: str, on: date, until: date | None, note: str) -> int:
    """Adds an event to a request; gives the log's entry."""
    values = {
        "sample_request_id": number,
        "kind": kind,
        "on_day": on,
        "until_day": until,
        "note": note,
        "recorded_at": datetime.now(UTC),
        "recorded_by": pen.who,
    }
    return pen.insert(sample_event, values)[1]


def add_reading(pen: Pen, number: int, name: str, value: Decimal, unit: str, on: date) -> int:
    """Adds one measurement; gives the log's entry. NotKept where it has too many digits."""
    values = {
        "sample_request_id": number,
        "property": name,
        **exact_values("value", value),
        "unit": unit,
        "taken_on": on,
        "taken_by": pen.who,
    }
    return pen.insert(reading, values)[1]


def listing(connection: Connection) -> tuple[Request, ...]:
    """Every request by number."""
    return _requests(connection, None)


def get(connection: Connection, number: int) -> Request:
    """One request. KeyError where there is none of that number."""
    found = _requests(connection, number)
    if not found:
        raise KeyError(number)
    return found[0]


def readings_of(connection: Connection, number: int) -> tuple[Measured, ...]:
    """The measurements taken on one sample, in the order they were entered."""
    query = select(reading).where(reading.c.sample_request_id == number).order_by(reading.c.id)
    return tuple(
        Measured(
            row["id"],
            row["property"],
            join(row["value_units"], row["value_scale"]) or Decimal(0),
            row["unit"],
            row["taken_on"],
            row["taken_by"],
        )
        for row in connection.execute(query).mappings()
    )


def _requests(connection: Connection, number: int | None) -> tuple[Request, ...]:
    query = select(sample_request, vendor.c.name.label("vendor_name")).join(vendor).order_by(sample_request.c.id)
    if number is not None:
        query = query.where(sample_request.c.id == number)
    events = _events(connection, number)
    measured = _days_measured(connection, number)
    return tuple(
        Request(
            row["id"],
            row["vendor_name"],
            row["grade"],
            row["caliper_um"],
            row["quantity"],
            row["for_what"],
            row["requested_on"],
            row["needed_by"],
            row["logged_by"],
            tuple(events[row["id"]]),
            tuple(measured[row["id"]]),
        )
        for row in connection.execute(query).mappings()
    )


def _events(connection: Connection, number: int | None) -> dict[int, list[SampleEvent]]:
    query = select(sample_event).order_by(sample_event.c.on_day, sample_event.c.id)
    if number is not None:
        query = query.where(sample_event.c.sample_request_id == number)
    events: dict[int, list[SampleEvent]] = defaultdict(list)
    for row in connection.execute(query).mappings():
        event = SampleEvent(row["id"], row["kind"], row["on_day"], row["until_day"], row["note"], row["recorded_by"])
        events[row["sample_request_id"]].append(event)
    return events


def _days_measured(connection: Connection, number: int | None) -> dict[int, list[date]]:
    request = reading.c.sample_request_id
    query = select(request, reading.c.taken_on).distinct().order_by(reading.c.taken_on)
    if number is not None:
        query = query.where(request == number)
    days: dict[int, list[date]] = defaultdict(list)
    for request_id, day in connection.execute(query):
        days[request_id].append(day)
    return days
