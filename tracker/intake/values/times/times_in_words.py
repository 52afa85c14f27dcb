"""Times that words count: 'a fortnight' and '3 fortnights' in weeks, 'une quinzaine' in days; 'every fortnight' is how
often, and no time. Also whether a text counts a time at all."""

import re
from functools import cache, lru_cache

from tracker.intake.values.figures.numbers_in_words import in_figures
from tracker.intake.words.lists import pattern, phrases, words


@lru_cache(maxsize=16384)
def times_in_figures(text: str) -> str:
    """'A fortnight' -> '2 weeks', '3 fortnights' -> '6 weeks', 'three weeks' -> '3 weeks'; of 'every fortnight' and
    'once every 2 weeks' only the words that say how often are left."""
    # The Spanish 'once' is eleven.
    once = _each_named().sub(r"\1", text) if _name().search(text) else text
    return _how_often().sub(r"\1", counts_in_figures(once))


@lru_cache(maxsize=16384)
def counts_in_figures(text: str) -> str:
    """The same, with how often: 'every fortnight' -> 'every 2 weeks'."""
    figures = _one_to().sub(r"1\1", in_figures(text))
    return _named().sub(_counted, figures) if _name().search(figures) else figures


def _counted(match: re.Match[str]) -> str:
    count, _, unit = _times()[match["name"].lower()].partition(" ")
    return f"{int(match['count'] or 1) * int(count)} {unit}"


@cache
def _times() -> dict[str, str]:
    return {name.lower(): time for time, names in words("times_in_words").items() for name in names}


@cache
def _name() -> re.Pattern[str]:
    names = "|".join(sorted(map(re.escape, _times()), key=len, reverse=True))
    return re.compile(rf"(?P<name>\b(?:{names}))\b", re.IGNORECASE)


@cache
def _each_named() -> re.Pattern[str]:
    return re.compile(rf"(\b{pattern('rhythms', 'any', 'of_one')})\s+{_name().pattern}", re.IGNORECASE)


@cache
def _named() -> re.Pattern[str]:
    one = rf"(?:(?<![\d.,])(?P<count>\d{{1,2}})\s+|\b{pattern('one_of_a_time', 'any')}\s+)?"
    return re.compile(one + _name().pattern, re.IGNORECASE)


@cache
def _one_to() -> re.Pattern[str]:
    """The 'ein' of 'ein bis 2 Wochen', which before anything else is an article."""
    to = pattern("range", *words("range"))
    return re.compile(rf"\b{pattern('one_of_a_time', 'any')}(\s+{to}\s+\d)", re.IGNORECASE)


@cache
def _how_often() -> re.Pattern[str]:
    units = pattern("lead", "day", "working_day", "week", "month")
    counted = rf"\d{{1,2}}(?:\s*[-–]\s*\d{{1,2}})?\s*{units}\b"
    return re.compile(rf"(\b{pattern('rhythms', 'any')})\s+{counted}", re.IGNORECASE)


_UNITS_COUNTED = re.compile(r"(?P<whole>\d+(?:[.,]\d{3}(?!\d))?)(?:[.,]\d+)?\+?\s*(?P<unit>[^\W\d_]+(?:\s[^\W\d_]+)?)")
_LONGEST = 3
"""Digits of the longest lead time in days (our choice)."""
_COUNTED = ("day", "working_day", "week", "month")


def counts_time(text: str) -> bool:
    """Whether it counts days, weeks or months: '15 Arbeitstage', 'three weeks', '2 meses'. The 'dia' of '1200 dia'
    is a roll's diameter."""
    found = (
        match
        for match in _UNITS_COUNTED.finditer(counts_in_figures(text))
        if match["whole"].isdigit() and len(match["whole"]) <= _LONGEST
    )
    counted = (match["unit"] for match in found)
    return any(phrases("lead").whole(part) in _COUNTED for unit in counted for part in (unit, unit.split()[0]))
