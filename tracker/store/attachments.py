"""Photographs and data sheets kept with a sample, whole and by their hash."""

import zlib
from dataclasses import dataclass
from datetime import UTC, datetime
from hashlib import sha256

from sqlalchemy import Connection, insert, select

from tracker.store.changes import Pen
from tracker.store.tables import attachment

# Photographs are packed already; more effort than the least buys nothing.
_ZIP_LEVEL = 1


@dataclass(frozen=True, slots=True)
class Attachment:
    """A kept file without its bytes; size in bytes."""

    id: int
    sample: int
    name: str
    sha256: str
    size: int
    added_at: datetime
    added_by: str


def add(pen: Pen, number: int, name: str, content: bytes) -> int:
    """Keeps a file with a sample; gives the log's entry.

    The bytes go in as a file taken off already, and what is logged is its being put on: undoing that and doing it
    again then needs no bytes, which no log keeps.
    """
    values = {
        "sample_request_id": number,
        "name": name,
        "sha256": sha256(content).hexdigest(),
        "size": len(content),
        "added_at": datetime.now(UTC),
        "added_by": pen.who,
        "content": zlib.compress(content, _ZIP_LEVEL),
        "withdrawn_at": datetime.now(UTC),
    }
    key = pen.connection.execute(insert(attachment).values(**values)).inserted_primary_key
    assert key is not None
    return pen.update(attachment, int(key[0]), {"withdrawn_at": None})


def withdraw(pen: Pen, attachment_id: int) -> int:
    """Takes a file off its sample; gives the log's entry."""
    return pen.update(attachment, attachment_id, {"withdrawn_at": datetime.now(UTC)})


def listing(connection: Connection, number: int) -> tuple[Attachment, ...]:
    """The files with one sample, as they were added."""
    columns = [column for column in attachment.c if column.name not in ("content", "withdrawn_at")]
    query = select(*columns).where(attachment.c.sample_request_id == number, attachment.c.withdrawn_at.is_(None))
    return tuple(
        Attachment(row.id, row.sample_request_id, row.name, row.sha256, row.size, row.added_at, row.added_by)
        for row in connection.execute(query.order_by(attachment.c.id))
    )


def content(connection: Connection, attachment_id: int) -> tuple[bytes, str]:
    """The bytes of a file and the hash they were kept under. KeyError where there is none of that id."""
    query = select(attachment.c.content, attachment.c.sha256).where(attachment.c.id == attachment_id)
    row = connection.execute(query).one_or_none()
    if row is None:
        raise KeyError(attachment_id)
    return zlib.decompress(row.content), row.sha256
