"""Notes that correct what a list says: '921 should read 912', and what holds 'whatever is said above'."""

import re
from decimal import Decimal
from functools import lru_cache

from tracker.intake.values.numbers import SPACED_NUMBER, number_readings
from tracker.intake.words.lists import phrases

_FIGURE = re.compile(SPACED_NUMBER)
_BEFORE_MONEY = 4
"""Letters and signs before a figure, or around the words between two: 'EUR 912', '£ '."""


@lru_cache(maxsize=8192)
def misprinted(clause: str) -> frozenset[Decimal]:
    """The figures of which one is printed for the other: of '921 should read 912' both; none in all other clauses.

    'Errors and misprints excepted' corrects nothing, nor do '6 weeks instead of 4' a price.
    """
    for said in phrases("corrections").find(clause):
        before = [found for found in _FIGURE.finditer(clause) if found.end() <= said.start]
        behind = next((found for found in _FIGURE.finditer(clause) if found.start() >= said.end), None)
        if behind is None or behind.start() - said.end > _BEFORE_MONEY:
            continue
        beside = bool(before) and said.start - before[-1].end() <= _BEFORE_MONEY
        if not _is_bare(clause[behind.end() :]) or (said.value == "between" and not beside):
            continue
        figures = [behind.group(), *(found.group() for found in before[-1:])]
        return frozenset(reading.value for figure in figures for reading in number_readings(figure))
    return frozenset()


def _is_bare(behind: str) -> bool:
    """Not '6 weeks', '18 pt', '5 t' or '250 g/m²': what these correct is no price."""
    ahead = behind[:_WORD_LENGTH].lstrip()
    units = ("lead", "caliper_units", "weight_units", "months")
    return not any(found.start == 0 for section in units for found in phrases(section).find(ahead))


_WORD_LENGTH = 16


@lru_cache(maxsize=8192)
def overrides(text: str) -> bool:
    """Whether a note says of what it states that it holds instead of what stands elsewhere: 'is now 9 weeks'."""
    return bool(phrases("overrides").find(text))
