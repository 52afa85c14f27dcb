"""Notes about one column by its letter: 'Column D: USD per short ton' is said of no other."""

import re
from functools import lru_cache

from tracker.intake.words.lists import phrases

_LETTER = re.compile(r"\.?\s*([A-Z])\s*[:=–-]")


@lru_cache(maxsize=4096)
def column_named(text: str) -> int | None:
    """The number, from 0, of the column that a note begins with ('Col. D = …' -> 3); None for all other notes."""
    named = _named(text)
    return None if named is None else named[0]


def behind_column_named(text: str) -> str:
    """What a note says of the column that it begins with; the whole of all other notes."""
    named = _named(text)
    return text if named is None else text[named[1] :].strip()


def _named(text: str) -> tuple[int, int] | None:
    words = [match for match in phrases("column_words").find(text) if match.first == 0]
    letter = _LETTER.match(text[words[0].end :]) if words else None
    return None if letter is None else (ord(letter[1]) - ord("A"), words[0].end + letter.end())
