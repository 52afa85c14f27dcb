"""Rows ticked below a currency: the 'X' in a column 'US$' beside prices in another money."""

import re
from functools import lru_cache

from tracker.intake.values.prices.currency import currency_text, find_currencies
from tracker.intake.words.lists import phrases

_TICK = re.compile(r"\s*(?:[xX×✓✔☑●•]|\(\s?[xX]\s?\))\s*")


@lru_cache(maxsize=1024)
def money_ticked(head: str, text: str) -> str | None:
    """The currency that a head is, where a cell below it says no more than yes; None for any other.

    A head of one letter may be a key's.
    """
    named = head.strip() if currency_text(head) is not None and find_currencies(head) else None
    return named if named is not None and says_yes(text) else None


def says_yes(text: str) -> bool:
    """Whether a cell is a tick, or answers so."""
    return _TICK.fullmatch(text) is not None or phrases("answers").whole(text) == "yes"
