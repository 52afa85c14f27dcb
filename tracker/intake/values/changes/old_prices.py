"""Sentences about the prices that these ones follow: 'Der bisherige Preis gilt nur noch bis 31.12.2026'."""

import re
from functools import lru_cache

from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of


@lru_cache(maxsize=4096)
def of_old_prices(clause: str) -> bool:
    """Whether a clause is about earlier prices alone: a word for earlier right before or behind its first one for
    prices. 'These prices replace the previous ones' is about these."""
    if phrases("replaces").find(clause) or phrases("these_prices").find(clause):
        return False
    if any(map(_names_them, _QUOTED.findall(clause))):
        # 'The prices in the column "Former price" end on 4 October.'
        return True
    return _names_them(clause)


_QUOTED = re.compile(r"[\"“”„«»‘’]([^\"“”„«»‘’]{4,40})[\"“”„«»‘’]")


def _names_them(clause: str) -> bool:
    said = tokens_of(clause)
    priced = [match for match in phrases("price_words").among(said) if match.value == "any"]
    old = {place for match in phrases("earlier").among(said) for place in range(match.first, match.after)}
    return bool(priced) and (priced[0].first - 1 in old or priced[0].after in old)
