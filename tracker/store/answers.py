"""What a person settled about a vendor's sheets, remembered with the words it answered."""

from dataclasses import dataclass
from datetime import UTC, datetime

from sqlalchemy import Connection, select

from tracker.store import vendors
from tracker.store.changes import Pen
from tracker.store.tables import answer, vendor


@dataclass(frozen=True, slots=True)
class Remembered:
    """One remembered answer: `key` and `value` as trade.offer.Answers has them, `words` what stood in the sheet."""

    id: int
    vendor: str
    key: str
    value: str
    words: str
    said_at: datetime
    said_by: str


def listing(connection: Connection, name: str | None = None) -> tuple[Remembered, ...]:
    """Remembered answers of one vendor, or of all, by vendor and key."""
    query = select(answer, vendor.c.name).join(vendor).order_by(vendor.c.folded, answer.c.key)
    if name is not None:
        query = query.where(answer.c.vendor_id == (vendors.find(connection, name) or -1))
    return tuple(
        Remembered(row["id"], row["name"], row["key"], row["value"], row["words"], row["said_at"], row["said_by"])
        for row in connection.execute(query).mappings()
    )


def remember(pen: Pen, vendor_name: str, key: str, value: str, words: str) -> int:
    """Keeps an answer for a vendor in place of an earlier one under the same key; gives the log's entry.

    Without `words` those of the earlier one stay: the key is the same, and so is what stood in the sheet.
    """
    vendor_id = vendors.id_of(pen, vendor_name)
    values = {"value": value, "words": words, "said_at": datetime.now(UTC), "said_by": pen.who}
    there = select(answer.c.id).where(answer.c.vendor_id == vendor_id, answer.c.key == key)
    earlier = pen.connection.execute(there).scalar()
    if earlier is not None:
        values = values if words else {name: value for name, value in values.items() if name != "words"}
        return pen.update(answer, earlier, values)
    return pen.insert(answer, {"vendor_id": vendor_id, "key": key, **values})[1]
