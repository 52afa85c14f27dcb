"""Notes that correct a list or call its lines off by their numbers: 'Line 7: read 1,052', 'Item 4 is withdrawn'."""

import re
from functools import lru_cache

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.changes.withdrawn import withdrawn
from tracker.intake.values.notes.lines_counted import LinesNamed, every_line_named
from tracker.intake.words.lists import phrases, words

_FIGURE_NEXT = re.compile(r"\s*[:=]?\s*(?:[A-Z]{2,3}\s?)?[$€£]?\s?\d")


@lru_cache(maxsize=8192)
def lines_corrected(text: str) -> LinesNamed | None:
    """The lines of which a text says that something is wrong as it is printed, or that they are offered no more; None
    for all other texts. What it is that is wrong need not be understood."""
    if not phrases("line_numbers").find(text):
        return None
    named = every_line_named(text)
    return named if named is not None and corrects(_without_articles(named.rest)) else None


def _without_articles(said: str) -> str:
    """The Spanish 'las' says nothing, and is no Swedish 'läs'."""
    return " ".join(word for word in said.split() if word.casefold() not in words("articles")["any"])


def corrects(said: str) -> bool:
    """Whether words beside a line's number or code say that it is wrong as it is printed, or no offer any more."""
    if withdrawn(said) or any(phrases(section).find(said) for section in ("corrections", "line_corrections")):
        return True
    return _one_for_another(said)


@lru_cache(maxsize=1024)
def heads_corrections(text: str) -> bool:
    """'Corrections of May 6:', 'Errata', over lines that say what is right."""
    found = next(iter(phrases("line_corrections").find(text)), None)
    begins = found is not None and found.first == 0
    short = len(text.split()) <= _LONGEST_HEAD
    return begins and short and every_line_named(text) is None


_LONGEST_HEAD = 6


def _one_for_another(said: str) -> bool:
    """'Weight is 67, not 76', '1,052 instead of 1,125', 'C1S, not C2S'; 'not below 230 g/m²' and 'not coated' are no
    such thing."""
    for match in phrases("instead_of").find(said):
        before, behind = said[: match.start], said[match.end :]
        figures = any(map(str.isdigit, before)) and _FIGURE_NEXT.match(behind) is not None
        if figures or not (find_grade(before) is None or find_grade(behind) is None):
            return True
    return False
