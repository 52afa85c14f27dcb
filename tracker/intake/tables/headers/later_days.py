"""Texts that say from when on something holds: 'Energy surcharge from January 2027' is not charged before."""

from datetime import date
from functools import lru_cache

from tracker.intake.tables.headers.periods import YEAR, begins_with_a_time, span_of
from tracker.intake.values.times.dates import DateOrder, find_dates, ordered
from tracker.intake.words.lists import joined, phrases


@lru_cache(maxsize=4096)
def begins_later(text: str, made: date | None, order: DateOrder | None = None) -> bool:
    """Whether a text says from when on, and that is not for certain the day of the list or before it. What has been
    charged since some day, 'seit Januar 2026', is charged already where the list's day does not deny it."""
    for match in joined("since", "since_months").find(text):
        behind = text[match.end :]
        looks_back = any(said.start == match.start for said in phrases("since_then").find(text))
        if looks_back and (made is None or not YEAR.search(behind)):
            return False
        day = next(iter(find_dates(behind)), None)
        if day is not None and not any(map(str.isalnum, behind[: day.start])):
            return made is None or not all(begins <= made for begins in ordered(day, order) or day.readings)
        if not begins_with_a_time(behind):
            continue
        span = span_of(behind, made.year) if made is not None else None
        return span is None or not YEAR.search(behind) or not (made is not None and span[0] <= made)
    return False
