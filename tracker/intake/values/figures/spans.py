"""Figures of a description that are no one board's: the ends of '280-330 g/m²', a list's members, 'ab 300 g/m²'."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from decimal import Decimal
from itertools import pairwise

from tracker.intake.values.figures.lengths import Measured, measured
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, blanked

_SIGNS = frozenset({"-", "...", "..", "…", "~"})
_LIST_SIGNS = frozenset({",", "/", ";", "&", "+"})
_WIDEST_SPAN, _WIDEST_STEP = Decimal(5), Decimal(2)
"""How many times the first figure the next one may be, in a span and in a list: what differs by more is the same
measure of nothing ('Pos. 3, 300 g/m²'). Common practice, no source."""


def lone_figures(text: str, section: str) -> tuple[Measured, ...]:
    """The measured figures of a text that each stand for themselves.

    A price for 280 to 330 g/m² says of no board what it weighs, so neither end may be taken for its weight.
    """
    found = measured(text, section)
    folded = fold(text)
    several: set[int] = set()
    for place, (one, after) in enumerate(pairwise(found)):
        if _of_one_kind(folded, one, after):
            several |= {place, place + 1}
    return tuple(one for place, one in enumerate(found) if place not in several and not _open(folded, one))


def is_span(text: str, section: str) -> bool:
    """Whether a text is nothing but a span or list of one measure, or where it begins: '200-249 g/m²', 'ab 300 µm'."""
    found = measured(text, section)
    if not any(one.unit for one in found) or lone_figures(text, section):
        return False
    spoken = [*phrases("range").find(text), *phrases("open_measures").find(text)]
    rest = blanked(fold(text), [(one.start, one.end) for one in found] + [match.span for match in spoken])
    return not any(map(str.isalnum, rest))


def _of_one_kind(folded: str, one: Measured, after: Measured) -> bool:
    """Two figures joined by a sign or word, of which the first may leave its unit to the second."""
    if not after.unit or one.unit not in ("", after.unit):
        return False
    gap = folded[one.end : after.start].strip()
    # The 1.020 of '700-1.020 mm' is a thousand and some.
    pairs = [(first.value, last.value) for first in one.amounts for last in after.amounts if first.value > 0]
    times = [last / first for first, last in pairs]
    if gap in _SIGNS or phrases("range").whole(gap) is not None:
        return any(1 < each <= _WIDEST_SPAN for each in times)
    return gap in _LIST_SIGNS and any(1 / _WIDEST_STEP <= each <= _WIDEST_STEP and each != 1 for each in times)


def _open(folded: str, one: Measured) -> bool:
    """'From 300 g/m²' and '20 pt and up' are where a price begins."""
    return _end_named(folded, one) is not None


_BEHIND = frozenset({"and_up", "and_down"})


def _end_named(folded: str, one: Measured) -> Found[str] | None:
    """The words right before or behind a figure that make it an end of a span."""
    said = phrases("open_measures")
    before = said.find(folded[: one.start])
    if before and before[-1].value not in _BEHIND and not folded[before[-1].end : one.start].strip(" ."):
        return before[-1]
    behind = said.find(folded[one.end :])
    stands_behind = bool(behind) and behind[0].value in _BEHIND and not folded[one.end :][: behind[0].start].strip()
    return behind[0] if stands_behind else None


@dataclass(frozen=True, slots=True)
class FigureSpan:
    """The figures of one measure that a text names together, from `low` to `high`; None where that end is open.

    `with_ends`: the ends belong to it, as behind 'from' and not behind 'over'. `start` and `stop`: where all its words
    stand.
    """

    low: Measured | None
    high: Measured | None
    with_ends: bool
    start: int
    stop: int


def figure_spans(text: str, section: str) -> Iterator[FigureSpan]:
    """Every figure of a measure that has its unit: alone, open to one side, or with the other end of its span."""
    found = measured(text, section)
    folded = fold(text)
    ends: set[int] = set()
    for place, one in enumerate(found):
        after = found[place + 1] if place + 1 < len(found) else None
        joined = after is not None and _of_one_kind(folded, one, after)
        if place in ends or not (one.unit or joined):
            continue
        if after is None or not joined:
            yield _alone(folded, one)
        elif _in_a_list(folded, one, after):
            yield _alone(folded, replace(one, unit=after.unit))
        else:
            # The 16 of '16 to 18 pt' is in points as well.
            ends.add(place + 1)
            yield FigureSpan(replace(one, unit=after.unit), after, True, one.start, after.end)


def _in_a_list(folded: str, one: Measured, after: Measured) -> bool:
    """'18, 20 pt' and '18 and 24 pt' are two measures; 'between 18 and 24 pt' are the ends of a span."""
    gap = folded[one.end : after.start].strip()
    said = phrases("range").whole(gap)
    before = phrases("between").find(folded[: one.start])
    led_to = bool(before) and not folded[before[-1].end : one.start].strip()
    return gap in _LIST_SIGNS or (said in ("and", "or") and not led_to)


def _alone(folded: str, one: Measured) -> FigureSpan:
    words = _end_named(folded, one)
    plus = _AND_UP.match(folded, one.end)
    end = words.value if words is not None else "and_up" if plus is not None else None
    low = None if end in ("below", "up_to", "and_down") else one
    high = None if end in ("above", "from", "and_up") else one
    start, stop = one.start, plus.end() if plus is not None else one.end
    if words is not None:
        start, stop = (start, one.end + words.end) if end in _BEHIND else (words.start, stop)
    return FigureSpan(low, high, end not in ("above", "below"), start, stop)


_AND_UP = re.compile(r"\+(?!\s*[^\W\d]{0,3}[$€£]?\s*\d)")
"""The sign of '20 pt+', and not of '20 pt +$15'."""
