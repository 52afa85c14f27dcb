"""Figures of a description that are no one board's: the ends of '280-330 g/m²', a list's members, 'ab 300 g/m²'."""

from decimal import Decimal
from itertools import pairwise

from tracker.intake.values.lengths import Measured, measured
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases

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
    rest = list(fold(text))
    spoken = [*phrases("range").find(text), *phrases("open_measures").find(text)]
    for start, end in [(one.start, one.end) for one in found] + [(match.start, match.end) for match in spoken]:
        rest[start:end] = " " * (end - start)
    return not any(sign.isalnum() for sign in rest)


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
    said = phrases("open_measures")
    before = said.find(folded[: one.start])
    behind = said.find(folded[one.end :])
    begins = bool(before) and before[-1].value == "before" and not folded[before[-1].end : one.start].strip(" .")
    return begins or (bool(behind) and behind[0].value == "behind" and not folded[one.end :][: behind[0].start].strip())
