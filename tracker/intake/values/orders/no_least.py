"""What says that any quantity is sold: 'from stock, no minimum'."""

from functools import lru_cache

from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.words.lists import phrases


@lru_cache(maxsize=4096)
def sold_in_any_quantity(text: str) -> bool:
    """Whether a part of a text between its commas says so and no more; 'no minimum charge' is no order."""
    return any(_says_so(part) for clause in clauses(text) for part in COMMA.split(clause))


def _says_so(part: str) -> bool:
    found = phrases("no_minimum").find(part)
    return bool(found) and not rest_of(part, (match.span for match in found), "order_words", "ordered.any")
