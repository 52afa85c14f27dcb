"""Vendors by name, the same one however its name is spelt in capitals and spaces."""

from sqlalchemy import Connection, select

from tracker.store.changes import Pen
from tracker.store.tables import vendor


def id_of(pen: Pen, name: str) -> int:
    """The vendor's id; added, and logged, if the name is new."""
    found = find(pen.connection, name)
    return pen.insert(vendor, {"name": " ".join(name.split()), "folded": _folded(name)})[0] if found is None else found


def find(connection: Connection, name: str) -> int | None:
    """The vendor's id, or None for a name never seen."""
    return connection.execute(select(vendor.c.id).where(vendor.c.folded == _folded(name))).scalar()


def names(connection: Connection) -> dict[int, str]:
    """Every vendor's name by id."""
    return {row.id: row.name for row in connection.execute(select(vendor.c.id, vendor.c.name))}


def _folded(name: str) -> str:
    return " ".join(name.split()).casefold()
