"""Heads of stiffness, strength and the like, by their unit: 'Ply bond ft-lb', '(g·cm)'."""

from functools import cache

from tracker.intake.values.boards.caliper import caliper_unit
from tracker.intake.values.boards.weight import weight_units
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases, words
from tracker.intake.words.phrases import blanked


def is_technical_unit(text: str) -> bool:
    """'g·cm' is a unit of stiffness, for all its grams, and the 'ft' of 'Ply bond ft-lb' and 'Bond (ft-lb x 10-3)' no
    forint; beside the words or the unit of a board's measure or its price such a unit is not the head's own."""
    technical = phrases("technical_units")
    if technical.whole(text.strip(" ()[]")) is not None:
        return True
    # 'Minimum in lb' holds no 'in-lb'.
    named = [match.span for match in technical.find(text) if fold(text[slice(*match.span)]) in _as_written()]
    return bool(named) and not _is_of_board_or_price(blanked(text, named))


def _is_of_board_or_price(rest: str) -> bool:
    named = any(match.value != Role.PROPERTY for match in phrases("headers").find(rest))
    return named or bool(caliper_unit(rest) or weight_units(rest) or find_currencies(rest))


@cache
def _as_written() -> frozenset[str]:
    return frozenset(fold(word) for group in words("technical_units").values() for word in group)
