"""Layouts that were marked by hand for a vendor's sheets."""

from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Any

from sqlalchemy import Connection, RowMapping, select

from tracker.store import vendors
from tracker.store.changes import Pen
from tracker.store.tables import layout, vendor
from tracker.trade.layout import Layout, layout_from_plain, layout_to_plain


@dataclass(frozen=True, slots=True)
class KeptLayout:
    """One remembered layout. `name` says which sheets it is for, in the words of their header row."""

    id: int
    vendor: str
    name: str
    layout: Layout
    made_at: datetime
    made_by: str


def of_vendor(connection: Connection, name: str) -> tuple[Layout, ...]:
    """A vendor's layouts, the latest first."""
    return tuple(kept.layout for kept in listing(connection, name))


def listing(connection: Connection, name: str | None = None) -> tuple[KeptLayout, ...]:
    """Layouts of one vendor, or of all; by vendor, the latest first."""
    query = select(layout, vendor.c.name.label("whose")).join(vendor).order_by(vendor.c.folded, layout.c.id.desc())
    if name is not None:
        query = query.where(layout.c.vendor_id == (vendors.find(connection, name) or -1))
    return tuple(_kept(row) for row in connection.execute(query).mappings())


def remember(pen: Pen, vendor_name: str, marked: Layout) -> int:
    """Keeps a layout for a vendor in the place of one for the same header row; gives the log's entry."""
    vendor_id = vendors.id_of(pen, vendor_name)
    values = {"marked": layout_to_plain(marked), "made_at": datetime.now(UTC), "made_by": pen.who}
    name = _name(marked)
    there = select(layout.c.id).where(layout.c.vendor_id == vendor_id, layout.c.name == name)
    earlier = pen.connection.execute(there).scalar()
    if earlier is not None:
        return pen.update(layout, earlier, values)
    return pen.insert(layout, {"vendor_id": vendor_id, "name": name, **values})[1]


def _name(marked: Layout) -> str:
    return " · ".join(" ".join(text.split()) for _, text in marked.heads)


def _kept(row: RowMapping) -> KeptLayout:
    marked: dict[str, Any] = row["marked"]
    return KeptLayout(row["id"], row["whose"], row["name"], layout_from_plain(marked), row["made_at"], row["made_by"])
