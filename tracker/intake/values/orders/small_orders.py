"""Notes that make small orders dearer than the list: 'Orders under 10,000 lb: add $80/ton', 'below 5 t +3 %'."""

import re
from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.figures.rates import masses_of_orders
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.orders.masses import Mass, find_masses
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found

_AMOUNT = re.compile(r"\d")
_PLUS = re.compile(r"\+\s*[^\W\d]{0,3}[$€£]?\s*\d")


@dataclass(frozen=True, slots=True)
class DearerIfSmall:
    """Orders below some size cost more than these prices; how much is the vendor's to say for an order at hand."""

    words: str


@lru_cache(maxsize=8192)
def dearer_if_small(text: str) -> DearerIfSmall | None:
    """What a note says of small orders, or of less than a truckload; None where it says nothing of them.

    An amount or rate must stand in the clause: 'small orders on request' names no price at all.
    """
    for clause in clauses(text):
        small = phrases("small_orders").find(clause)
        if small and _AMOUNT.search(clause) and (any(match.value == "charged" for match in small) or _adds(clause)):
            return DearerIfSmall(clause.strip())
    return None


@lru_cache(maxsize=8192)
def charged_below(text: str) -> DearerIfSmall | None:
    """'SBS has a surcharge of 20 EUR/t below 5 t', which names a weight of orders and no orders."""
    for clause in clauses(text):
        money = find_currencies(clause) or "%" in clause
        if money and charges_named(clause) and size_of_small(clause) is not None:
            return DearerIfSmall(clause.strip())
    return None


def _adds(clause: str) -> bool:
    if size_of_small(clause) is not None and charges_named(clause):
        # 'Freight 48 EUR/t on orders under 5 t'.
        return True
    return bool(phrases("additions").find(clause) or phrases("surcharge_words").find(clause) or _PLUS.search(clause))


def signs_of_small(text: str) -> list[Found[str]]:
    """The words in a text that its weights are those of small orders by: 'small orders', 'under' before a weight."""
    weight = text.find(masses[0].words) if (masses := masses_of_orders(text)) else -1
    below = (one for one in phrases("bracket").find(text) if one.value == "below" and one.end <= weight)
    return [*phrases("small_orders").find(text), *below]


def begins_with_small_orders(clause: str) -> bool:
    """'Smaller lots are sold ex mill and bear carriage of £85 a tonne' says nothing of other orders; what stands behind
    a comma may be everybody's."""
    led = next(iter(phrases("small_orders").find(clause)), None)
    return led is not None and led.first <= _FIRST_WORDS and COMMA.search(clause) is None


_FIRST_WORDS = 1


_SIZED = re.compile(r"[<>≤≥]\s*\d|\d\s*[-–]\s*\d")


@lru_cache(maxsize=8192)
def of_sized_orders(head: str) -> bool:
    """Whether a head of charges names the orders they are for: 'Upcharge < 5 ST', 'Surcharge under 10,000 lb',
    'Mindermengenzuschlag', 'Freight (if below 20 ST)'; 'Freight (min. 5 t)' is for all that are sold."""
    if any(phrases(section).find(head) for section in ("small_orders", "only_if")):
        return True
    masses = find_masses(head)
    if not masses or phrases("minimum").find(head):
        return bool(masses) and _SIZED.search(head) is not None
    start = head.find(masses[0].words)
    end = start + len(masses[0].words)
    bounds = (one for one in phrases("bracket").find(head) if one.value in _BOUNDS)
    beside = (not (head[one.end : start] if one.end <= start else head[end : one.start]).strip() for one in bounds)
    return _SIZED.search(head) is not None or any(beside)


_BOUNDS = ("below", "up_to", "from", "above")


def of_small_orders(head: str) -> bool:
    """Whether a head names the orders below a weight and no more, 'Under 10,000 lb': beside a price, what these cost
    more. Larger ones cost less."""
    larger = ">" in head or any(one.value in ("from", "above") for one in phrases("bracket").find(head))
    return of_sized_orders(head) and not larger


def adds_for_some_orders(head: str) -> bool:
    """'Under 10,000 lb add', 'Orders under 5 t +': what such orders cost more, and no price of theirs."""
    added = bool(phrases("additions").find(head)) or head.rstrip().endswith("+")
    return added and of_sized_orders(head)


@dataclass(frozen=True, slots=True)
class SmallSize:
    """The weight below which an order is a small one, and where a text says so."""

    below: Mass
    start: int
    end: int


@lru_cache(maxsize=8192)
def size_of_small(text: str) -> SmallSize | None:
    """The 'orders under 5 t' of a text; None where it names no such weight, or another beside it."""
    masses = masses_of_orders(text)
    if len(masses) != 1:
        return None
    start = text.find(masses[0].words)
    end = start + len(masses[0].words)
    leads = [one.start for one in signs_of_small(text) if one.end <= start and not text[one.end : start].strip(" aà")]
    return SmallSize(masses[0], min(leads), end) if leads else None


def only_of_small(part: str) -> bool:
    """'Only on orders under 5 t': a part of a sentence that says for which orders what stands before it is charged."""
    priced = "%" in part or find_currencies(part) or charges_named(part)
    return size_of_small(part) is not None and not priced
