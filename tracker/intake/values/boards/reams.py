"""The ream that a head of basis weights names by its sheet: 'Basis wt (24x36)', 'lb/ream 25 x 38', 'BW 25x38-500'."""

import re
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from functools import lru_cache

from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import without

_SHEET = re.compile(r"(?<![\d.,])(\d{2}(?:\.\d+)?)\s*\"?\s*x\s*(\d{2}(?:\.\d+)?)(?![\d.,])\s*\"?")
_COUNT = re.compile(r"(?<![\d.,])(480|500|1000|1,000)(?!\d)")
_SHORTEST_IN, _LONGEST_IN = Decimal(15), Decimal(45)
"""Sides of the sheets that basis weights are told on; common practice, no source."""
_USUAL = (Decimal(24), Decimal(36))
_REAM = 500


@dataclass(frozen=True, slots=True)
class Ream:
    """So many sheets of a size in inches. `sheets` None: the head does not say how many, and no ream is known by it."""

    width: Decimal
    length: Decimal
    sheets: int | None

    @property
    def msf(self) -> Fraction | None:
        """Its area in 1,000 ft²: 3 for 500 sheets of 24 x 36 in."""
        area = Fraction(self.width) * Fraction(self.length) / 144 / 1000
        return area * self.sheets if self.sheets is not None else None


@lru_cache(maxsize=4096)
def ream_of(text: str) -> Ream | None:
    """The ream of a head that speaks of basis weight; None for one that names no sheet, or money.

    A ream is 500 sheets unless stated (Paper and Its Uses, Customs), and 24 x 36 is known by its size alone.
    """
    folded = fold(text)
    found = _SHEET.findall(folded)
    if len(found) != 1 or not _speaks_of_weight(text):
        return None
    if find_currencies(without(text, phrases("weight_words").find(text))):
        # The 'Pesos' of 'Pesos en libras' is no money.
        return None
    width, length = map(Decimal, found[0])
    if not all(_SHORTEST_IN <= side <= _LONGEST_IN for side in (width, length)):
        return None
    return Ream(width, length, _sheets(text, _SHEET.sub(" ", folded), (width, length)))


def _speaks_of_weight(text: str) -> bool:
    pounds = any(match.value == "pound" for match in phrases("weight_units").find(text))
    return pounds or bool(phrases("weight_words").find(text))


def _sheets(text: str, rest: str, size: tuple[Decimal, Decimal]) -> int | None:
    counted = {int(count.replace(",", "")) for count in _COUNT.findall(rest)}
    if len(counted) == 1:
        return counted.pop()
    named = {match.value for match in phrases("basis").find(text)}
    if named & {"1000sheets", "thousand"}:
        return 1000
    return _REAM if not counted and ("ream" in named or size == _USUAL) else None
