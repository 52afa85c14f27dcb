"""Relative clauses between two commas: 'The offer, which at first ran to 15 December, now stands until …'."""

import re

from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import blanked, tokens_of

_BETWEEN = re.compile(r",(?!\d)([^,;.:]{6,120}?),(?!\d)")
"""What stands between two commas, with no figure parted by one; the second comma may open another such part."""


def is_relative(part: str) -> bool:
    """Whether a part between commas tells more of the noun before it, by the word that it begins with."""
    return phrases("relative_words").at(tokens_of(part.strip()), 0) is not None


def without_relatives(text: str) -> str:
    """A text with blanks for its relative clauses between commas, all else in its place."""
    spans = [found.span() for found in _BETWEEN.finditer(text) if is_relative(found[1])]
    return blanked(text, spans) if spans else text
