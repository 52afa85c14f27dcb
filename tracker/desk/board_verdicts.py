"""Decisions on boards beside their prices: which offers are of a board that somebody approved or rejected."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import date
from typing import TYPE_CHECKING

import numpy as np

from tracker.desk.sample_boards import boards_of, folded
from tracker.desk.snapshot import Snapshot

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.verdicts import BoardVerdict


def verdicts_by_offer(desk: Desk, snapshot: Snapshot, as_of: date) -> Mapping[int, tuple[BoardVerdict, ...]]:
    """The decisions up to a day on each offer's board, the latest first, by the offer's index; most have none.

    A decision that rests on a sample holds for the very board and caliper that was tried and no other.
    """
    from tracker.store import samples, verdicts

    found: dict[int, tuple[BoardVerdict, ...]] = {}
    with desk.store.reading() as connection:
        decided = [verdict for verdict in verdicts.listing(connection) if verdict.on <= as_of]
        requests = {request.number: request for request in samples.listing(connection)} if decided else {}
        board_of = boards_of(connection)
        for verdict in decided:
            if verdict.sample is None:
                offers = _named(snapshot, verdict.vendor, verdict.product)
            else:
                tried = replace(requests[verdict.sample], product=verdict.product)
                offers = _of_ids(snapshot, [offer.offer for offer in board_of(tried).offers])
            for index in offers:
                found[index] = (*found.get(index, ()), verdict)
    return found


def _of_ids(snapshot: Snapshot, ids: Sequence[int]) -> list[int]:
    return [int(index) for index in np.flatnonzero(np.isin(snapshot.id, ids))]


def _named(snapshot: Snapshot, vendor: str, product: str) -> list[int]:
    """A vendor's offers of a board by its name, in all calipers."""
    if vendor not in snapshot.vendors:
        return []
    of_vendor = np.flatnonzero(snapshot.vendor == snapshot.vendors.index(vendor))
    return [int(index) for index in of_vendor if folded(snapshot.product[int(index)]) == folded(product)]
