"""Titles that say that what stands below is history: 'Price history', 'What this board cost once (history)'."""

import re
from functools import lru_cache

from tracker.intake.words.lists import phrases

_SET_APART = re.compile(r".*?(?:\((?P<aside>[^()]+)\)|\s[-–—]\s*(?P<behind>[^()–—-]+))\s*", re.DOTALL)


@lru_cache(maxsize=8192)
def names_history(text: str) -> bool:
    """Whether a title is called so, or has it in brackets or behind a dash at its end. The 'history' of 'Quality,
    history, service' is a firm's."""
    found = _SET_APART.fullmatch(text)
    said = (text, *found.group("aside", "behind")) if found is not None else (text,)
    return any(phrases("histories").whole(part.strip(" :.*")) is not None for part in said if part)
