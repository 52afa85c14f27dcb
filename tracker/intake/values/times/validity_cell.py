"""Until when a price holds, as a cell under or beside a word for that says: '31.12.2026', '30 days from 4 May'."""

import re
from functools import lru_cache

from tracker.intake.values.times.dates import DateReading, find_dates
from tracker.intake.values.times.held_for import days_counted
from tracker.intake.values.times.open_validity import within
from tracker.intake.values.times.validity import Validity, validity
from tracker.intake.words.lists import phrases


@lru_cache(maxsize=8192)
def validity_text(text: str) -> Validity | None:
    """A cell under or beside a header that speaks of validity: a date, or so many days. Anything else is unread."""
    stripped = text.strip()
    if not stripped:
        return None
    dates = find_dates(_parted(stripped))
    said = validity(stripped)
    if said is not None and not said.unread:
        return said
    if len(dates) == 1:
        return _of_one_day(_parted(stripped), dates[0])
    if len(dates) == 2 and dates[0].readings[-1] <= dates[1].readings[-1]:
        return Validity(stripped, until=dates[1])
    days = days_counted(stripped)
    if days is not None and not dates:
        return Validity(stripped, days=days)
    return Validity(stripped, unread=True)


def _of_one_day(text: str, date: DateReading) -> Validity:
    """A lone day is the last one, but for 'from 1 December 2026', with which no price ends, and for the one from which
    '30 days from 20 November 2026' counts."""
    before = text[: date.start]
    counted = days_counted(before)
    if counted is not None:
        return Validity(text, days=counted, base=date)
    begins = phrases("since").find(before)
    ends = any(not within(match, begins) for match in phrases("until").find(before))
    return Validity(text, unread=True) if begins and not ends else Validity(text, until=date)


_BASIC = re.compile(r"(20\d\d)(0[1-9]|1[0-2])(0[1-9]|[12]\d|3[01])")


def _parted(text: str) -> str:
    """'20270331', a day as ISO 8601 writes it without hyphens, with them."""
    return _BASIC.sub(r"\1-\2-\3", text) if _BASIC.fullmatch(text) else text
