"""Headings over prices that nobody offers: 'Traded last week (not offers)', 'Abschlüsse der Vorwoche'."""

from functools import lru_cache

from tracker.intake.words.lists import phrases

_LONGEST = 90


@lru_cache(maxsize=4096)
def deals_done(text: str) -> bool:
    """Whether a title says first that what stands below it was traded by others already."""
    found = [match for match in phrases("no_offers").find(text) if match.value == "deals" and len(text) <= _LONGEST]
    return bool(found) and not any(map(str.isalnum, text[: found[0].start]))


@lru_cache(maxsize=4096)
def offers_nothing(text: str) -> bool:
    """Whether a sub-heading says so, or that what stands below it is no offer.

    'This price list is not an offer' is what lawyers say of any list, and what is indicative is told.
    """
    if deals_done(text):
        return True
    denied = any(match.value == "denied" for match in phrases("no_offers").find(text))
    others = ("price_lists", "list_names", "these_prices", "indicative")
    elsewhere = any(phrases(section).find(_without_denial(text)) for section in others)
    return denied and len(text) <= _LONGEST and not elsewhere


def _without_denial(text: str) -> str:
    """The text without the words for offers that are denied."""
    for match in reversed(phrases("no_offers").find(text)):
        text = f"{text[: match.start]} {text[match.end :]}"
    return text
