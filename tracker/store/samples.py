"""Sample requests and what happened to each."""

from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, date, datetime
from decimal import Decimal
from typing import Any

from sqlalchemy import Connection, RowMapping, select

from tracker.store import vendors
from tracker.store.changes import Pen
from tracker.store.tables import reading, sample_event, sample_request, vendor


@dataclass(frozen=True, slots=True)
class SampleEvent:
    """Something that happened to a sample on a day; `until` is the day a promise is for, `carrier` and `tracking` how
    it was sent."""

    id: int
    kind: str
    on: date
    until: date | None
    note: str
    recorded_by: str
    carrier: str = ""
    tracking: str = ""


@dataclass(frozen=True, slots=True)
class Request:
    """A sample asked for, its events in the order of their days, and the days readings were taken on it.

    product: the vendor's name of the board, '' where none was said. form, pieces, width_mm, length_mm: what `quantity`
    says as far as it is understood. contact: who was asked.
    """

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
    product: str = ""
    form: str = ""
    pieces: int | None = None
    width_mm: Decimal | None = None
    length_mm: Decimal | None = None
    contact: str = ""


def log(pen: Pen, vendor_name: str, values: Mapping[str, Any]) -> tuple[int, int]:
    """Adds a request; gives its number and the log's entry."""
    vendor_id = vendors.id_of(pen, vendor_name)
    return pen.insert(sample_request, {"vendor_id": vendor_id, "logged_by": pen.who, **values})


def change(pen: Pen, number: int, values: Mapping[str, Any]) -> int:
    """Changes what a request says; gives the log's entry."""
    return pen.update(sample_request, number, values)


def add_event(
    pen: Pen,
    number: int,
    kind: str,
    on: date,
    until: date | None,
    note: str,
    carrier: str = "",
    tracking: str = "",
) -> int:
    """Adds an event to a request; gives the log's entry."""
    values = {
        "sample_request_id": number,
        "kind": kind,
        "on_day": on,
        "until_day": until,
        "note": note,
        "recorded_at": datetime.now(UTC),
        "recorded_by": pen.who,
        "carrier": carrier,
        "tracking": tracking,
    }
    return pen.insert(sample_event, values)[1]


def listing(connection: Connection) -> tuple[Request, ...]:
    """Every request by number."""
    return _requests(connection, None)


def get(connection: Connection, number: int) -> Request:
    """One request. KeyError where there is none of that number."""
    found = _requests(connection, number)
    if not found:
        raise KeyError(number)
    return found[0]


def _requests(connection: Connection, number: int | None) -> tuple[Request, ...]:
    query = select(sample_request, vendor.c.name.label("vendor_name")).join(vendor).order_by(sample_request.c.id)
    if number is not None:
        query = query.where(sample_request.c.id == number)
    events = _events(connection, number)
    measured = _days_measured(connection, number)
    return tuple(
        _request(row, tuple(events[row["id"]]), tuple(measured[row["id"]]))
        for row in connection.execute(query).mappings()
    )


def _request(row: RowMapping, events: tuple[SampleEvent, ...], measured: tuple[date, ...]) -> Request:
    return Request(
        number=row["id"],
        vendor=row["vendor_name"],
        grade=row["grade"],
        caliper_um=row["caliper_um"],
        quantity=row["quantity"],
        for_what=row["for_what"],
        requested=row["requested_on"],
        needed=row["needed_by"],
        logged_by=row["logged_by"],
        events=events,
        measured_on=measured,
        product=row["product"],
        form=row["form"],
        pieces=row["pieces"],
        width_mm=row["width_mm"],
        length_mm=row["length_mm"],
        contact=row["contact"],
    )


def _events(connection: Connection, number: int | None) -> dict[int, list[SampleEvent]]:
    query = select(sample_event).order_by(sample_event.c.on_day, sample_event.c.id)
    if number is not None:
        query = query.where(sample_event.c.sample_request_id == number)
    events: dict[int, list[SampleEvent]] = defaultdict(list)
    for row in connection.execute(query).mappings():
        event = SampleEvent(
            row["id"],
            row["kind"],
            row["on_day"],
            row["until_day"],
            row["note"],
            row["recorded_by"],
            row["carrier"],
            row["tracking"],
        )
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
