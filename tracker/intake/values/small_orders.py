"""Notes that make small orders dearer than the list: 'Orders under 10,000 lb: add $80/ton', 'below 5 t +3 %'."""

import re
from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.clauses import clauses
from tracker.intake.words.lists import phrases

_AMOUNT = re.compile(r"\d")
_PLUS = re.compile(r"\+\s*[^\W\d]{0,3}[$€£]?\s*\d")


@dataclass(frozen=True, slots=True)
class DearerIfSmall:
    """Orders below some size cost more than these prices; how much is the vendor's to say for an order at hand."""

    words: str


@lru_cache(maxsize=8192)
def dearer_if_small(text: str) -> DearerIfSmall | None:
    """What a note says of small orders, or of less than a truckload; None where it says nothing of them.

    An amount or rate must stand in the clause: 'small orders on request' names no price at all.
    """
    for clause in clauses(text):
        small = phrases("small_orders").find(clause)
        if small and _AMOUNT.search(clause) and (any(match.value == "charged" for match in small) or _adds(clause)):
            return DearerIfSmall(clause.strip())
    return None


def _adds(clause: str) -> bool:
    return bool(phrases("additions").find(clause) or phrases("surcharge_words").find(clause) or _PLUS.search(clause))
