"""Whom to write to at a vendor, and in which language."""

from dataclasses import dataclass

from sqlalchemy import Connection, select

from tracker.store import vendors
from tracker.store.changes import Pen
from tracker.store.tables import vendor, vendor_contact


@dataclass(frozen=True, slots=True)
class Contact:
    """A person at a vendor; empty where nobody said. language: 'en', 'de', 'fr' or 'es'."""

    vendor: str
    name: str = ""
    mail: str = ""
    language: str = "en"


def put(pen: Pen, contact: Contact) -> int:
    """Keeps a vendor's contact in the place of the earlier one; gives the log's entry."""
    vendor_id = vendors.id_of(pen, contact.vendor)
    values = {"name": contact.name, "mail": contact.mail, "language": contact.language}
    there = pen.connection.execute(select(vendor_contact.c.id).where(vendor_contact.c.vendor_id == vendor_id)).scalar()
    if there is not None:
        return pen.update(vendor_contact, there, values)
    return pen.insert(vendor_contact, {"vendor_id": vendor_id, **values})[1]


def listing(connection: Connection) -> dict[str, Contact]:
    """Every contact by its vendor's name."""
    query = select(vendor.c.name.label("vendor"), vendor_contact).join(vendor)
    return {
        row["vendor"]: Contact(row["vendor"], row["name"], row["mail"], row["language"])
        for row in connection.execute(query).mappings()
    }
