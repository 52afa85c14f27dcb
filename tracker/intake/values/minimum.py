"""The smallest order a vendor takes: 'Minimum order 10,000 lb per item', 'MOQ 2 t', 'Mindestmenge 5 t'."""

import re
from functools import lru_cache

from tracker.intake.values.clauses import clauses
from tracker.intake.values.grade import find_grade
from tracker.intake.values.masses import Mass, find_masses
from tracker.intake.words.lists import phrases

_SLASH = re.compile(r"\s*/\s*([^\W\d]+)")


def _without_per_item(clause: str) -> str:
    """'3 t/item' and '2 t/Sorte' are weights of each order; '75 lb/MSF' is none."""
    return _SLASH.sub(lambda per: " " if phrases("minimum_per").whole(per[1]) else per[0], clause)


@lru_cache(maxsize=8192)
def find_minimum(text: str) -> Mass | None:
    """The one weight behind words for a minimum order, in the same clause.

    None where there is none, two that differ, or one for each of several boards.
    """
    found = {}
    for clause in clauses(text):
        words = phrases("minimum").find(clause)
        if not words:
            continue
        behind = find_masses(_without_per_item(clause[words[0].start :]))
        if len(behind) > 1 and find_grade(clause) is not None:
            # 'Min order 20,000 lb SBS, 10,000 lb CRB' is one a board.
            return None
        if behind:
            found[(behind[0].amounts, behind[0].units)] = behind[0]
    return next(iter(found.values())) if len(found) == 1 else None
