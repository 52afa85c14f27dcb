"""Pounds that are money, though the same word is a weight: 'pounds per tonne', 'libras por kilo'."""

from functools import cache

from tracker.intake.values.prices.basis import BasisReading, after_per, unit_at
from tracker.intake.words.lists import words
from tracker.intake.words.phrases import Phrases, tokens_of
from tracker.trade.basis import Basis

_WEIGHTS = frozenset({Basis.TONNE, Basis.KG, Basis.SHORT_TON})
"""With the ton that may be either; nobody quotes pounds per a ton that is a short one for certain."""
_SIGN = "GBP"


def with_pounds_as_money(text: str) -> str:
    """The text, as long as it was, with the sign of the money in place of pounds per a weight, for no weight is per
    another. Basis weights are per an area and stay, as do the '2,205 pounds per tonne' that tell what one is."""
    found = tokens_of(text)
    for match in reversed(_pounds().among(found)):
        place = after_per(found, match.after, weak=False)
        unit = unit_at(found, place, text) if match.after < place < len(found) else None
        counted = match.first > 0 and found[match.first - 1][0][:1].isdigit()
        if unit is not None and not counted and _weighs(unit[0]):
            text = f"{text[: match.start]}{_SIGN.ljust(match.end - match.start)}{text[match.end :]}"
    return text


def _weighs(unit: BasisReading) -> bool:
    return unit.bases <= _WEIGHTS and bool(unit.bases - {Basis.SHORT_TON})


@cache
def _pounds() -> Phrases[str]:
    """The words for the weight that are no abbreviations of it."""
    return Phrases({_SIGN: tuple(word for word in words("basis")[Basis.LB] if len(word) > _LONGEST_SHORT)})


_LONGEST_SHORT = 3
"""Letters of 'lbs'."""
