"""Headings over prices that nobody offers: 'Traded last week (not offers)', 'Abschlüsse der Vorwoche'."""

import re
from functools import lru_cache

from tracker.intake.values.changes.shown_besides import shown_only
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import blanked, without

_LONGEST = 90


@lru_cache(maxsize=4096)
def deals_done(text: str) -> bool:
    """Whether a title says first that what stands below it was traded by others already."""
    found = [match for match in phrases("no_offers").find(text) if match.value == "deals" and len(text) <= _LONGEST]
    return bool(found) and not any(map(str.isalnum, text[: found[0].start]))


@lru_cache(maxsize=4096)
def kept_inside(text: str) -> bool:
    """Whether a title says that what stands below it is for the vendor's own people: 'Internal, not for customers'."""
    return len(text) <= _LONGEST and bool(phrases("kept_inside").find(text))


@lru_cache(maxsize=4096)
def names_costs(text: str) -> bool:
    """Whether a title or a sheet's name says that its figures are what somebody pays himself: 'Our purchase prices'."""
    found = phrases("own_costs")
    return len(text) <= _LONGEST and (
        found.whole(text.strip()) is not None or any(one.value == "any" for one in found.find(text))
    )


@lru_cache(maxsize=4096)
def shows_how_to_read(text: str) -> bool:
    """Whether a title says that what stands below it is an example: 'Worked example', 'How to read this book - an
    example, not an offer'. A list 'with worked examples' is one all the same, and 'Worked example: see page 3' and one
    that is all told in its own text say nothing of what stands below."""
    kinds = {match.value for match in phrases("examples").find(text)}
    if len(text) > _LONGEST or _ELSEWHERE in kinds or sum(map(str.isdigit, text)) > _FEW_FIGURES:
        return False
    if phrases("all_of_them").find(text.partition(":")[2]):
        # 'Sample calculation: 4 % is added to all prices' is about the list.
        return False
    first = _first_of_examples(text)
    told = bool(kinds - {_READS})
    denied = any(match.value == "denied" for match in phrases("no_offers").find(text))
    return first in (_WORKED, _EXPLAINED) or (first == _READS and (told or denied))


def may_be_all_example(text: str) -> bool:
    """Whether a title leaves it open whether a file's only prices are an example, as 'How we calculate' does not."""
    denied = any(match.value == "denied" for match in phrases("no_offers").find(text))
    shown = shows_how_to_read(text) and (denied or _first_of_examples(text) == _WORKED)
    return shown or called_an_example(text)


@lru_cache(maxsize=4096)
def called_an_example(text: str) -> bool:
    """Whether a title says so by itself or set apart: 'How to get to a price per MSF (example, invented figures)', 'For
    illustration only', 'Example: prices of SBS'. 'Example: 18 pt at $1,190' goes on to tell it, and 'prices, e.g. for
    cartons' is of others."""
    text = _HYPHEN.sub(" – ", text)
    parts = [(match.start(), match.group().strip(" .*")) for match in _PARTS.finditer(text) if match.group().strip()]
    for place, (start, part) in enumerate(parts):
        kind = _kind_of_part(part)
        # 'Sample calculation: 4 % is added' tells one.
        heads = kind != _WORKED and _heads_a_title(text[start + len(part) :])
        told = place == 0 and len(parts) > 1 and not heads
        if not told and "." not in part and kind in _SET_APART:
            return len(text) <= _LONGEST_TOLD and sum(map(str.isdigit, text[start:])) <= _FEW_FIGURES
    return False


def _heads_a_title(behind: str) -> bool:
    """The colon of 'Example: prices of SBS', behind which no price is told."""
    return behind.lstrip().startswith(":") and sum(map(str.isdigit, behind)) <= _FEW_FIGURES


def _kind_of_part(part: str) -> str | None:
    """The kind of words for an example that a part is, with an 'only' or the prices that are shown for it at the most:
    'Nur zur Illustration', 'Indicative prices for illustration only'. An 'Illustration board' is one to draw on."""
    found = phrases("examples").find(part)
    if len(found) != 1 or found[0].value == _ELSEWHERE:
        return phrases("examples").whole(part)
    beside = [*_ONLY, *_PRICES] if found[0].value == _SHOWN else _ONLY
    told = blanked(part, [found[0].span, *(one.span for one in joined(*beside).find(part))])
    return None if any(map(str.isalnum, told)) else found[0].value


_ONLY = ("only_these", "no_other_boards")
_PRICES = ("price_words", "indicative", "list_names", "price_lists", "copula", "articles", "stays_there")
_HYPHEN = re.compile(r"\s-\s")


@lru_cache(maxsize=4096)
def surely_an_example(text: str) -> bool:
    """Whether a title says twice that it is an example, that its figures are made up, or that it is no offer: 'Example
    (invented figures)'."""
    denied = any(match.value == "denied" for match in phrases("no_offers").find(text))
    made_up = any(match.value == "made_up" for match in phrases("not_quoted").find(text))
    called = called_an_example(text) or _first_of_examples(text) in _SET_APART
    return len(text) <= _LONGEST_TOLD and (called + denied + made_up) > 1


_LONGEST_TOLD = 140
_PARTS = re.compile(r"[^()\[\],:;–—|]+")


@lru_cache(maxsize=1024)
def explains_the_list(name: str) -> bool:
    """Whether a sheet's name says that it shows how the list is read."""
    return _first_of_examples(name) in (_WORKED, _EXPLAINED, _READS)


@lru_cache(maxsize=4096)
def may_be_an_example(text: str) -> bool:
    """'Example: SBS C1S 18 pt', 'Beispiel': a row or what heads some."""
    if _first_of_examples(text) is None:
        return False
    behind = text[phrases("examples").find(text)[0].end :].lstrip(" .")
    return not behind or behind.startswith(":")


_WORKED, _EXPLAINED, _READS, _ELSEWHERE = "worked", "explained", "reads", "elsewhere"
_SHOWN = "shown"
_SET_APART = (_WORKED, _SHOWN, "example")
_FEW_FIGURES = 2
"""Those of 'Worked example 12'."""


def _first_of_examples(text: str) -> str | None:
    """What kind of words for examples a text begins with, behind an article at the most."""
    found = phrases("examples").find(text)
    before = text[: found[0].start].strip(" *-–:(") if found else ""
    leads = bool(found) and (not before or phrases("articles").whole(before) is not None)
    return found[0].value if leads else None


@lru_cache(maxsize=4096)
def offers_nothing(text: str) -> bool:
    """Whether a sub-heading says so, or that what stands below it is no offer.

    'This price list is not an offer' is what lawyers say of any list, and what is indicative is told.
    """
    denied_and_why = len(shown_only(text)) > 1
    return denied_and_why or deals_done(text) or shows_how_to_read(text) or denies_offers(text)


@lru_cache(maxsize=4096)
def denies_offers(text: str) -> bool:
    """Whether a text says that what stands below it is no offer."""
    denied = any(match.value == "denied" for match in phrases("no_offers").find(text))
    others = ("price_lists", "list_names", "these_prices", "indicative")
    elsewhere = any(phrases(section).find(_without_denial(text)) for section in others)
    return denied and len(text) <= _LONGEST and not elsewhere


def _without_denial(text: str) -> str:
    """The text without the words for offers that are denied."""
    return without(text, phrases("no_offers").find(text))
