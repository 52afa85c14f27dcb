"""The user's own exchange rates, dated."""

from datetime import date
from decimal import Decimal

from sqlalchemy import Connection, select

from tracker.store.changes import Pen
from tracker.store.tables import rate
from tracker.store.types import exact_values, join


def put(pen: Pen, currency: str, on: date, euros: Decimal) -> int:
    """Sets what one unit of a currency is in euro on a day, in place of an earlier figure; gives the log's entry."""
    values = exact_values("euros", euros)
    there = select(rate.c.id).where(rate.c.currency == currency, rate.c.on_day == on)
    earlier = pen.connection.execute(there).scalar()
    if earlier is not None:
        return pen.update(rate, earlier, values)
    return pen.insert(rate, {"currency": currency, "on_day": on, **values})[1]


def listing(connection: Connection) -> tuple[tuple[str, date, Decimal], ...]:
    """Every one of them as (currency, day, euros for one unit), by currency and day."""
    rows = connection.execute(select(rate).order_by(rate.c.currency, rate.c.on_day)).mappings()
    return tuple(
        (row["currency"], row["on_day"], join(row["euros_units"], row["euros_scale"]) or Decimal(0)) for row in rows
    )
