"""A number with a unit of length or weight behind it, the shape that calipers, widths and basis weights share."""

import re
from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.figures.numbers import NUMBER, NumberReading, number_readings
from tracker.intake.words.fold import fold, tokens
from tracker.intake.words.lists import phrases

_NUMBER = re.compile(NUMBER)


@dataclass(frozen=True, slots=True)
class Measured:
    """A number's readings with the word-list key of the unit behind it ('' where none is), and the span of both."""

    amounts: tuple[NumberReading, ...]
    unit: str
    start: int
    end: int


_TOLERANCE = re.compile(r"\s*(?:±|\+\s*/\s*-|\+-)\s*\d+(?:[.,]\d+)?\s*%?")


def without_tolerance(text: str) -> str:
    """'280 ± 12 g/m²' -> '280 g/m²': the nominal figure is what is offered."""
    return _TOLERANCE.sub("", text.replace("−", "-").replace("–", "-")) if "±" in text or "+" in text else text


@lru_cache(maxsize=32768)
def measured(text: str, section: str) -> tuple[Measured, ...]:
    """Every number of a text that stands by itself, with its unit from one section of the word lists.

    A number that is part of a name ('GC1', 'C1S') or of a longer sign ('24x36') is left out; one that runs into a unit
    ('18pt') is not.
    """
    folded = fold(text)
    found: list[Measured] = []
    for match in _NUMBER.finditer(folded):
        # '1000' in 'lb/1000 sq ft' belongs to the unit before it.
        if _inside_a_word(folded, match.start()) or (found and match.start() < found[-1].end):
            continue
        unit, end = _unit_behind(text, folded, match.end(), section)
        readings = number_readings(match.group())
        if readings and (unit or not folded[end : end + 1].isalpha()):
            found.append(Measured(readings, unit, match.start(), end))
    return tuple(found)


def _inside_a_word(folded: str, start: int) -> bool:
    before = folded[start - 1 : start]
    return before.isalnum() or (before == "-" and folded[start - 2 : start - 1].isalpha())


# '345µ' are microns; folded it would be the u of '345 u.'.
_LONE_MU = re.compile(r"[µμ](?![^\W\d_])")


def _unit_behind(text: str, folded: str, end: int, section: str) -> tuple[str, int]:
    """The unit that begins at this place, past a space or a hyphen ('18-pt').

    '' and the place itself where none does.
    """
    gap = end
    while folded[gap : gap + 1] == " " or (folded[gap : gap + 1] == "-" and folded[gap + 1 : gap + 2].isalpha()):
        gap += 1
    if section == "caliper_units" and _LONE_MU.match(text, gap):
        return "um", gap + 1
    ahead = folded[gap : gap + 32]
    if ahead.startswith("''"):
        return ("in", gap + 2) if section != "weight_units" else ("", end)
    unit = phrases(section).at(tokens(ahead), 0) if ahead else None
    if unit is None or unit.start > 0:
        return "", end
    return unit.value, gap + unit.end
