"""The ways in which board is sold that a text names: in rolls or sheets, from stock or straight, delivered or not."""

from dataclasses import replace
from functools import lru_cache

from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.prices.basis import basis_span
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, outside

OTHER_WAY = {
    "roll": "sheet", "sheet": "roll", "stock": "direct", "direct": "stock", "fob": "delivered", "delivered": "fob",
}  # fmt: skip
"""Each way of selling board with the one that it is told apart from."""
FORMS = frozenset({"roll", "sheet"})
_DELIVERIES = frozenset({"fob", "delivered"})

_SECTIONS = ("forms_named", "supply_named", "delivery_named")


@lru_cache(maxsize=8192)
def ways_named(text: str) -> frozenset[str]:
    """The ways that a text names; what it names beside the one told apart from it is none: 'rolls and sheets'."""
    named = {match.value for match in named_in(text)}
    said = find_delivery(text) if named & _DELIVERIES else None
    if said is not None and said.delivered is None:
        # 'FOB and delivered prices'.
        named -= _DELIVERIES
    return frozenset(way for way in named if OTHER_WAY[way] not in named)


def named_in(text: str) -> list[Found[str]]:
    """The words for ways in a text, each with the way that it means."""
    found = [match for section in _SECTIONS for match in phrases(section).find(text)]
    if not found:
        return []
    # The 'formats' of 'formats spéciaux' are no form of all.
    found = outside(found, phrases("special_orders").find(text))
    unit = basis_span(text) or (0, 0)
    excepted = _excepted(text, found)
    return [
        replace(match, value=OTHER_WAY[match.value]) if match in excepted else match
        for match in found
        # The sheets of 'per 1,000 sheets'.
        if _is_meant(text, match)
        or (not (unit[0] <= match.first and match.after <= unit[1]) and not _counts(text[: match.start]))
    ]


def _excepted(text: str, found: list[Found[str]]) -> list[Found[str]]:
    """The sheets of 'lead time 3 weeks except sheets', which is told of rolls; those of 'except sheets 5 weeks' have a
    time of their own."""
    ends = [one.after for one in phrases("exceptions").find(text) if any(map(str.isdigit, text[: one.start]))]
    last = found[-1:] if ends and not any(map(str.isdigit, text[found[-1].end :])) else []
    return [one for one in last if one.value in FORMS and one.first in ends]


def _is_meant(text: str, match: Found[str]) -> bool:
    """The sheets of '2 semaines pour les feuilles', where no money is spoken of that would be paid per sheet."""
    words = text[: match.start].rstrip()
    led = any(found.end == len(words) for found in phrases("meant_for").find(words))
    return led and not find_currencies(text)


def _counts(before: str) -> bool:
    """The 'per' of 'per roll', '/' of '5 t/Rolle', and the figure of '1,000 sheets': an amount of them."""
    words = before.rstrip()
    led = [match for match in phrases("per").find(words) if match.value == "strong" and match.end == len(words)]
    # Of several, as in 'les feuilles', a price is per a number only: 'les 1 000 feuilles'.
    per = any(phrases("before_several").whole(words[match.start :]) is None for match in led)
    return per or words[-1:] == "/" or words[-1:].isdigit()
