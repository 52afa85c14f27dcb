"""The boards that a text names by grade, coating and measures, also those of one caliper or one basis weight."""

from collections import Counter
from dataclasses import replace
from fractions import Fraction

from tracker.intake.values.boards.boards_meant import BoardsMeant, MeasureSpan, boards_meant
from tracker.intake.values.boards.caliper import find_calipers
from tracker.intake.values.boards.weight import WeightReading, find_weights


def boards_named(text: str) -> BoardsMeant:
    """As boards_meant, but '18 pt' alone means the boards of that caliper."""
    meant = boards_meant(text)
    if meant.spans:
        return meant
    exact = [(True, Fraction(reading.um)) for reading in find_calipers(text)]
    exact += [(False, reading.gsm) for reading in _weights(text)]
    return replace(meant, spans=tuple(MeasureSpan(kind, (one,), (one,), True) for kind, one in exact))


def names_measure(text: str) -> bool:
    """Whether a text measures a board: '18 pt', '300 g/m²'."""
    return bool(find_calipers(text)) or bool(find_weights(text))


def is_measured_twice(text: str) -> bool:
    """Whether a text has a caliper and a basis weight, as the description of a board has and no other words."""
    return bool(find_calipers(text)) and bool(find_weights(text))


def measures_named(text: str) -> list[str]:
    """The words of the first caliper and of the weights in a text."""
    return [*(reading.words for reading in find_calipers(text)[:1]), *(reading.words for reading in _weights(text))]


def _weights(text: str) -> list[WeightReading]:
    """Its weights in one unit; 100 lb are no weight of board without an area."""
    found = find_weights(text)
    said = Counter(reading.words for reading in found)
    return [reading for reading in found if said[reading.words] == 1]
