"""What a vendor's stored offers claim of its boards: caliper and basis weight, with the cell that says so."""

from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from sqlalchemy import Connection, select

from tracker.store import vendors
from tracker.store.tables import offer, price_file


@dataclass(frozen=True, slots=True)
class OfferedBoard:
    """One offer of a board as far as it describes the board. grammage_gsm: None where none was quoted."""

    offer: int
    product: str
    caliper_um: Decimal | None
    grammage_gsm: Decimal | None
    received: date
    file: str
    sheet: str
    cell: str


_DESCRIBE = ("id", "product", "caliper_um", "grammage_gsm", "grammage_from", "received", "sheet", "cell")


def offered(connection: Connection, vendor: str, grade: str) -> tuple[OfferedBoard, ...]:
    """A vendor's boards of a grade from files that were not withdrawn, the latest sheet first."""
    vendor_id = vendors.find(connection, vendor)
    if vendor_id is None:
        return ()
    query = (
        select(*(offer.c[name] for name in _DESCRIBE), price_file.c.name.label("file_name"))
        .join(price_file, price_file.c.id == offer.c.price_file_id)
        .where(price_file.c.withdrawn_at.is_(None), offer.c.vendor_id == vendor_id, offer.c.grade == grade)
        .order_by(offer.c.received.desc(), offer.c.price_file_id.desc(), offer.c.position)
    )
    return tuple(
        OfferedBoard(
            row["id"],
            row["product"],
            row["caliper_um"],
            row["grammage_gsm"] if row["grammage_from"] == "quoted" else None,
            row["received"],
            row["file_name"],
            row["sheet"],
            row["cell"],
        )
        for row in connection.execute(query).mappings()
    )
