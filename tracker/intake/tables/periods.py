"""Heads that are a time: a month, a quarter, a year, a date. Prices under several of them are a history."""

import re
from functools import lru_cache

from tracker.intake.values.dates import date_readings
from tracker.intake.words.lists import phrases

YEAR = re.compile(r"(?<!\d)(?:19|20)\d\d(?!\d)")
_NUMBERED = re.compile(
    r"(?:[QqHhTt]\.?\s?[1-4]|KW\s?\d{1,2}|(?:19|20)\d\d)(?:[\s/'’.-]*(?:(?:19|20)?\d\d|[QqHhTt]\.?\s?[1-4]))?"
)
_LEFT_OVER = " .,'’/0123456789-"


@lru_cache(maxsize=4096)
def is_period(text: str) -> bool:
    """'January', 'Q2 2026', '2025', 'Mai 26', '01.07.2026': a time and nothing else."""
    text = text.strip()
    if date_readings(text) or _NUMBERED.fullmatch(text):
        return True
    rest = text
    for match in reversed(phrases("months").find(text)):
        rest = rest[: match.start] + rest[match.end :]
    return rest != text and not rest.strip(_LEFT_OVER)


_QUARTERS = re.compile(r"\b(?:[QqHh]\.?\s?[1-4]|(?:19|20)\d\d)\b")


def without_periods(text: str) -> str:
    """A text without the months, quarters and years in it: 'Q2 2026 price' -> 'price'."""
    for match in reversed(phrases("months").find(text)):
        text = text[: match.start] + text[match.end :]
    return _QUARTERS.sub(" ", text)
