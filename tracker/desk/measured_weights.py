"""The basis weight that samples measured in the place of the claimed one: prices brought to it.

A board heavier than claimed costs more per area when it is bought by weight.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from decimal import Decimal
from typing import TYPE_CHECKING

import numpy as np

from tracker.desk.footing_columns import Measures, footing_columns
from tracker.desk.sample_boards import boards_of, folded
from tracker.desk.snapshot import Floats, Snapshot
from tracker.trade.claims import FEWEST
from tracker.trade.readings import Spread, spread_of

if TYPE_CHECKING:
    from sqlalchemy import Connection

    from tracker.desk.opening import Desk
    from tracker.desk.sample_boards import BoardFound
    from tracker.store.samples import Request

_GRAMMAGE = "grammage"


@dataclass(frozen=True, slots=True)
class MeasuredWeight:
    """What the samples of one board weigh, g/m². claimed: the vendor's word, None where only an estimate stands.

    samples: their numbers. offers: database ids of the vendor's offers of this board.
    """

    vendor: str
    board: str
    caliper_um: Decimal | None
    claimed: Decimal | None
    spread: Spread
    samples: tuple[int, ...]
    offers: tuple[int, ...]

    @property
    def gsm(self) -> float:
        return self.spread.mean


def measured_weights(desk: Desk) -> tuple[MeasuredWeight, ...]:
    """Every board of which samples were weighed often enough (five readings) and whose offers are known."""
    from tracker.store import measurements, samples

    with desk.store.reading() as connection:
        taken: dict[int, list[float]] = {}
        for reading in measurements.readings_of_property(connection, _GRAMMAGE):
            taken.setdefault(reading.sample, []).append(float(reading.value))
        if not taken:
            return ()
        requests = [request for request in samples.listing(connection) if request.number in taken]
        boards = _by_board(connection, requests)
    weights = (_weight(members, found, taken) for members, found in boards)
    return tuple(weight for weight in weights if weight.spread.n >= FEWEST)


def at_measured_weight(snapshot: Snapshot, weights: Iterable[MeasuredWeight]) -> Snapshot:
    """The snapshot with every price brought to the measured weight where there is one; the rest stays as claimed."""
    grammage, measured = snapshot.grammage_gsm.copy(), np.zeros(len(snapshot), np.bool_)
    for weight in weights:
        of = np.isin(snapshot.id, weight.offers)
        grammage[of] = weight.gsm
        measured |= of
    if not measured.any():
        return snapshot
    at_weight = reweighed(snapshot, grammage)
    return replace(at_weight, estimated=snapshot.estimated & ~measured, measured=measured)


def reweighed(snapshot: Snapshot, grammage_gsm: Floats) -> Snapshot:
    """The snapshot as if its boards weighed this: every price on both bases anew, charges by their own."""
    assert snapshot.charges is not None
    prices = footing_columns(
        snapshot.price,
        snapshot.basis,
        snapshot.delivered,
        Measures(grammage_gsm, snapshot.sheet_m2),
        snapshot.charges,
        snapshot.bases,
    )
    return replace(
        snapshot,
        grammage_gsm=grammage_gsm,
        per_tonne=prices.per_tonne,
        per_msf=prices.per_msf,
        delivered_per_tonne=prices.delivered_per_tonne,
        delivered_per_msf=prices.delivered_per_msf,
    )


def _by_board(connection: Connection, requests: Iterable[Request]) -> list[tuple[list[Request], BoardFound]]:
    """Samples of the same board together; those of which nobody can tell the board are left out."""
    together: dict[tuple[str, str, Decimal | None], tuple[list[Request], BoardFound]] = {}
    board_of = boards_of(connection)
    for request in requests:
        found = board_of(request)
        if found.offers:
            first = found.offers[0]
            key = (request.vendor, folded(first.product), first.caliper_um)
            together.setdefault(key, ([], found))[0].append(request)
    return list(together.values())


def _weight(members: list[Request], found: BoardFound, taken: dict[int, list[float]]) -> MeasuredWeight:
    first = found.offers[0]
    return MeasuredWeight(
        vendor=members[0].vendor,
        board=first.product,
        caliper_um=first.caliper_um,
        claimed=next((offer.grammage_gsm for offer in found.offers if offer.grammage_gsm), None),
        spread=spread_of([value for request in members for value in taken[request.number]]),
        samples=tuple(request.number for request in members),
        offers=tuple(offer.offer for offer in found.offers),
    )
