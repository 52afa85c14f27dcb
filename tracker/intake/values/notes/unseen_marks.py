"""Sentences on rows that are set apart by a colour or a kind of print, which nobody reads here: 'Green rows are ex
stock, all others 5 weeks', 'Prices in bold are delivered', 'Yellow = made to order'."""

import re
from functools import lru_cache

from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import Found, tokens_of

_LABEL = re.compile(r"\s*(?P<label>[^=:,;.]{2,40}?)\s*(?:[=:]|\s[-–—]\s)")
_FURTHEST = 3
"""Words from 'rows' to 'green': 'rows that are green', 'lignes surlignées en vert'."""


@lru_cache(maxsize=4096)
def of_unseen_marks(sentence: str) -> bool:
    """Whether a sentence tells rows apart so. 'Grey board' is a board, and 'Grey boards' are."""
    marks = joined("colours", "print_styles").find(sentence)
    if not marks or "*" in sentence or boards_named(sentence).some:
        return False
    label = _LABEL.match(sentence)
    labelled = label is not None and any(marks_alone(part) for part in _PARTS.split(label["label"]))
    return labelled or any(_near(sentence, row, mark) for row in phrases("shown_rows").find(sentence) for mark in marks)


_PARTS = re.compile(r"\s*[/,+&]\s*")


def marks_alone(text: str) -> bool:
    """'Green', 'bold print', 'fond vert' alone: nothing but such words."""
    found = joined("colours", "print_styles").find(text)
    return bool(found) and len(tokens_of(text)) <= sum(one.after - one.first for one in found)


def _near(sentence: str, row: Found[str], mark: Found[str]) -> bool:
    between = sentence[min(row.end, mark.end) : max(row.start, mark.start)]
    return not re.search(r"[,;:.]", between) and len(tokens_of(between)) <= _FURTHEST
