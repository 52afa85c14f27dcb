"""Smallest orders that a sentence tells by what it refuses: 'Orders for less than 42,000 lb per item are not accepted'.

What is refused must be orders, and refused whatever they come with: 'claims under 500 lb cannot be entered', 'orders
under 5,000 lb cannot be taken on our truck' and 'no order under 5 t is delivered free' refuse none.
"""

import re

from tracker.intake.values.boards.caliper import find_calipers
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.changes.discounts import names_discount
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.orders.masses import Mass, find_masses
from tracker.intake.words.lists import phrases, without_words
from tracker.intake.words.phrases import Found, blanked

_OF_MONEY = ("charges", "price_words")
"""What smaller orders may pay."""
_STOPS = " ,:;.!()[]–-"


def speaks_of_money(text: str) -> bool:
    """It names a charge, a discount or prices."""
    return names_discount(text) or any(phrases(section).find(text) for section in _OF_MONEY)


def refuses_small(clause: str) -> bool:
    """Whether a clause says of what is below one weight that something is refused, of orders or not."""
    masses = find_masses(clause)
    return len(masses) == 1 and bool(phrases("orders_refused").find(clause)) and _is_below(clause, masses[0])


def refused_below(clause: str, masses: tuple[Mass, ...]) -> Mass | None:
    """The weight below which orders are refused; None where something else is, or on some terms alone."""
    if not refuses_small(clause) or len(masses) != 1 or find_grade(clause) is not None or find_calipers(clause):
        return None
    part = _part_of_refusal(clause, masses[0].words)
    if speaks_of_money(part) or find_delivery(part) is not None:
        return None
    start = part.find(masses[0].words)
    ends_in_order = _ends_in_orders(part[:start])
    behind = part[start + len(masses[0].words) :]
    return masses[0] if ends_in_order and not _rest(behind) else None


def _is_below(clause: str, mass: Mass) -> bool:
    before = clause[: clause.find(mass.words)]
    below = any(match.value == "below" for match in phrases("bracket").find(before))
    return below or bool(phrases("small_orders").find(before))


def _part_of_refusal(clause: str, weight: str) -> str:
    """From the first to the last of the parts between commas that hold the weight and what refuses it."""
    parts = COMMA.split(clause)
    held = [place for place, part in enumerate(parts) if weight in part or phrases("orders_refused").find(part)]
    return ",".join(parts[held[0] : held[-1] + 1]) if held else clause


def _ends_in_orders(before: str) -> bool:
    """'Orders for less than', 'we can't take anything under', 'unter': orders, or nothing, are right before it."""
    if any(match.value == "others" for match in phrases("ordered").find(before)):
        return False
    spans = [match.span for match in phrases("bracket").find(before) if match.value == "below"]
    said = [*_orders(before), *phrases("orders_refused").find(before)]
    kept = [match for match in said if not any(start <= match.start < end for start, end in spans)]
    words = [match for match in phrases("refusal_filler").find(before) if not _within(match, kept)]
    rest = blanked(before, (*spans, *(match.span for match in words))).rstrip(_STOPS)
    return not rest or any(match.end == len(rest) for match in kept)


def _orders(text: str) -> list[Found[str]]:
    sections = ("order_words", "minimum_per", "ordered")
    return [match for section in sections for match in phrases(section).find(text)]


def _within(match: Found[str], others: list[Found[str]]) -> bool:
    return any(other.start <= match.start < other.end for other in others)


def _rest(behind: str) -> str:
    """What stands behind the weight and says more than that it is refused, and of what orders."""
    sections = ("orders_refused", "order_words", "minimum_per", "ordered", "refusal_filler")
    # The 'one' of 'per one item' is a figure by now.
    rest = without_words(_ONE.sub(" ", behind), *sections)
    return rest.replace("/", " ").strip(_STOPS)


_ONE = re.compile(r"(?:\bd['’])?\b1\b(?![.,]?\d)")
