"""A slip of currency held against the sign the sheet itself shows: what is written 'kr' was never meant in dollars."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from tracker.desk.judged import Judged
from tracker.desk.snapshot import Snapshot
from tracker.market.slips import SlipKind

if TYPE_CHECKING:
    from tracker.desk.opening import Desk


def without_impossible_slips(desk: Desk, snapshot: Snapshot, judged: Judged) -> Judged:
    """Takes back every slip of currency that the sheet's own sign rules out; the price stays out of line.

    A sign that several currencies share ('$', 'kr') allows only those; a code ('SEK') may be the slip itself. One look
    at the store for each file and currency: a sheet writes its money one way.
    """
    slips = judged.verdicts.slips
    asked = [offer for offer, slip in slips.items() if slip.kind is SlipKind.CURRENCY]
    shared: dict[tuple[int, int], frozenset[str]] = {}
    ruled_out = []
    for offer in asked:
        place = int(snapshot.file[offer]), int(snapshot.currency[offer])
        if place not in shared:
            shared[place] = _sharing_the_sign(desk, int(snapshot.id[offer]))
        if shared[place] and slips[offer].likely_currency not in shared[place]:
            ruled_out.append(offer)
    if not ruled_out:
        return judged
    flags = judged.verdicts.slip.copy()
    flags[ruled_out] = False
    left = {offer: slip for offer, slip in slips.items() if offer not in set(ruled_out)}
    return replace(judged, verdicts=replace(judged.verdicts, slip=flags, slips=left))


def _sharing_the_sign(desk: Desk, offer_id: int) -> frozenset[str]:
    """The currencies that share the sign an offer's price is written with; none where the sheet says one plainly."""
    from tracker.intake.values.prices.currency import find_currencies
    from tracker.store import files, offers

    with desk.store.reading() as connection:
        stored = offers.get(connection, offer_id)
        pieces = files.evidence(connection, stored.file_id, stored.position)
    said = [reading for piece in pieces if piece.field == "currency" for reading in find_currencies(piece.words)]
    if not said or any(reading.code is not None for reading in said):
        return frozenset()
    return frozenset(code for reading in said for code in reading.codes)
