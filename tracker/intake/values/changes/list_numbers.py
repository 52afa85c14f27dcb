"""Lists told apart on one sheet: 'LIST 11 - VOID, replaced by list 12 below' above 'LIST 12 - valid until 28 May'."""

import re
from functools import lru_cache

from tracker.intake.values.times.dates import find_dates
from tracker.intake.values.times.validity import validity
from tracker.intake.words.lists import phrases

_NUMBER = re.compile(r"\s*(?:n[o°ºr]\.?\s*|#\s*)?(\d+)", re.IGNORECASE)


def is_another_list(text: str, marked: str) -> bool:
    """Whether a title names another list than one marked as old: by its number or date, or as one that holds."""
    if not _names_list(text) or goes_on(text, marked):
        return False
    own, of_marked = _number(text), _number(marked)
    days, of_old = find_dates(text), find_dates(marked)
    held = validity(text)
    told = held is not None and held.until is not None
    in_force = any(match.value == "in_force" for match in phrases("price_ages").find(text))
    dated = bool(days and of_old) and {day.readings for day in days}.isdisjoint(day.readings for day in of_old)
    return told or in_force or dated or bool(own and of_marked)


def goes_on(text: str, marked: str) -> bool:
    """'Price list 11, part 2: sheets' goes on with list 11."""
    number = _number(text)
    return bool(phrases("goes_on").find(text)) or (bool(number) and number == _number(marked))


def _names_list(text: str) -> bool:
    return bool(phrases("price_lists").find(text) or phrases("list_names").find(text))


@lru_cache(maxsize=1024)
def _number(text: str) -> str:
    """The number right behind the first name of a list: the 11 of 'LIST 11 - VOID, replaced by list 12'."""
    named = sorted(
        [*phrases("price_lists").find(text), *phrases("list_names").find(text)], key=lambda match: match.start
    )
    numbered = (_NUMBER.match(text, match.end) for match in named)
    return next((found[1] for found in numbered if found is not None), "")
