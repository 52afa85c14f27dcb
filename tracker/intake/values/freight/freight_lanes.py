"""Where a note's freight leads, which changes nothing about what it is: 'Freight to Dayton: add $1.90 per cwt'.

To a town, that is: what freight to a whole state or country costs may be another buyer's.
"""

import re
from collections.abc import Iterator
from functools import lru_cache
from itertools import pairwise

from tracker.intake.values.freight.charge_names import ChargeKind, charges_named
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import pattern, phrases

_NAME = r"(?:(?![A-Z]{1,3}\b)[^\W\d_a-zß-öø-ÿ][\w'’]*(?:[.-][\w'’]+)*)"
_PLACE = re.compile(rf"\s*(?P<name>{_NAME}(?:\s+{_NAME}){{0,2}})")
_OF_A_PLACE = re.compile(rf"\s*(?:de|d['’]|in|at|en|i|à)?\s*{_NAME}(?:[\s-]+{_NAME}){{0,2}}")
_YOUR_SITE = re.compile(
    rf"\b(?i:{pattern('to_a_site', 'any')}\s+{pattern('the_buyer', 'any')})\s+"
    rf"(?:{_NAME}\s+){{0,3}}(?i:{pattern('buyer_sites', 'any')})\b"
)
"""'To your Lakemoor plant', 'an Ihr Kasseler Werk', 'à votre usine'."""
_WIDE = ("countries", "states", "regions")


@lru_cache(maxsize=4096)
def without_lane(part: str) -> str:
    """The part of a note without 'to your plant in Dayton', 'to your Dayton plant', 'nach Kassel', 'jusqu'à votre usine
    de Lannoy'."""
    for start, end in reversed(_sites(part)):
        part = f"{part[:start]} {part[end:]}"
    for match in reversed(phrases("to_a_place").find(part)):
        place = _PLACE.match(part, match.end)
        if place is None or not _names_freight(part[: match.start]):
            continue
        if not any(phrases(section).find(place["name"]) for section in _WIDE):
            part = f"{part[: match.start]} {part[place.end() :]}"
    return part


def _sites(part: str) -> list[tuple[int, int]]:
    """Where the buyer's own sites are named as the end of a way, with the places that they are in."""
    found = [(match.start(), match.end()) for match in _YOUR_SITE.finditer(part)]
    others = ((match.start, match.end) for match in phrases("to_the_buyer").find(part))
    found += [one for one in others if not any(start < one[1] and one[0] < end for start, end in found)]
    # 'Bis Ihr Werk' is no condition, though 'bis' may begin one.
    places = {end: _OF_A_PLACE.match(part, end) for _, end in found}
    return sorted((start, end if (place := places[end]) is None else place.end()) for start, end in found)


def leads_to_several(text: str) -> bool:
    """'Freight to Dayton $1.90/cwt; to Boston $2.90/cwt', '… and Boston $2.90/cwt', '…; all other points on request':
    which of them is paid is open."""
    lanes = _from_the_first_lane(text)
    if lanes and (phrases("the_others").find(lanes) or len(find_currencies(lanes)) > 1):
        return True
    if _leads_to_several_sites(text):
        return True
    priced = (segment for segment in _SEGMENTS.split(text) if find_currencies(segment))
    return len({place for segment in priced for place in _places(segment)}) > 1


def _from_the_first_lane(text: str) -> str:
    """A text from the first sentence that leads to a place; the 'US$ per ton, FOB mill' before it is of no freight."""
    stops = [0, *(stop.end() for stop in _SENTENCES.finditer(text)), len(text)]
    return next((text[start:] for start, end in pairwise(stops) if any(True for _ in _places(text[start:end]))), "")


def _leads_to_several_sites(text: str) -> bool:
    """'Freight to your Dayton plant $45/ton and to your Akron plant $60/ton', '… $45/ton, elsewhere at cost'."""
    if any(_sites(sentence) and phrases("other_places").find(sentence) for sentence in _SENTENCES.split(text)):
        return True
    return len({fold(text[start:end]) for start, end in _sites(text)}) > 1 and len(find_currencies(text)) > 1


_SENTENCES = re.compile(r"\.\s")
_SEGMENTS = re.compile(r";|,(?!\d)|\.\s")


def _places(segment: str) -> Iterator[str]:
    for match in phrases("to_a_place").find(segment):
        place = _PLACE.match(segment, match.end)
        if place is not None and not phrases("months").find(place["name"]):
            yield place["name"]


def _names_freight(before: str) -> bool:
    named = charges_named(before)
    return bool(named) and named[0].value == ChargeKind.FREIGHT
