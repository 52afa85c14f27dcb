"""Charges that only orders below some weight bear: 'Freight 48 EUR/t, on orders under 5 t only'."""

from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.charge_names import ChargeKind
from tracker.intake.values.charges import ChargeWords, find_charges
from tracker.intake.values.clauses import clauses
from tracker.intake.values.grade import find_grade
from tracker.intake.values.masses import Mass
from tracker.intake.values.small_orders import size_of_small
from tracker.intake.words.lists import phrases


@dataclass(frozen=True, slots=True)
class SmallOrderCharge:
    """Orders of less than `below` are charged this, and no others. `words`: the clause that says so."""

    charge: ChargeWords
    below: Mass
    words: str


@lru_cache(maxsize=4096)
def small_order_charges(text: str) -> tuple[SmallOrderCharge, ...]:
    """The charges that a note gives small orders by name, and what they come to."""
    if not phrases("charges").find(text):
        return ()
    return tuple(one for clause in clauses(text) if (one := _in_clause(clause)) is not None)


def _in_clause(clause: str) -> SmallOrderCharge | None:
    size = size_of_small(clause)
    if size is None or find_grade(clause) is not None:
        return None
    ahead, behind = clause[: size.start], clause[size.end :].lstrip(" :,")
    for match in reversed(phrases("about_lines").find(ahead)):
        # Without the 'on' of 'freight 48 EUR/t on orders under 5 t'.
        ahead = ahead[: match.start] if not ahead[match.end :].strip() else ahead
    told = find_charges(ahead.rstrip(" ,(")) or find_charges(behind)
    # What is called no more than a surcharge may be one for the small order, which is told beside the price.
    known = len(told) == 1 and bool(told[0].amounts) and told[0].kind is not ChargeKind.OTHER
    return SmallOrderCharge(told[0], size.below, clause) if known else None
