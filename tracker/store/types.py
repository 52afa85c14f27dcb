"""How exact numbers and moments are kept, the same on SQLite and PostgreSQL.

SQLite would keep a decimal as a binary float and forget the zone of a time (both seen with SQLAlchemy 2.1), so neither
is left to the database.
"""

from datetime import UTC, datetime
from decimal import ROUND_HALF_EVEN, Context, Decimal
from typing import Any

from sqlalchemy import BigInteger, Column, DateTime, Dialect, SmallInteger
from sqlalchemy.types import TypeDecorator

_LARGEST = 2**63 - 1
_PLACES = 9
_WIDE = Context(prec=60)
_MEASURE_STEP = Decimal(1).scaleb(-_PLACES)


class NotKept(ValueError):
    """A number that the database can't hold exactly; the message says which."""


def exact_columns(name: str, *, nullable: bool = False) -> tuple[Column[int], Column[int]]:
    """The two columns of a number that is kept exactly as quoted: its digits, and how many stand after the point."""
    return (
        Column(f"{name}_units", BigInteger, nullable=nullable),
        Column(f"{name}_scale", SmallInteger, nullable=nullable),
    )


def exact_values(name: str, value: Decimal | None) -> dict[str, int | None]:
    """What exact_columns(name) hold for a value: exact_values('price', Decimal('52.50')) is 5250 units at scale 2.

    NotKept for more than eighteen digits: a price is never rounded.
    """
    units, scale = (None, None) if value is None else split(value)
    return {f"{name}_units": units, f"{name}_scale": scale}


def split(value: Decimal) -> tuple[int, int]:
    """A decimal as (units, scale), value = units ÷ 10**scale, without loss; NotKept where 64 bits are too few."""
    _, digits, exponent = value.as_tuple()
    if not isinstance(exponent, int):
        raise NotKept(f"{value} is not a number that can be kept.")
    scale = max(0, -exponent)
    units = int(value.scaleb(scale, _WIDE)) if len(digits) < 40 else _LARGEST + 1
    if abs(units) > _LARGEST or scale > 40:
        raise NotKept(f"{value} has more digits than can be kept exactly (eighteen).")
    return units, scale


def join(units: int | None, scale: int | None) -> Decimal | None:
    """The decimal that split() took apart, with the zeros it was quoted with."""
    return None if units is None else Decimal(units).scaleb(-(scale or 0), _WIDE)


class Measure(TypeDecorator[Decimal]):
    """A physical measure (µm, g/m², mm, kg) as a whole number of billionths.

    Measures are themselves converted from other units to twelve digits, so a billionth is finer than any of them means;
    prices don't use this type. NotKept beyond nine billion.
    """

    impl = BigInteger
    cache_ok = True

    def process_bind_param(self, value: Decimal | None, dialect: Dialect) -> int | None:  # noqa: ARG002
        return None if value is None else stored_units(value)

    def process_result_value(self, value: Any | None, dialect: Dialect) -> Decimal | None:  # noqa: ARG002
        return None if value is None else as_measure(value)


def stored_units(value: Decimal) -> int:
    """A measure in billionths. NotKept beyond nine billion."""
    units = int(value.quantize(_MEASURE_STEP, ROUND_HALF_EVEN, _WIDE).scaleb(_PLACES, _WIDE))
    if abs(units) > _LARGEST:
        raise NotKept(f"{value} is larger than any measure of board that can be kept.")
    return units


def as_measure(units: int) -> Decimal:
    """The measure that so many billionths are, without trailing zeros: as_measure(457200000000) is 457.2."""
    plain = Decimal(units).scaleb(-_PLACES, _WIDE).normalize(_WIDE)
    return plain.quantize(Decimal(1)) if plain == plain.to_integral_value() else plain


STORED_UNITS = 10.0**_PLACES
"""Stored units in one unit of a Measure. Dividing by it gives the nearest float; whole columns are read so."""


class Moment(TypeDecorator[datetime]):
    """A moment in UTC. Only times with a zone go in, and come out in UTC."""

    impl = DateTime
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> datetime | None:  # noqa: ARG002
        if value is None:
            return None
        if value.tzinfo is None:
            raise NotKept(f"The time {value} has no zone, so it is not known which moment it is.")
        return value.astimezone(UTC).replace(tzinfo=None)

    def process_result_value(self, value: datetime | None, dialect: Dialect) -> datetime | None:  # noqa: ARG002
        return None if value is None else value.replace(tzinfo=UTC)
