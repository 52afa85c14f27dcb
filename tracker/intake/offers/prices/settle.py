"""Currency and basis of a price: every place that may say it is heard, nearest first; contradiction is kept."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import Generic, TypeVar

from tracker.intake.offers.notes.said import evidence_of
from tracker.trade.basis import Basis
from tracker.trade.offer import Evidence

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Claim(Generic[T]):
    """The values that one place allows.

    `excused`: it is about other prices of the sheet, so that it contradicts nothing where it says otherwise.
    `lone_t`: it says 't', the symbol of the tonne, which pounds and inches around it do not make a short ton.
    `of_rows`: it is said of these rows alone, by themselves, a heading among the rows or a note on marked ones.
    `doubted`: it is perhaps not about these prices, so that it overrides nothing, but is not passed over either.
    """

    values: frozenset[T]
    where: str
    words: str
    excused: bool = False
    lone_t: bool = False
    of_rows: bool = False
    doubted: bool = False

    def evidence(self, field: str) -> Evidence:
        """What the window shows beside the field that this settled."""
        return evidence_of(field, self.where, self.words)


@dataclass(frozen=True, slots=True)
class Settled(Generic[T]):
    """What is left: one value is certain, several are open, none was said. `against`: the claim that contradicts."""

    values: frozenset[T]
    by: Claim[T] | None = None
    against: Claim[T] | None = None

    @property
    def value(self) -> T | None:
        """The one certain value; None while open or contradicted."""
        return next(iter(self.values)) if len(self.values) == 1 and self.against is None else None


def settle(claims: Iterable[Sequence[Claim[T]]]) -> Settled[T]:
    """Goes through the claims, nearest level first; each narrows what the nearer ones left open or contradicts them."""
    left: Settled[T] = Settled(frozenset())
    doubted: list[Claim[T]] = []
    for level in claims:
        for claim in level:
            if claim.doubted:
                doubted.append(claim)
                continue
            left = _heard(left, claim)
            if left.against is not None:
                return left
    for claim in doubted:
        left = _heard(left, claim)
    return left


def _heard(left: Settled[T], claim: Claim[T]) -> Settled[T]:
    if not claim.values:
        return left
    if left.by is None:
        return Settled(claim.values, claim)
    both = left.values & claim.values
    if both:
        narrowed = len(both) < len(left.values)
        if narrowed and left.by.lone_t and claim.excused and Basis.TONNE.value not in both:
            # The short ton of another table makes no short ton of 't'.
            return left
        return Settled(both, claim if narrowed else left.by)
    if claim.excused:
        return left
    return replace(left, against=claim)
