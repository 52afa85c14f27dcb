"""The vendors that were ever asked or quoted."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from tracker.desk.opening import Desk


def vendors(desk: Desk) -> tuple[str, ...]:
    """Names in the order of the alphabet, whatever their capitals."""
    from tracker.store import vendors as kept

    with desk.store.reading() as connection:
        return tuple(sorted(kept.names(connection).values(), key=str.casefold))
