"""Several units of prices in one text: set beside each other, or each where it stands."""

from collections.abc import Sequence
from itertools import pairwise

from tracker.intake.values.prices.basis import BasisReading, after_per, found_bases, unit_at
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Token, tokens_of


def bases_with_places(text: str) -> tuple[tuple[BasisReading, int, int], ...]:
    """Every unit of a text that follows 'per', from where its 'per' begins to where its own last word ends; of 'rolls
    per tonne', which find_basis takes for a number of rolls, too."""
    found, units, place = tokens_of(text), [], 0
    while place < len(found):
        after = after_per(found, place, weak=False)
        unit = unit_at(found, after, text) if place < after < len(found) else None
        if unit is not None and unit[0].bases:
            units.append((unit[0], found[place][1], found[unit[1] - 1][2]))
        place = place + 1 if unit is None else unit[1]
    return tuple(units)


def bases_side_by_side(text: str) -> tuple[BasisReading, ...]:
    """The units of 'EUR/t bzw. EUR/1000 m²': several that one word or sign sets beside each other; () for fewer."""
    found, words = list(found_bases(text)), tokens_of(text)
    for (one, _, end), (other, per, _) in pairwise(found):
        between = [word for word, _, _ in words[end:per]]
        if one.bases != other.bases and 0 < len(between) <= _MOST_BETWEEN and _set_beside(words, end):
            return one, other
    return ()


def one_of(bases: tuple[BasisReading, ...]) -> BasisReading | None:
    """'EUR/t bzw. EUR/1000 m²' leaves open which of the two a price is per."""
    if not bases:
        return None
    foreign = next((basis.foreign for basis in bases if basis.foreign is not None), None)
    return BasisReading(frozenset().union(*(basis.bases for basis in bases)), bases[0].words, foreign)


def _set_beside(words: Sequence[Token], place: int) -> bool:
    return words[place][0] == "/" or phrases("side_by_side").at(words, place) is not None


_MOST_BETWEEN = 2
"""'bzw.' alone, or with the currency once more behind it."""
