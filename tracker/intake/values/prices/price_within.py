"""Prices with their currency and unit, wherever in a line or sentence they stand."""

import re
from collections.abc import Iterator
from itertools import combinations

from tracker.intake.values.prices.basis import find_basis
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.prices.money import PriceText, price_text

BREAK = re.compile(
    r"[,;:]\s+|\s+[-–—@=]\s+|\s+(?=[^\w\s])|\s+(?=[A-Z]{3}\b)|\s+(?=[A-Z]{2}\$)|\s+(?:at|à|zu|a|till)\s+|\s+"
)
"""What may stand between a board and its price."""
LONGEST_PRICE = 80
"""Characters of a price with its currency and unit: to try a page in one cell at every break takes seconds."""


def plain_price(text: str) -> PriceText | None:
    """A text that is one price with its currency and nothing else; a full stop may end it."""
    said = price_text(text.strip().rstrip("."))
    return said if said is not None and said.amounts and not said.rest and said.currency is not None else None


def prices_within(text: str, *, unit: bool = True) -> Iterator[tuple[int, int, int, int]]:
    """Where each price that names its currency may begin and end, and where the words around it end and begin.

    `unit`: only those that say as well what they are per.
    """
    at = 0
    for currency in find_currencies(text):
        at = text.find(currency.words, at)
        low, high = max(0, at - LONGEST_PRICE), at + LONGEST_PRICE
        ends = [(0, 0)] if low == 0 else []
        ends += [match.span() for match in BREAK.finditer(text, low, high)]
        ends += [(len(text), len(text))] if high >= len(text) else []
        for before, after in combinations(ends, 2):
            price = text[before[1] : after[0]]
            named = before[1] <= at < after[0] and plain_price(price) is not None
            if named and (not unit or find_basis(price) is not None):
                yield before[0], before[1], after[0], after[1]
        at += len(currency.words)
