"""Vendors' files: kept whole, so that every price can be shown in its sheet for ever."""

import zlib
from collections.abc import Mapping
from collections.abc import Set as AbstractSet
from dataclasses import dataclass
from datetime import UTC, date, datetime
from itertools import count
from typing import Any

from sqlalchemy import Connection, Row, Select, bindparam, func, insert, select, update

from tracker.store import held, offers, vendors
from tracker.store.changes import Pen
from tracker.store.evidence import evidence_at, pack_evidence
from tracker.store.tables import held_line, offer, price_file, vendor
from tracker.trade.offer import Evidence, Reading

# Workbooks are zipped already; more effort than the least buys nothing.
_ZIP_LEVEL = 1


@dataclass(frozen=True, slots=True)
class StoredFile:
    """A kept file without its bytes: how many offers and held lines it left, and whether it was withdrawn."""

    id: int
    name: str
    sha256: str
    vendor: str | None
    received: date
    imported_at: datetime
    imported_by: str
    withdrawn: bool
    offers: int
    held: int


def add(pen: Pen, reading: Reading, content: bytes, received: date, answers: Mapping[str, str]) -> int:
    """Stores a file with all its accepted offers, open questions and held lines; gives its id.

    To be called in one transaction with whatever belongs to it. IntegrityError where the same bytes are stored already.
    """
    connection = pen.connection
    file_id = _add_file(pen, reading, content, received, answers)
    stored = offers.add(pen, file_id, offers.accepted(reading.lines), reading.vendor, received)
    held.add(connection, file_id, reading)
    pen.note(price_file, file_id, {"name": reading.file, "sha256": reading.sha256, "offers": stored})
    return file_id


def add_settled(pen: Pen, file_id: int, reading: Reading, answers: Mapping[str, str]) -> int:
    """Adds what a new reading of a kept file accepts beyond what is stored of it; gives how many offers.

    Offers that are stored already keep their rows: an answer settles what was open and never changes what was read.
    """
    connection = pen.connection
    _follow_lines(connection, file_id, reading)
    there = offers.cells(connection, file_id)
    fresh = [
        (position, line)
        for position, line in offers.accepted(reading.lines)
        if (line.offer.source.sheet, line.offer.source.cell) not in there
    ]
    _, received, _ = answers_of(connection, file_id)
    added = offers.add(pen, file_id, fresh, reading.vendor, received)
    _read_anew(pen, file_id, reading, answers, added)
    return added


def replace_offers(
    pen: Pen, file_id: int, reading: Reading, answers: Mapping[str, str], same: AbstractSet[tuple[str, str]]
) -> None:
    """Puts what another reading of a kept file accepts in the place of its offers, but for those in the cells `same`
    (sheet, address), whose rows stay."""
    removed = offers.remove_all_but(pen.connection, file_id, same)
    pen.note(price_file, file_id, {"name": reading.file, "offers": -removed})
    add_settled(pen, file_id, reading, answers)


def add_anew(pen: Pen, file_id: int, reading: Reading, received: date, answers: Mapping[str, str]) -> None:
    """Puts a new reading of a withdrawn file in the place of what was stored of it; from now on it counts again."""
    vendor_id = vendors.id_of(pen, reading.vendor) if reading.vendor else None
    offers.remove_all_but(pen.connection, file_id, set())
    changed = {"withdrawn_at": None, "vendor_id": vendor_id, "received": received}
    pen.update(price_file, file_id, {**changed, "imported_at": datetime.now(UTC), "imported_by": pen.who})
    added = offers.add(pen, file_id, offers.accepted(reading.lines), reading.vendor, received)
    _read_anew(pen, file_id, reading, answers, added)


def name_vendor(pen: Pen, file_id: int, name: str) -> tuple[int, ...]:
    """Names who sent a file that named nobody, for it and its offers that named none; gives the log's entries."""
    vendor_id = vendors.id_of(pen, name)
    answers = {**answers_of(pen.connection, file_id)[2], "vendor": name}
    entry = pen.update(price_file, file_id, {"vendor_id": vendor_id, "answers": answers})
    return (entry, *offers.name_vendor(pen, file_id, vendor_id))


def take_back(pen: Pen, file_id: int, reading: Reading, answers: Mapping[str, str]) -> int:
    """Undoes add_settled: what `reading`, made with the earlier answers, does not accept is removed; gives how many."""
    cells = {(line.offer.source.sheet, line.offer.source.cell) for _, line in offers.accepted(reading.lines)}
    removed = offers.remove_all_but(pen.connection, file_id, cells)
    _follow_lines(pen.connection, file_id, reading)
    _read_anew(pen, file_id, reading, answers, -removed)
    return removed


def _follow_lines(connection: Connection, file_id: int, reading: Reading) -> None:
    """Gives the stored offers the positions of their cells in another reading, by which what said their fields is kept.

    Those whose cells that reading passes over come behind all its lines, where nothing is said of them.
    """
    sources = (line.offer.source for line in reading.lines)
    position_of = {(source.sheet, source.cell): position for position, source in enumerate(sources)}
    of_file = offer.c.price_file_id == file_id
    query = select(offer.c.id, offer.c.position, offer.c.sheet, offer.c.cell).where(of_file).order_by(offer.c.position)
    behind = count(len(reading.lines))
    moved = []
    for row in connection.execute(query):
        position = position_of.get((row.sheet, row.cell))
        moved.append((row.id, row.position, next(behind) if position is None else position))
    if all(before == after for _, before, after in moved):
        return
    # Out of the way first: no two offers of a file may stand at one position, not even for a moment.
    connection.execute(update(offer).where(of_file).values(position=-1 - offer.c.position))
    one = update(offer).where(offer.c.id == bindparam("row")).values(position=bindparam("to"))
    connection.execute(one, [{"row": row, "to": after} for row, _, after in moved])


def _read_anew(pen: Pen, file_id: int, reading: Reading, answers: Mapping[str, str], added: int) -> None:
    """What another reading of a kept file leaves open, the answers it was made with, and what said its fields."""
    held.replace(pen.connection, file_id, reading)
    values = {"answers": dict(answers), "evidence": pack_evidence(reading.lines)}
    pen.connection.execute(update(price_file).where(price_file.c.id == file_id).values(**values))
    pen.note(price_file, file_id, {"name": reading.file, "answers": dict(answers), "offers": added})


def _add_file(pen: Pen, reading: Reading, content: bytes, received: date, answers: Mapping[str, str]) -> int:
    connection = pen.connection
    values = {
        "name": reading.file,
        "sha256": reading.sha256,
        "size": len(content),
        "vendor_id": vendors.id_of(pen, reading.vendor) if reading.vendor else None,
        "received": received,
        "imported_at": datetime.now(UTC),
        "imported_by": pen.who,
        "answers": dict(answers),
        "passed_over": [[part.sheet, part.rows, part.why] for part in reading.passed_over],
        "evidence": pack_evidence(reading.lines),
        "content": zlib.compress(content, _ZIP_LEVEL),
    }
    key = connection.execute(insert(price_file).values(**values)).inserted_primary_key
    assert key is not None
    return int(key[0])


def imported_on(connection: Connection, sha256: str) -> date | None:
    """The day these very bytes were stored, or None; those of a withdrawn file may be taken in anew."""
    these = select(price_file.c.imported_at).where(price_file.c.sha256 == sha256)
    found = connection.execute(these.where(price_file.c.withdrawn_at.is_(None))).scalar()
    return None if found is None else found.astimezone().date()


def id_of(connection: Connection, sha256: str) -> int | None:
    """The stored file of these bytes, withdrawn or not, or None."""
    return connection.execute(select(price_file.c.id).where(price_file.c.sha256 == sha256)).scalar()


def content(connection: Connection, file_id: int) -> bytes:
    """The file as the vendor sent it. KeyError where there is none of that id."""
    packed = connection.execute(select(price_file.c.content).where(price_file.c.id == file_id)).scalar()
    if packed is None:
        raise KeyError(file_id)
    return zlib.decompress(packed)


def answers_of(connection: Connection, file_id: int) -> tuple[str, date, dict[str, str]]:
    """Name, day received and the answers with which a file was read."""
    query = select(price_file.c.name, price_file.c.received, price_file.c.answers).where(price_file.c.id == file_id)
    row = connection.execute(query).one()
    return row.name, row.received, dict(row.answers)


def listing(connection: Connection) -> tuple[StoredFile, ...]:
    """Every kept file, the latest first."""
    return tuple(_stored(row) for row in connection.execute(_listing().order_by(price_file.c.id.desc())))


def _listing() -> Select[Any]:
    count_offers = select(func.count()).where(offer.c.price_file_id == price_file.c.id).scalar_subquery()
    count_held = select(func.count()).where(held_line.c.price_file_id == price_file.c.id).scalar_subquery()
    columns = (
        price_file.c.id,
        price_file.c.name,
        price_file.c.sha256,
        vendor.c.name.label("vendor"),
        price_file.c.received,
        price_file.c.imported_at,
        price_file.c.imported_by,
        price_file.c.withdrawn_at,
        count_offers.label("offers"),
        count_held.label("held"),
    )
    return select(*columns).outerjoin(vendor, vendor.c.id == price_file.c.vendor_id)


def _stored(row: Row[Any]) -> StoredFile:
    return StoredFile(
        row.id,
        row.name,
        row.sha256,
        row.vendor,
        row.received,
        row.imported_at,
        row.imported_by,
        row.withdrawn_at is not None,
        row.offers,
        row.held,
    )


def evidence(connection: Connection, file_id: int, position: int) -> tuple[Evidence, ...]:
    """What said each field of one line, given by its position in the file."""
    packed = connection.execute(select(price_file.c.evidence).where(price_file.c.id == file_id)).scalar()
    return () if packed is None else evidence_at(packed, position)
