"""Vendors by name, the same one however its name is spelt in capitals and spaces."""

from sqlalchemy import Connection, insert, select

from tracker.store.tables import vendor


def id_of(connection: Connection, name: str) -> int:
    """The vendor's id; added if the name is new."""
    found = find(connection, name)
    if found is not None:
        return found
    result = connection.execute(insert(vendor).values(name=" ".join(name.split()), folded=_folded(name)))
    assert result.inserted_primary_key is not None
    return int(result.inserted_primary_key[0])


def find(connection: Connection, name: str) -> int | None:
    """The vendor's id, or None for a name never seen."""
    return connection.execute(select(vendor.c.id).where(vendor.c.folded == _folded(name))).scalar()


def names(connection: Connection) -> dict[int, str]:
    """Every vendor's name by id."""
    return {row.id: row.name for row in connection.execute(select(vendor.c.id, vendor.c.name))}


def _folded(name: str) -> str:
    return " ".join(name.split()).casefold()
