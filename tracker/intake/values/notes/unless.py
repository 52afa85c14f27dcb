"""Texts that give way to what a row says itself: 'per short ton unless otherwise noted', 'salvo que la fila diga otra
cosa'."""

from functools import lru_cache

from tracker.intake.words.lists import phrases

_FARTHEST = 9
"""Words between 'unless' and 'otherwise' at the most."""
_CLOSE = 3
"""Words between 'except' and 'column'."""


@lru_cache(maxsize=4096)
def unless_at(text: str) -> int | None:
    """Where the part begins that says 'unless otherwise'; None in a text that holds without exception.

    'Unless paid within 30 days' makes no exception of marked rows; what is said of 'prices without a currency' does.
    """
    found = phrases("unless").find(text)
    for place, match in enumerate(found):
        if match.value == "whole":
            return match.start
        behind = (one for one in found[place + 1 :] if one.value == "otherwise")
        if match.value == "lead" and any(one.first - match.after <= _FARTHEST for one in behind):
            return match.start
    unmarked = phrases("unmarked").find(text)
    return unmarked[0].start if unmarked else _but_for_a_column(text)


def _but_for_a_column(text: str) -> int | None:
    """'All prices in Canadian funds, except the last column': what stands over that column says what is in it."""
    columns = phrases("column_words").find(text)
    excepted = (
        match.start
        for match in phrases("exceptions").find(text)
        if any(0 <= column.first - match.after <= _CLOSE for column in columns)
    )
    return next(excepted, None)


@lru_cache(maxsize=4096)
def left_unmarked(text: str) -> frozenset[str]:
    """What an empty cell means by a text: 'Prices without a currency are pesos' -> {'currency'}; 'basis' likewise."""
    return frozenset(match.value for match in phrases("unmarked").find(text))
