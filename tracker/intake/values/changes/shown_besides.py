"""Headings of prices that are shown besides those to be paid: 'For information: prices until September 30, 2026', 'Nur
zum Vergleich: Liste A'."""

import re
from functools import lru_cache

from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import blanked, tokens_of

_LONGEST = 80
_PAST = ("past_periods", "price_ages.old", "index")
_AHEAD = ("only_these", "articles", "stays_there", "copula")
_OF_PRICES = ("price_words", "price_lists", "list_names", "these_prices", "prices_below")
_OF_TIMES = ("months", "quarters", "relative_periods", "until", "end_of", "valid", "price_ages", "periods_told")
_BEFORE_TIMES = ("since", "dated")


@lru_cache(maxsize=4096)
def shown_besides(text: str) -> bool:
    """Whether a text begins so and says no more than which prices they are. 'For information: all prices FOB mill' and
    'For your information: our new prices' head prices like any other."""
    found = phrases("shown_again").find(text) if len(text) <= _LONGEST else []
    if not found or any(map(str.isalnum, _without(text[: found[0].start], *_AHEAD, *_OF_PRICES, *_PAST))):
        return False
    ages = {match.value for match in phrases("price_ages").find(text)}
    # 'Ref. A12' heads a group of boards.
    whole = joined("only_these", *_OF_PRICES, *_OF_TIMES).find(text) or " " in text[found[0].start : found[0].end]
    if "in_force" in ages or phrases("new_prices").find(text) or not whole:
        return False
    days = [(day.start, day.end) for day in find_dates(text)]
    rest = _without(blanked(text, days), "shown_again", *_AHEAD, *_OF_PRICES, *_OF_TIMES, *_BEFORE_TIMES, *_PAST)
    # The 'A' of 'list A', and the 'quarter' of 'prices of the previous quarter'.
    strange = [word for word, _, _ in tokens_of(rest) if word.isalpha() and len(word) > 1]
    return len(strange) <= ("old" in ages)


def shows_the_past(text: str) -> bool:
    """Whether such a heading calls its prices those of a time before, or an index: 'Prices of the previous quarter, for
    comparison'."""
    return shown_besides(text) and bool(joined(*_PAST).find(text))


@lru_cache(maxsize=4096)
def head_shown_besides(head: str) -> bool:
    """Whether the head of a column says so, and beside that no more than price and unit: 'Memo USD/ST', 'Prix EUR/t
    (pour mémoire)'."""
    found = [match.span for match in phrases("shown_again").find(head)]
    return bool(found) and not rest_of(head, found, *_IN_HEADS)


_IN_HEADS = ("only_these", "price_words", "currency", "basis", "per")


@lru_cache(maxsize=4096)
def shown_only(text: str) -> frozenset[str]:
    """What a heading says that is made up of nothing else: that its prices are not offered ('denied'), and that they
    are shown for comparison ('compared'), as 'For comparison only (not offered):' says both. 'Not offered in sheets'
    and 'For comparison (offered as well)' go on."""
    parts = [part.strip() for part in _PARTS.split(text) if part.strip(" .*")] if len(text) <= _LONGEST else []
    plain = [blanked(part, (match.span for match in phrases("only_these").find(part))).strip(" .*") for part in parts]
    told = [phrases("shown_unoffered").whole(part) for part in plain]
    return frozenset(kind for kind in told if kind is not None) if None not in told else frozenset()


_PARTS = re.compile(r"[()\[\],:;–—|]|\s-+\s")


def _without(text: str, *sections: str) -> str:
    return blanked(text, (match.span for match in joined(*sections, "says_nothing_more").find(text)))
