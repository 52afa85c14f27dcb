"""What people decided about a board: approved for a use, or rejected and why."""

from __future__ import annotations

from typing import TYPE_CHECKING

from tracker.desk.edits import Edit, writing
from tracker.desk.trouble import Trouble

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.verdicts import BoardVerdict as BoardVerdict


def approve(desk: Desk, vendor: str, product: str, for_what: str, sample: int | None = None) -> Edit:
    """Approves a vendor's board for a use; `sample` is the number of the sample it rests on."""
    from tracker.store import verdicts as kept

    text = f"approved {product} of {vendor} for {for_what}"
    with writing(desk, text) as pen:
        change = kept.add(pen, vendor, product, True, for_what, "", desk.today, sample)
    return Edit(text, (change,))


def reject(desk: Desk, vendor: str, product: str, because: str, sample: int | None = None) -> Edit:
    """Rejects a vendor's board. Trouble without a reason: the vendor will ask for one."""
    from tracker.store import verdicts as kept

    if not because.strip():
        raise Trouble("Say why the board is rejected: the vendor will ask.")
    text = f"rejected {product} of {vendor}: {because}"
    with writing(desk, text) as pen:
        change = kept.add(pen, vendor, product, False, "", because, desk.today, sample)
    return Edit(text, (change,))


def verdicts(desk: Desk) -> tuple[BoardVerdict, ...]:
    """Every decision, the latest first."""
    from tracker.store import verdicts as kept

    with desk.store.reading() as connection:
        return kept.listing(connection)
