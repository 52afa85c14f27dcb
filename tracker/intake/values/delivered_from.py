"""Freight that the size of an order decides: 'From 5 t delivered; below that ex works plus 48 EUR/t freight'."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.brackets import bracket_text
from tracker.intake.values.charge_names import ChargeKind
from tracker.intake.values.charges import ChargeWords, find_charges
from tracker.intake.values.clauses import clauses
from tracker.intake.values.delivery import find_delivery
from tracker.intake.values.grade import find_grade
from tracker.intake.values.masses import Mass, find_masses
from tracker.intake.words.fold import fold, tokens
from tracker.intake.words.lists import phrases

_COMMA = re.compile(r",(?!\d)")
_OPENS = ("from", "above")
_CLOSE = 3
"""Words between 'from' and its weight, or between the weight and 'and more', at the most."""


@dataclass(frozen=True, slots=True)
class DeliveredFrom:
    """Orders from this weight on are delivered. `collected`: smaller ones are said not to be; `freight`: what they are
    charged for it, where that is told. `words`: what is said of the smaller ones."""

    least: Mass
    collected: bool = False
    freight: ChargeWords | None = None
    words: str = ""


@lru_cache(maxsize=4096)
def delivered_from(text: str) -> DeliveredFrom | None:
    """What a note says so of all boards; None where it says nothing of it, or names two such weights."""
    parts = [part for clause in clauses(text) for part in _parts(clause)]
    told = [(place, least) for place, part in enumerate(parts) if (least := _least(part)) is not None]
    if len(told) != 1 or find_grade(text) is not None:
        return None
    ((place, least),) = told
    below = [part for part in parts[place + 1 :] + parts[:place] if _of_smaller(part, least)]
    if len(below) != 1:
        return DeliveredFrom(least) if not below else None
    words = below[0]
    rest = _without_size(words, least)
    terms = find_delivery(rest)
    freights = [one for one in find_charges(rest) if one.kind is ChargeKind.FREIGHT and one.amounts]
    collected = (terms is not None and terms.delivered is False) or (bool(freights) and terms is None)
    return DeliveredFrom(least, collected, freights[0] if len(freights) == 1 and collected else None, words)


def _parts(clause: str) -> Iterator[str]:
    """Between commas; the 'From 5 t' of 'From 5 t, delivered' goes with what follows."""
    ahead = ""
    for part in filter(None, map(str.strip, _COMMA.split(clause))):
        ahead = f"{ahead}, {part}" if ahead else part
        only_size = bracket_text(ahead) is not None or phrases("small_orders").whole(ahead) is not None
        if not only_size:
            yield ahead
            ahead = ""


def _least(part: str) -> Mass | None:
    """The weight of 'free delivery from 10 t', 'orders of 10 t and more: delivered'."""
    masses = find_masses(part)
    terms = find_delivery(part)
    if len(masses) != 1 or terms is None or terms.delivered is not True or phrases("minimum").find(part):
        return None
    start = part.find(masses[0].words)
    end = start + len(masses[0].words)
    opens = any(
        _between(part, match.end, start) or _between(part, end, match.start)
        for match in phrases("bracket").find(part)
        if match.value in _OPENS
    )
    return masses[0] if opens else None


def _between(part: str, first: int, second: int) -> bool:
    return first <= second and len(tokens(fold(part[first:second]))) <= _CLOSE


def _of_smaller(part: str, least: Mass) -> bool:
    """'Below that ex works', 'orders under 5 t plus freight'; of another weight it is another matter."""
    if not phrases("small_orders").find(part) and not _under(part):
        return False
    masses = [mass for mass in find_masses(part) if not phrases("per").find(part[: part.find(mass.words)][-4:])]
    return all(mass.amounts == least.amounts and mass.units == least.units for mass in masses)


def _under(part: str) -> bool:
    """'Under 5 t ex works'."""
    masses = find_masses(part)
    before = part[: part.find(masses[0].words)] if masses else ""
    return any(match.value == "below" for match in phrases("bracket").find(before))


def _without_size(part: str, least: Mass) -> str:
    """What is said of the smaller orders, without the words for their size."""
    found = [
        *phrases("small_orders").find(part),
        *(one for one in phrases("bracket").find(part) if one.value == "below"),
    ]
    rest = list(part)
    for match in found:
        rest[match.start : match.end] = " " * (match.end - match.start)
    return " ".join("".join(rest).replace(least.words, " ", 1).split()).strip(" :,")
