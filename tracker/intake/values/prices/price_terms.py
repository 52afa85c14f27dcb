"""A price with terms of its own behind it in one text: '$1,140/ST (min 10 ST)', '1.140 €/t ab 5 t', '$1,140/ST +3%
energy'.

All of what stands behind the price must be read, for the word that is not may be the one that changes the price.
"""

import re
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field
from enum import StrEnum
from functools import lru_cache

from tracker.intake.values.figures.numbers import percent
from tracker.intake.values.freight.charge_amounts import amount_in
from tracker.intake.values.freight.charge_names import charges_named, whole_name
from tracker.intake.values.freight.charges import find_charges
from tracker.intake.values.orders.bracket_pieces import PIECES_OR_TONS, VEHICLES
from tracker.intake.values.orders.brackets import bracket_text
from tracker.intake.values.orders.minimum import find_minimum
from tracker.intake.values.prices.money import price_text
from tracker.intake.values.times.lead import LeadTime, lead_text
from tracker.intake.values.times.lead_remarked import lead_remarked
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import blanked


class Term(StrEnum):
    """What is said behind a price."""

    SIZE = "order size"
    LEAST = "smallest order"
    LEAD = "lead time"
    CHARGE = "charge"


@dataclass(frozen=True, slots=True)
class PriceTerms:
    """`price`: the text of the price alone. `size`: the words for the size of the orders that it is for, '' where none
    stand there; `remark`: those for the smallest order, the lead time and what comes on top of it. `kinds`: which."""

    price: str
    size: str = ""
    remark: str = ""
    kinds: frozenset[Term] = field(default=frozenset(), compare=False)


_LONGEST, _AHEAD = 100, 12
"""Signs of such a text, and those among which its price's figure begins."""
_BREAK = re.compile(r"\s*[(\[;]\s*|\s*,(?!\d)\s*|\s*(?=\+)|\s+[-–—]\s+|\s+")
"""Where a price may end and its terms begin."""
_PARTS = re.compile(r",(?!\d)|[;()\[\]]|\s(?=\+\s*\S)")


@lru_cache(maxsize=8192)
def price_and_terms(text: str) -> PriceTerms | None:
    """The parts of such a text; None for a price alone, and where something else than a price and terms is said.

    The price ends as far right as it can: the 'FOB mill' of '$1,140/ST FOB mill (4 weeks)' belongs to it. A figure
    without money or unit ends where a bracket or comma begins.
    """
    if len(text) > _LONGEST or not any(map(str.isdigit, text[:_AHEAD])):
        return None
    for match in reversed(list(_BREAK.finditer(text))):
        price = price_text(text[: match.start()])
        if price is None or not price.amounts or price.rest or price.is_range or price.no_price:
            continue
        parted = any(sign in text[match.start() : match.end() + 1] for sign in "([;,+")
        if not (price.currency or price.basis or parted):
            continue
        found = _terms(text[match.start() :])
        if found is not None:
            return PriceTerms(text[: match.start()].strip(), *found)
    return None


def _terms(text: str) -> tuple[str, str, frozenset[Term]] | None:
    """The order size and the other terms that a text says, one of each kind but for charges, and which kinds; None
    where any of its parts says something else, or nothing does."""
    parts = [stripped for part in _PARTS.split(text) if (stripped := part.strip(" .-–—"))]
    kinds = [_kind(part) for part in parts]
    said = Counter[Term](kind for kind in kinds if kind is not None)
    if not parts or None in kinds or any(count > 1 for kind, count in said.items() if kind is not Term.CHARGE):
        return None
    sizes = [part for part, kind in zip(parts, kinds, strict=True) if kind is Term.SIZE]
    return "".join(sizes), "; ".join(part for part in parts if part not in sizes), frozenset(said)


def _kind(part: str) -> Term | None:
    """What a part says and no more; None where that is not certain."""
    return next(_kinds(part), None)


def _kinds(part: str) -> Iterator[Term]:
    if _is_charge(part):
        yield Term.CHARGE
    if find_minimum(part) is not None:
        yield Term.LEAST
    size = bracket_text(part)
    if size is not None and size.not_weight in _SIZES and not (size.alone or _ONE_FIGURE.fullmatch(part)):
        yield Term.SIZE
    lead, remarked = lead_text(part), lead_remarked(part)
    if lead is not None and isinstance(remarked, LeadTime) and remarked.days == lead.days:
        # '30 days' by itself may be those of payment, and is no lead time in a remark.
        yield Term.LEAD


_SIZES = ("", PIECES_OR_TONS, *VEHICLES)
_ONE_FIGURE = re.compile(r"\d[\d.,\s]*[^\W\d]+")
"""'10 ST': so much may be the least, the most, or what there is."""


def _is_charge(part: str) -> bool:
    """'+3% energy', 'plus $20/ST freight': what is added, its name and its amount. Money that nothing adds may be in
    the price, or be another price."""
    added = phrases("plus_words").find(part)
    begins = part.startswith("+") or any(not part[: match.start].strip() for match in added)
    charges = find_charges(part) if begins else ()
    if len(charges) != 1 or not charges[0].amounts:
        return False
    names = [whole_name(part, match) for match in charges_named(part)]
    left = blanked(part, [*names, *(match.span for match in added)]).replace("+", " ").strip(" .:")
    return bool(percent(left)) if charges[0].percent else amount_in(part, left) is not None
