"""Market levels as the user sets them: dated, per grade, each with its source."""

from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from sqlalchemy import Connection, select

from tracker.store.changes import Pen
from tracker.store.tables import level
from tracker.store.types import exact_values, join


@dataclass(frozen=True, slots=True)
class Level:
    """A grade's price per tonne on a day. `spread`: per cent up and down that still is its band (None: not said)."""

    id: int
    grade: str
    on: date
    per_tonne: Decimal
    currency: str
    source: str
    spread: Decimal | None


def listing(connection: Connection) -> tuple[Level, ...]:
    """Every level by grade, the latest first."""
    rows = connection.execute(select(level).order_by(level.c.grade, level.c.on_day.desc())).mappings()
    return tuple(
        Level(
            row["id"],
            row["grade"],
            row["on_day"],
            join(row["per_tonne_units"], row["per_tonne_scale"]) or Decimal(0),
            row["currency"],
            row["source"],
            row["spread_percent"],
        )
        for row in rows
    )


def put(pen: Pen, grade: str, on: date, per_tonne: Decimal, currency: str, source: str, spread: Decimal | None) -> int:
    """Sets a grade's level on a day, in place of one set for that day before; gives the log's entry."""
    values = {
        **exact_values("per_tonne", per_tonne),
        "currency": currency,
        "source": source,
        "spread_percent": spread,
    }
    there = select(level.c.id).where(level.c.grade == grade, level.c.on_day == on)
    earlier = pen.connection.execute(there).scalar()
    if earlier is not None:
        return pen.update(level, earlier, values)
    return pen.insert(level, {"grade": grade, "on_day": on, **values})[1]
