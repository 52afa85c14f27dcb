"""Which of a vendor's offered boards a sample is of, and whether an offer is of the same board."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from decimal import Decimal
from functools import cache, partial
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from sqlalchemy import Connection

    from tracker.store.board_claims import OfferedBoard
    from tracker.store.samples import Request

_SAME_CALIPER = Decimal("0.01")
"""Calipers this near are the same one in two units: 18 points are 457.2 µm and are quoted as 457 or 460.
Common practice, no source."""
_NEAR_CALIPER = Decimal("0.025")
"""What is asked for in points may be made in round micrometres: 16 points (406 µm) are a vendor's 400. Boards stand
further apart than this. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class BoardFound:
    """The offers of the one board a sample is of, the latest first; none, and why, where it can't be told.

    choices: the vendor's names of the boards it may be, where several fit.
    """

    offers: tuple[OfferedBoard, ...]
    why_not: str = ""
    choices: tuple[str, ...] = ()


def same_name(one: str, other: str) -> bool:
    """Whatever the capitals and spaces."""
    return folded(one) == folded(other)


def folded(name: str) -> str:
    return " ".join(name.split()).casefold()


def board_of(connection: Connection, request: Request) -> BoardFound:
    """The vendor's offers of the board asked for: by its name where one was said, else the only one that fits."""
    return boards_of(connection)(request)


def boards_of(connection: Connection) -> Callable[[Request], BoardFound]:
    """The same for many requests: what a vendor offers of a grade, thousands of prices perhaps, is looked up once."""
    from tracker.store.board_claims import offered

    looked_up = cache(partial(offered, connection))
    return lambda request: among(looked_up(request.vendor, request.grade), request)


def among(offers: Sequence[OfferedBoard], request: Request) -> BoardFound:
    """The same among a vendor's offers that are at hand."""
    if not offers:
        return BoardFound((), f"{request.vendor} has no {request.grade} in its price sheets, so nothing is claimed.")
    if request.product:
        fitting = [each for each in offers if same_name(each.product, request.product)]
        if not fitting:
            return BoardFound((), f"{request.vendor} offers no board called {request.product}.")
    else:
        fitting = list(offers)
    if request.caliper_um is not None:
        fitting = _nearest(fitting, request.caliper_um)
    names = {folded(each.product): each.product for each in fitting}
    calipers = {each.caliper_um for each in fitting}
    if not fitting:
        return BoardFound((), f"{request.vendor} offers no {request.grade} of this caliper, so nothing is claimed.")
    if len(names) > 1:
        choices = tuple(sorted(name for key, name in names.items() if key))
        shown = _listed(choices, nameless="" in names)
        return BoardFound((), f"Several boards of {request.vendor} fit: {shown}. Name the board.", choices)
    if request.caliper_um is None and len(calipers) > 1:
        return BoardFound((), "No caliper was asked for, and the board is offered in several.")
    return BoardFound(tuple(fitting))


def _nearest(offers: Sequence[OfferedBoard], caliper_um: Decimal) -> list[OfferedBoard]:
    """The offers whose caliper is the same, or else lies nearest and near enough."""
    away = {each.offer: abs(each.caliper_um / caliper_um - 1) for each in offers if each.caliper_um is not None}
    least = min(away.values(), default=Decimal(1))
    limit = _SAME_CALIPER if least <= _SAME_CALIPER else min(least, _NEAR_CALIPER)
    return [each for each in offers if away.get(each.offer, Decimal(1)) <= limit]


def _listed(names: Sequence[str], *, nameless: bool) -> str:
    """The first of these names; that there is also a board which its sheet calls by its grade only."""
    further = [f"{len(names) - 4} more"] if len(names) > 4 else []
    if nameless:
        further.append("one that its sheet gives no name")
    return " and ".join([", ".join(names[:4]), *further])
