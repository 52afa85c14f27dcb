"""What was measured on samples, and what was claimed of them."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Any

from sqlalchemy import Connection, RowMapping, select

from tracker.store.changes import Pen
from tracker.store.tables import claim, reading
from tracker.store.types import exact_values, join


@dataclass(frozen=True, slots=True)
class Measured:
    """One measurement, in the property's own unit. conditioned: in the standard air, not, or nobody said (None)."""

    id: int
    property: str
    value: Decimal
    unit: str
    on: date
    by: str
    conditioned: bool | None = None
    method: str = ""
    sample: int = 0


@dataclass(frozen=True, slots=True)
class TypedClaim:
    """What a data sheet or a vendor's word claims of a sample's board, in the property's own unit."""

    id: int
    sample: int
    property: str
    value: Decimal
    unit: str
    source: str
    on: date
    by: str


@dataclass(frozen=True, slots=True)
class Taken:
    """How a row of readings was taken."""

    property: str
    unit: str
    on: date
    conditioned: bool | None = None
    method: str = ""


def add_reading(pen: Pen, number: int, value: Decimal, taken: Taken) -> int:
    """Adds one measurement; gives the log's entry. NotKept where it has too many digits."""
    values = {
        "sample_request_id": number,
        "property": taken.property,
        **exact_values("value", value),
        "unit": taken.unit,
        "taken_on": taken.on,
        "taken_by": pen.who,
        "conditioned": taken.conditioned,
        "method": taken.method,
    }
    return pen.insert(reading, values)[1]


def remove_reading(pen: Pen, reading_id: int) -> int:
    """Takes one measurement off; gives the log's entry."""
    return pen.delete(reading, reading_id)


def readings_of(connection: Connection, number: int) -> tuple[Measured, ...]:
    """The measurements taken on one sample, in the order they were entered."""
    query = select(reading).where(reading.c.sample_request_id == number).order_by(reading.c.id)
    return tuple(_measured(row) for row in connection.execute(query).mappings())


def readings_of_property(connection: Connection, property_key: str) -> tuple[Measured, ...]:
    """Every measurement of one property on any sample, in the order they were entered."""
    query = select(reading).where(reading.c.property == property_key).order_by(reading.c.id)
    return tuple(_measured(row) for row in connection.execute(query).mappings())


def put_claim(pen: Pen, number: int, values: Mapping[str, Any], value: Decimal) -> int:
    """Keeps a claim of a sample, in the place of an earlier one of the same property; gives the log's entry."""
    whole = {**values, **exact_values("value", value), "said_by": pen.who}
    same = (claim.c.sample_request_id == number) & (claim.c.property == values["property"])
    there = pen.connection.execute(select(claim.c.id).where(same)).scalar()
    if there is not None:
        return pen.update(claim, there, whole)
    return pen.insert(claim, {"sample_request_id": number, **whole})[1]


def remove_claim(pen: Pen, claim_id: int) -> int:
    """Takes a claim back; gives the log's entry."""
    return pen.delete(claim, claim_id)


def claims_of(connection: Connection, number: int) -> tuple[TypedClaim, ...]:
    """The claims that were typed in for one sample."""
    query = select(claim).where(claim.c.sample_request_id == number).order_by(claim.c.id)
    return tuple(
        TypedClaim(
            row["id"],
            row["sample_request_id"],
            row["property"],
            join(row["value_units"], row["value_scale"]) or Decimal(0),
            row["unit"],
            row["source"],
            row["said_on"],
            row["said_by"],
        )
        for row in connection.execute(query).mappings()
    )


def _measured(row: RowMapping) -> Measured:
    return Measured(
        row["id"],
        row["property"],
        join(row["value_units"], row["value_scale"]) or Decimal(0),
        row["unit"],
        row["taken_on"],
        row["taken_by"],
        row["conditioned"],
        row["method"],
        row["sample_request_id"],
    )
