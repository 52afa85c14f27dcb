"""Headings over prices that nobody offers: 'Traded last week (not offers)', 'Abschlüsse der Vorwoche'."""

from functools import lru_cache

from tracker.intake.words.lists import phrases

_LONGEST = 90


@lru_cache(maxsize=4096)
def offers_nothing(text: str) -> bool:
    """Whether a heading says that what stands below it was traded by others, or is no offer.

    'This price list is not an offer' is what lawyers say of any list.
    """
    if len(text) > _LONGEST:
        return False
    found = phrases("no_offers").find(text)
    if any(match.value == "deals" and not any(map(str.isalnum, text[: match.start])) for match in found):
        return True
    of_the_list = any(phrases(section).find(text) for section in ("price_lists", "these_prices"))
    return any(match.value == "denied" for match in found) and not of_the_list
