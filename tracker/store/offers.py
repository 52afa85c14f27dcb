"""Offers in bulk: thousands of rows in one statement, with their charges."""

from collections.abc import Iterable, Iterator, Sequence, Set
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from operator import attrgetter
from typing import Any

from sqlalchemy import Connection, RowMapping, delete, select

from tracker.store import vendors
from tracker.store.boards import board_key
from tracker.store.bulk import insert_columns, insert_rows
from tracker.store.changes import Pen
from tracker.store.tables import charge, offer, vendor
from tracker.store.types import Measure, NotKept, exact_values, join, split, stored_units
from tracker.trade.basis import Basis
from tracker.trade.offer import Charge, GrammageFrom, Line, Note, NoteCode, Offer, Source

Row = dict[str, Any]
Columns = dict[str, Sequence[Any]]


@dataclass(frozen=True, slots=True)
class StoredOffer:
    """An offer as it was read, with where it is kept."""

    id: int
    file_id: int
    position: int
    offer: Offer
    notes: tuple[Note, ...]


def add(pen: Pen, file_id: int, lines: Sequence[tuple[int, Line]], vendor_name: str | None, received: date) -> int:
    """Stores accepted lines, given with their position in the file; gives how many.

    `vendor_name` and `received` stand in where a line names none itself. NotKept, naming the cell, where a number has
    more digits than can be kept exactly; ValueError for a line that is not fully known.
    """
    connection = pen.connection
    ids = _VendorIds(pen, vendor_name)
    # By the thousand, because what is kept of a line is several times as large as the line.
    for start in range(0, len(lines), _AT_ONCE):
        some = lines[start : start + _AT_ONCE]
        offers = [line.offer for _, line in some]
        columns = {
            "price_file_id": [file_id] * len(some),
            "position": [position for position, _ in some],
            **_as_read(offers),
            **_exact_prices(offers),
            **_owned(offers, [ids.of(read.vendor) for read in offers], file_id),
            "received": [read.received or received for read in offers],
            "notes": [[note_to_plain(note) for note in line.notes] or None for _, line in some],
        }
        try:
            insert_columns(connection, offer, columns)
        except NotKept as problem:
            raise NotKept(_with_cell(offers, columns, problem)) from None
    _add_charges(connection, file_id, [(position, line.offer) for position, line in lines if line.offer.charges])
    return len(lines)


_AT_ONCE = 5000
_MEASURES = tuple(column.name for column in offer.c if isinstance(column.type, Measure))


def _with_cell(offers: Sequence[Offer], columns: Columns, problem: NotKept) -> str:
    """The same with the cell, looked for only now: a whole column goes to the database in one go."""
    for place, read in enumerate(offers):
        for name in _MEASURES:
            try:
                stored_units(columns[name][place] or Decimal(0))
            except NotKept as too_large:
                return f"Sheet “{read.source.sheet}”, line of cell {read.source.cell}: {too_large}"
    return str(problem)


class _VendorIds:
    """Vendors of one file by name, each looked up once."""

    def __init__(self, pen: Pen, usual: str | None) -> None:
        self._pen = pen
        self._usual = usual
        self._found: dict[str | None, int | None] = {}

    def of(self, name: str | None) -> int | None:
        if name not in self._found:
            meant = name or self._usual
            self._found[name] = vendors.id_of(self._pen, meant) if meant else None
        return self._found[name]


def _as_read(offers: Sequence[Offer]) -> Columns:
    """What is kept as it was read."""
    sources = [read.source for read in offers]
    sheets = [read.sheet_mm or (None, None) for read in offers]
    leads = [read.lead_days or (None, None) for read in offers]
    return {
        "sheet": [source.sheet for source in sources],
        "cell": [source.cell for source in sources],
        "as_written": [source.as_written for source in sources],
        "also": [" ".join(source.also) for source in sources],
        **{name: list(map(attrgetter(name), offers)) for name in _PLAIN},
        "grammage_from": [read.grammage_from and read.grammage_from.value for read in offers],
        "sheet_width_mm": [width for width, _ in sheets],
        "sheet_length_mm": [length for _, length in sheets],
        "lead_low": [low for low, _ in leads],
        "lead_high": [high for _, high in leads],
    }


_PLAIN = (
    "product", "grade", "coated_sides", "caliper_um", "grammage_gsm", "from_kg", "below_kg", "minimum_kg",
    "valid_until", "valid_at_latest", "delivered",
)  # fmt: skip
"""Columns that hold an offer's field of the same name."""


def _exact_prices(offers: Sequence[Offer]) -> Columns:
    """Prices as whole numbers and scales. ValueError where one is not fully known."""
    prices = [_units_and_scale(read) for read in offers]
    return {
        "price_units": [units for units, _ in prices],
        "price_scale": [scale for _, scale in prices],
        "currency": [read.currency for read in offers],
        "basis": [read.basis and read.basis.value for read in offers],
    }


def _units_and_scale(read: Offer) -> tuple[int, int]:
    if read.price is None or read.currency is None or read.basis is None:
        raise ValueError(
            f"The line of {read.source.cell} has no price, currency or basis and can't be stored as an offer."
        )
    try:
        return split(read.price)
    except NotKept as problem:
        raise NotKept(f"Sheet “{read.source.sheet}”, cell {read.source.cell}: the price {problem}") from None


def _owned(offers: Sequence[Offer], vendor_ids: Sequence[int | None], file_id: int) -> Columns:
    """Whose the offers are, and which board of theirs."""
    keys = [board_key(read, vendor, file_id) for read, vendor in zip(offers, vendor_ids, strict=True)]
    return {"vendor_id": vendor_ids, "board_key": keys}


def _add_charges(connection: Connection, file_id: int, charged: Sequence[tuple[int, Offer]]) -> None:
    if not charged:
        return
    query = select(offer.c.position, offer.c.id).where(offer.c.price_file_id == file_id)
    ids = {row.position: row.id for row in connection.execute(query)}
    insert_rows(connection, charge, [row for position, read in charged for row in _charge_rows(ids[position], read)])


def _charge_rows(offer_id: int, read: Offer) -> Iterator[Row]:
    for extra in read.charges:
        yield {
            "offer_id": offer_id,
            "label": extra.label,
            **exact_values("price", extra.price),
            "currency": extra.currency,
            "basis": extra.basis.value if extra.basis else None,
            "freight": extra.freight,
        }


def get(connection: Connection, offer_id: int) -> StoredOffer:
    """One offer as it was read, exact. KeyError where there is none of that id."""
    query = select(offer, vendor.c.name.label("vendor_name")).outerjoin(vendor).where(offer.c.id == offer_id)
    row = connection.execute(query).mappings().one_or_none()
    if row is None:
        raise KeyError(offer_id)
    notes = tuple(note_from_plain(note) for note in row["notes"] or ())
    return StoredOffer(
        offer_id, row["price_file_id"], row["position"], _offer(row, charges_of(connection, offer_id)), notes
    )


def charges_of(connection: Connection, offer_id: int) -> tuple[Charge, ...]:
    """What stands beside that offer's price, in the order of the sheet."""
    rows = connection.execute(select(charge).where(charge.c.offer_id == offer_id).order_by(charge.c.id)).mappings()
    return tuple(
        Charge(
            row["label"],
            _known(join(row["price_units"], row["price_scale"])),
            row["currency"],
            Basis(row["basis"]) if row["basis"] else None,
            row["freight"],
        )
        for row in rows
    )


def cells(connection: Connection, file_id: int) -> set[tuple[str, str]]:
    """Sheet and cell of every offer that is stored of a file."""
    query = select(offer.c.sheet, offer.c.cell).where(offer.c.price_file_id == file_id)
    return {(sheet, cell) for sheet, cell in connection.execute(query)}


def remove_all_but(connection: Connection, file_id: int, kept: Set[tuple[str, str]]) -> int:
    """Removes the offers of a file whose sheet and cell are not among `kept`; gives how many."""
    query = select(offer.c.id, offer.c.sheet, offer.c.cell).where(offer.c.price_file_id == file_id)
    gone = [row.id for row in connection.execute(query) if (row.sheet, row.cell) not in kept]
    for start in range(0, len(gone), _NAMED_AT_ONCE):
        some = gone[start : start + _NAMED_AT_ONCE]
        connection.execute(delete(charge).where(charge.c.offer_id.in_(some)))
        connection.execute(delete(offer).where(offer.c.id.in_(some)))
    return len(gone)


_NAMED_AT_ONCE = 500
"""Rows named in one statement: databases bound how many."""


def name_vendor(pen: Pen, file_id: int, vendor_id: int) -> tuple[int, ...]:
    """Gives a file's offers of an unnamed vendor to this one; gives the log's entries.

    From now on they are the same boards as in the vendor's other sheets, so their keys are made anew.
    """
    query = select(offer, vendor.c.name.label("vendor_name")).outerjoin(vendor)
    nameless = query.where(offer.c.price_file_id == file_id, offer.c.vendor_id.is_(None)).order_by(offer.c.id)
    return tuple(
        pen.update(
            offer, row["id"], {"vendor_id": vendor_id, "board_key": board_key(_offer(row, ()), vendor_id, file_id)}
        )
        for row in pen.connection.execute(nameless).mappings().all()
    )


def _offer(row: RowMapping, charges: tuple[Charge, ...]) -> Offer:
    width, length = row["sheet_width_mm"], row["sheet_length_mm"]
    low, high = row["lead_low"], row["lead_high"]
    return Offer(
        source=Source(row["sheet"], row["cell"], row["as_written"], tuple(row["also"].split())),
        vendor=row["vendor_name"],
        product=row["product"],
        grade=row["grade"],
        coated_sides=row["coated_sides"],
        caliper_um=row["caliper_um"],
        grammage_gsm=row["grammage_gsm"],
        grammage_from=GrammageFrom(row["grammage_from"]) if row["grammage_from"] else None,
        price=join(row["price_units"], row["price_scale"]),
        currency=row["currency"],
        basis=Basis(row["basis"]),
        sheet_mm=None if width is None or length is None else (width, length),
        from_kg=row["from_kg"],
        below_kg=row["below_kg"],
        minimum_kg=row["minimum_kg"],
        lead_days=None if low is None or high is None else (low, high),
        valid_until=row["valid_until"],
        delivered=row["delivered"],
        charges=charges,
        received=row["received"],
        valid_at_latest=row["valid_at_latest"],
    )


def note_to_plain(note: Note) -> Row:
    """A note as JSON keeps it."""
    return {"code": note.code.value, "cell": note.cell, "text": note.text}


def note_from_plain(plain: Row) -> Note:
    """The note that note_to_plain() wrote."""
    return Note(NoteCode(plain["code"]), plain["cell"], plain["text"])


def accepted(lines: Iterable[Line]) -> list[tuple[int, Line]]:
    """The accepted lines of a reading with their position in it."""
    from tracker.trade.offer import State

    return [(position, line) for position, line in enumerate(lines) if line.state is State.ACCEPTED]


def _known(value: Decimal | None) -> Decimal:
    assert value is not None
    return value
