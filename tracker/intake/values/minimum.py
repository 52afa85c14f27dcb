"""The smallest order a vendor takes: 'Minimum order 10,000 lb per item', 'MOQ 2 t', 'Mindestmenge 5 t'."""

from functools import lru_cache

from tracker.intake.values.lead import clauses
from tracker.intake.values.masses import Mass, find_masses
from tracker.intake.words.lists import phrases


@lru_cache(maxsize=8192)
def find_minimum(text: str) -> Mass | None:
    """The one weight behind words for a minimum order, in the same clause.

    None where there is none, or two that differ.
    """
    found = {}
    for clause in clauses(text):
        words = phrases("minimum").find(clause)
        if not words:
            continue
        behind = find_masses(clause[words[0].start :])
        if behind:
            found[(behind[0].amounts, behind[0].units)] = behind[0]
    return next(iter(found.values())) if len(found) == 1 else None
