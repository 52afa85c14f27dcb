"""Delivery that is had for money on top of a price: 'frei Haus gegen 20 EUR/t', 'delivered $25/ST extra', 'franco en
sus 25 EUR/t'. Prices without it are others."""

import re

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, blanked

PARTS = re.compile(r",(?!\d)|[;:]\s")


def sums_in(text: str) -> bool:
    """Whether a text names a sum of money: '$25/ST', '25 EUR/t'; 'EUR/t' by itself is none."""
    signs = {re.escape(one.words) for one in find_currencies(text)}
    return any(re.search(rf"(?:{sign})\s?\d|\d\s?(?:{sign})", text) for sign in signs)


def costs_extra(part: str, terms: list[Found[str]]) -> bool:
    """Whether a part of a sentence says that its terms of delivery cost something: an amount, or a surcharge by name,
    behind a word for what is added; that of sheets or of energy is another matter."""
    rest = blanked(part, (term.span for term in terms))
    named = {match.value for match in phrases("charges").find(rest)}
    if named - {"freight", "other"} or phrases("forms").find(rest) or phrases("taxes").find(rest) or find_grade(rest):
        return False
    against = phrases("against").find(rest)
    added = against or phrases("additions").find(rest) or phrases("extra_words").find(rest)
    if (added and sums_in(rest)) or (against and named):
        return True
    # 'Lieferung frei Haus: 25 EUR/t' is what delivery comes to, 'Preis frei Haus: 1.120 EUR/t' a price.
    carried = phrases("carriage").find(part)
    return bool(carried) and not phrases("price_words").find(part) and sums_in(rest) and _ends_in_a_sum(part, terms)


def _ends_in_a_sum(part: str, terms: list[Found[str]]) -> bool:
    """The term's own amount stands right behind it."""
    return any(_AMOUNT.match(part[term.end :]) for term in terms)


_AMOUNT = re.compile(r"\s*[:=]?\s*(?:[A-Z]{3}\s?|[$€£]\s?)?\d")
