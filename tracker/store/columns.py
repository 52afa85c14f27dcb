"""All offers as plain columns, fast: what the desk makes its snapshot from."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from sqlalchemy import BigInteger, ColumnElement, Connection, Row, Table, select, type_coerce

from tracker.store.tables import charge, offer, price_file, vendor

Column = tuple[Any, ...]


@dataclass(frozen=True, slots=True)
class OfferColumns:
    """Columns of equal length in the order of offer ids, None where nothing is known, by the names of the offer table.

    Measures (µm, g/m², mm, kg) are whole billionths, a price is units and scale as stored: making a Decimal of each
    would take longer than all the rest. `charges` holds the columns of the charge table. `vendors` gives names by id,
    `files` name and sha256 by id.
    """

    columns: dict[str, Column]
    charges: dict[str, Column]
    vendors: dict[int, str]
    files: dict[int, tuple[str, str]]


_PLAIN = (
    "id",
    "vendor_id",
    "price_file_id",
    "grade",
    "coated_sides",
    "currency",
    "basis",
    "grammage_from",
    "lead_low",
    "lead_high",
    "valid_until",
    "valid_at_latest",
    "received",
    "delivered",
    "board_key",
    "product",
    "sheet",
    "cell",
    "price_units",
    "price_scale",
)
_MEASURES = (
    "caliper_um",
    "grammage_gsm",
    "sheet_width_mm",
    "sheet_length_mm",
    "from_kg",
    "below_kg",
    "minimum_kg",
)


_CHARGES = ("offer_id", "price_units", "price_scale", "currency", "basis", "freight")


def load(connection: Connection) -> OfferColumns:
    """Every offer of every file that was not withdrawn."""
    names = (*_PLAIN, *_MEASURES)
    offers = (
        select(*(offer.c[name] for name in _PLAIN), *_raw(offer, _MEASURES))
        .join(price_file, price_file.c.id == offer.c.price_file_id)
        .where(price_file.c.withdrawn_at.is_(None))
        .order_by(offer.c.id)
    )
    charges = select(*(charge.c[name] for name in _CHARGES)).order_by(charge.c.id)
    files = connection.execute(select(price_file.c.id, price_file.c.name, price_file.c.sha256))
    return OfferColumns(
        _columns(names, connection.execute(offers).all()),
        _columns(_CHARGES, connection.execute(charges).all()),
        {row.id: row.name for row in connection.execute(select(vendor.c.id, vendor.c.name))},
        {row.id: (row.name, row.sha256) for row in files},
    )


def _raw(table: Table, names: Sequence[str]) -> list[ColumnElement[int]]:
    return [type_coerce(table.c[name], BigInteger).label(name) for name in names]


def _columns(names: Sequence[str], rows: Sequence[Row[Any]]) -> dict[str, Column]:
    return dict(zip(names, zip(*rows, strict=True) if rows else [()] * len(names), strict=True))
