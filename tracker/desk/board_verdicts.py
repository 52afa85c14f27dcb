"""Decisions on boards beside their prices: which offers are of a board that somebody approved or rejected."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from typing import TYPE_CHECKING, Any

import numpy as np

from tracker.desk.sample_boards import folded, same_caliper
from tracker.desk.snapshot import Snapshot

if TYPE_CHECKING:
    from decimal import Decimal

    from tracker.desk.opening import Desk
    from tracker.store.verdicts import BoardVerdict


def verdicts_by_offer(desk: Desk, snapshot: Snapshot, as_of: date) -> Mapping[int, tuple[BoardVerdict, ...]]:
    """The decisions up to a day on each offer's board, the latest first, by the offer's index; most have none.

    A decision that rests on a sample holds for the caliper that was tried and no other.
    """
    from tracker.store import samples, verdicts

    with desk.store.reading() as connection:
        decided = [verdict for verdict in verdicts.listing(connection) if verdict.on <= as_of]
        tried = {request.number: request.caliper_um for request in samples.listing(connection)} if decided else {}
    found: dict[int, tuple[BoardVerdict, ...]] = {}
    for verdict in decided:
        caliper = None if verdict.sample is None else tried.get(verdict.sample)
        for index in offers_of(snapshot, verdict.vendor, verdict.product, caliper):
            found[index] = (*found.get(index, ()), verdict)
    return found


def offers_of(snapshot: Snapshot, vendor: str, product: str, caliper_um: Decimal | None) -> list[int]:
    """Indices of a vendor's offers of a board, of one caliper or, with none given, of all."""
    if vendor not in snapshot.vendors:
        return []
    of_vendor = np.flatnonzero(snapshot.vendor == snapshot.vendors.index(vendor))
    name = folded(product)
    return [
        int(index)
        for index in of_vendor
        if folded(snapshot.product[index]) == name
        and (caliper_um is None or same_caliper(float(snapshot.caliper_um[index]), caliper_um))
    ]


def verdict_object(verdict: BoardVerdict) -> dict[str, Any]:
    """A decision as JSON."""
    return {
        "approved": verdict.approved,
        "for": verdict.for_what,
        "because": verdict.because,
        "by": verdict.by,
        "on": verdict.on.isoformat(),
        "sample": verdict.sample,
    }
