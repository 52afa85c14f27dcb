"""Heads that say where an order size begins or ends, with the unit of weight before the word: 'Lb from', 'kg bis'."""

from collections.abc import Sequence

from tracker.intake.values.heads.roles import ORDER_LIMITS
from tracker.intake.values.orders.masses import MASS_UNITS
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Token, tokens_of


def limit_ahead(text: str) -> str:
    """'Lb through' as 'through Lb': the word for a limit leads, whichever side of its unit it is written on."""
    found = tokens_of(text)
    unit = phrases("basis").at(found, _next_word(found, 0))
    if unit is None or unit.value not in MASS_UNITS:
        return text
    limit = phrases("headers_alone").at(found, _next_word(found, unit.after))
    if limit is None or limit.value not in ORDER_LIMITS or _next_word(found, limit.after) < len(found):
        return text
    return f"{text[limit.start : limit.end]} {text[unit.start : unit.end]}"


def _next_word(found: Sequence[Token], place: int) -> int:
    return next((later for later in range(place, len(found)) if found[later][0].isalnum()), len(found))
