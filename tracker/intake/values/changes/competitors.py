"""Sentences about others who sell board: 'A competitor advertises GC2 at 1,199 euros, ex works' says nothing of the
prices of the list that it stands in, neither of their currency nor of freight or times."""

import re
from functools import lru_cache

from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.words.lists import phrases

_AHEAD, _OURS = "ahead", "ours"
"""Keys of the word list: words before the name of such others, and for the vendor himself."""
_LIKELY = "any"
_FEWEST = 5
"""Words of a sentence; what has less is a title or a label."""


@lru_cache(maxsize=8192)
def without_competitors(text: str) -> str:
    """A text without what it says of competitors, of other mills and of the market; '' where it says no more.

    From the part between commas whose subject they are a clause is about them, up to one about the vendor himself: 'The
    competition sells ex works, we deliver free' leaves 'we deliver free'. 'Unlike our competitors we deliver free' is
    about himself.
    """
    if not any(match.value == _LIKELY for match in phrases("competitors").find(text)):
        return text
    told = clauses(text)
    left = [_own_parts(clause) if len(clause.split()) >= _FEWEST else clause for clause in told]
    return text if left == told else ". ".join(filter(None, left))


def _own_parts(clause: str) -> str:
    kept: list[str] = []
    theirs = False
    for part in COMMA.split(clause):
        begins = _begins_with(part)
        theirs = begins == _LIKELY or (theirs and begins != _OURS)
        kept += [] if theirs else [part]
    return ",".join(kept).strip(" ,")


def _begins_with(part: str) -> str | None:
    """Whom the part is about by its first words, behind articles and the like."""
    ends = 0
    for match in phrases("competitors").find(part):
        if _WORD.search(part[ends : match.start]) is not None:
            return None
        if match.value != _AHEAD:
            # 'Am Markt 12' is where somebody lives.
            return None if part[match.end :].lstrip()[:1].isdigit() else match.value
        ends = match.end
    return None


_WORD = re.compile(r"[^\W_]")
