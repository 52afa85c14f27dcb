"""Smallest orders that a sentence tells by what it refuses: 'Orders for less than 42,000 lb per item are not accepted'.

What is refused must be orders: 'claims under 500 lb cannot be entered' and 'no order under 5 t is delivered free'
refuse none. On what terms they are refused is not read: 'orders under 5,000 lb cannot be taken on our truck' may be
taken on others.
"""

import re

from tracker.intake.values.boards.caliper import find_calipers
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.changes.discounts import names_discount
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.orders.least_told import Told, is_condition
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, blanked

_AROUND = ("orders_refused", "order_words", "minimum_per", "ordered.any", "refusal_filler", "around_a_minimum")
_OF_MONEY = ("charges", "price_words")
"""What smaller orders may pay."""
_STOPS = " ,:;.!()[]–-"


def refuses_small(clause: str) -> bool:
    """Whether a clause says of what is below one weight that something is refused, of orders or not."""
    return len(find_masses(clause)) == 1 and bool(phrases("orders_refused").find(clause)) and _is_below(clause)


def refused_below(clause: str) -> Told | None:
    """The weight below which orders are refused, read where nothing is left of what says so; None where something else
    is refused. What an order is counted for ('/Sorte') is away."""
    if not refuses_small(clause):
        return None
    (mass,) = find_masses(clause)
    part, behind = _part_of_refusal(clause, mass.words)
    money = names_discount(part) or any(phrases(section).find(part) for section in _OF_MONEY)
    if money or find_delivery(part) is not None:
        return None
    start = part.find(mass.words)
    if not _ends_in_orders(part[:start]):
        return None
    # The 'one' of 'per one item' is a figure by now.
    spans = [(start, start + len(mass.words)), *(match.span() for match in _ONE.finditer(part))]
    below = [match.span for match in phrases("bracket").find(part[:start]) if match.value == "below"]
    rest = rest_of(part, [*spans, *below], *_AROUND)
    of_some = find_grade(clause) is not None or find_calipers(clause)
    return Told(mass, read=not (rest or of_some or any(map(is_condition, behind))))


_ONE = re.compile(r"(?:\bd['’])?\b1\b(?![.,]?\d)")


def _is_below(clause: str) -> bool:
    before = clause[: clause.find(find_masses(clause)[0].words)]
    below = any(match.value == "below" for match in phrases("bracket").find(before))
    return below or bool(phrases("small_orders").find(before))


def _part_of_refusal(clause: str, weight: str) -> tuple[str, list[str]]:
    """From the first to the last of the parts between commas that hold the weight and what refuses it, and the parts
    behind."""
    parts = COMMA.split(clause)
    held = [place for place, part in enumerate(parts) if weight in part or phrases("orders_refused").find(part)]
    return (",".join(parts[held[0] : held[-1] + 1]), parts[held[-1] + 1 :]) if held else (clause, [])


def _ends_in_orders(before: str) -> bool:
    """'Orders for less than', 'we can't take anything under', 'unter': orders, or nothing, are right before it."""
    if any(match.value == "others" for match in phrases("ordered").find(before)):
        return False
    spans = [match.span for match in phrases("bracket").find(before) if match.value == "below"]
    said = [*_orders(before), *phrases("orders_refused").find(before)]
    kept = [match for match in said if not any(start <= match.start < end for start, end in spans)]
    words = [match for section in _FILLERS for match in phrases(section).find(before) if not _within(match, kept)]
    rest = blanked(before, (*spans, *(match.span for match in words))).rstrip(_STOPS)
    return not rest or any(match.end == len(rest) for match in kept)


_FILLERS = ("refusal_filler", "says_nothing_more")


def _orders(text: str) -> list[Found[str]]:
    sections = ("order_words", "minimum_per", "ordered")
    return [match for section in sections for match in phrases(section).find(text)]


def _within(match: Found[str], others: list[Found[str]]) -> bool:
    return any(other.start <= match.start < other.end for other in others)
