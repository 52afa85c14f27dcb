"""The user's own ratios of a grade's price to the reference grade's: dated, each with its source."""

from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from sqlalchemy import Connection, select

from tracker.store.changes import Pen
from tracker.store.tables import grade_ratio
from tracker.store.types import exact_values, join


@dataclass(frozen=True, slots=True)
class OwnRatio:
    """From `on` a grade is expected at `low` to `high` times the reference grade's level."""

    id: int
    grade: str
    on: date
    low: Decimal
    high: Decimal
    source: str


def listing(connection: Connection) -> tuple[OwnRatio, ...]:
    """Every ratio by grade, the latest first."""
    rows = connection.execute(select(grade_ratio).order_by(grade_ratio.c.grade, grade_ratio.c.on_day.desc())).mappings()
    return tuple(
        OwnRatio(
            row["id"],
            row["grade"],
            row["on_day"],
            join(row["low_units"], row["low_scale"]) or Decimal(0),
            join(row["high_units"], row["high_scale"]) or Decimal(0),
            row["source"],
        )
        for row in rows
    )


def put(pen: Pen, grade: str, on: date, low: Decimal, high: Decimal, source: str) -> int:
    """Sets a grade's ratio from a day on, in place of one set for that day before; gives the log's entry."""
    values = {**exact_values("low", low), **exact_values("high", high), "source": source}
    there = select(grade_ratio.c.id).where(grade_ratio.c.grade == grade, grade_ratio.c.on_day == on)
    earlier = pen.connection.execute(there).scalar()
    if earlier is not None:
        return pen.update(grade_ratio, earlier, values)
    return pen.insert(grade_ratio, {"grade": grade, "on_day": on, **values})[1]
