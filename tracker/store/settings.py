"""Settings that belong to the database and not to a person."""

from typing import Any

from sqlalchemy import Connection, select

from tracker.store.changes import Pen
from tracker.store.tables import setting

TODAY = "today"
"""The day on which the database stands still: only the demo's does."""

IDENTITY = "identity"
"""What tells this database from every other one, so that the same number in two calendars is not taken for one."""

SIGNATURE = "signature"
"""The name that chases are signed with."""

SENSITIVITY = "sensitivity"
"""How far a price must stand out to be called out of line, as a word of desk.sensitivity."""


def get(connection: Connection, key: str) -> Any:
    """A setting's value, None where it is not set."""
    return connection.execute(select(setting.c.value).where(setting.c.key == key)).scalar()


def put(pen: Pen, key: str, value: Any) -> int:
    """Sets it; gives the log's entry."""
    there = pen.connection.execute(select(setting.c.id).where(setting.c.key == key)).scalar()
    if there is not None:
        return pen.update(setting, there, {"value": value})
    return pen.insert(setting, {"key": key, "value": value})[1]
