"""Shares that a text says come off a list's prices: the 5 of 'Net prices are list less 5 %'."""

import re
from decimal import Decimal
from functools import lru_cache

from tracker.intake.values.changes.discounts import names_discount
from tracker.intake.values.figures.numbers import percent
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.words.lists import phrases

_SHARE = re.compile(r"\d+(?:[.,]\d+)?\s*(?:%|[^\W\d_]+(?: [^\W\d_]+)?)")


@lru_cache(maxsize=4096)
def shares_off(text: str) -> tuple[Decimal, ...]:
    """In per cent; whether a price bears one is for its figures to tell."""
    parts = (part for clause in clauses(text) for part in COMMA.split(clause) if _takes_off(part))
    return tuple(reading.value for part in parts for match in _SHARE.finditer(part) for reading in percent(match[0]))


def _takes_off(part: str) -> bool:
    return names_discount(part) or bool(phrases("to_be_deducted").find(part))
