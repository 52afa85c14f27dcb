"""The place behind a delivery term: the 'Dijon' of 'la tonne, franco Dijon' and the 'Kassel' of '€/t frei Kassel'."""

import re
from collections.abc import Sequence

from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Token

_NAME = r"[^\W\d_][^\W\d_'’.-]*(?:['’.-][^\W\d_]+)*\.?"
_PLACE = re.compile(
    rf"\s+(?:(?:to|in|into|at|nach|bis|à|jusqu'à|en|a|till|i)\s+)?(?P<name>{_NAME}(?:\s{_NAME}){{0,2}})\s*(?=[,;.)]|$)"
)


def end_of_place(text: str, start: int) -> int:
    """Where the place ends that stands right behind a term, and before a stop or the end; `start` where none does.

    All words of a place begin with a capital: 'delivered USD' and 'franco sur demande' name none.
    """
    match = _PLACE.match(text, start)
    if match is None:
        return start
    name = match["name"]
    capitals = all(word[0].isupper() for word in name.split())
    return match.end("name") if capitals and not find_currencies(name) and not _says_more(name) else start


def ends_a_word_for_places(found: Sequence[Token], place: int) -> bool:
    """The token is the 'to' of 'delivered to', which heads places."""
    named = (match for match in phrases("headers").among(found) if match.value == "destination")
    return any(match.first < place < match.after for match in named)


def _says_more(name: str) -> bool:
    """Words that say something else than a place: 'Delivered Price', 'FOB Origin Freight Collect'."""
    sections = (
        "headers", "basis", "delivery", "incoterms", "charges", "indicative", "no_price", "price_ages", "bracket",
        "forms", "negations", "count_words", "not_places",
    )  # fmt: skip
    return any(phrases(section).find(name) for section in sections)
