"""Layouts marked by hand: listed, and forgotten when they no longer serve. Storing a file keeps them (take_in.py)."""

from __future__ import annotations

from typing import TYPE_CHECKING

from tracker.desk.edits import Edit, writing
from tracker.desk.trouble import Trouble

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.layouts import KeptLayout as KeptLayout


def layouts(desk: Desk, vendor: str | None = None) -> tuple[KeptLayout, ...]:
    """Layouts kept for a vendor, or for all, by vendor."""
    from tracker.store import layouts as kept

    with desk.store.reading() as connection:
        return kept.listing(connection, vendor)


def forget_layout(desk: Desk, layout_id: int) -> Edit:
    """A layout is no longer used for the vendor's next sheets; what was read by it stays."""
    from tracker.store.tables import layout

    known = next((each for each in layouts(desk) if each.id == layout_id), None)
    if known is None:
        raise Trouble("That layout is forgotten already.")
    text = f"forgot the layout marked for {known.vendor}"
    with writing(desk, text) as pen:
        change = pen.delete(layout, layout_id)
    return Edit(text, (change,))
