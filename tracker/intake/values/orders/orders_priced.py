"""For which orders a note says the prices hold: 'Prices for orders of 40,000 lb and over', 'Preise ab 10 t'."""

from functools import lru_cache

from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.orders.brackets import Bracket, bracket_text
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.orders.minimum import tells_a_least
from tracker.intake.values.orders.worded_brackets import names_one_quantity
from tracker.intake.values.prices.tax import tax_included
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of

_MOST_WORDS_BETWEEN = 6
_OTHER_SUBJECTS = ("charges", "delivery", "superseded")
"""Before the weight, words for one of these make the sentence speak of something else than board prices."""


@lru_cache(maxsize=8192)
def orders_priced(text: str) -> Bracket | None:
    """The one order size that a note's prices hold for; None where it says none, several, or a smallest order."""
    found = [bracket for clause in clauses(text) if (bracket := _in_clause(clause)) is not None]
    return found[0] if len(found) == 1 else None


def _in_clause(clause: str) -> Bracket | None:
    prices = phrases("price_words").find(clause) if find_masses(clause) else []
    if not prices or tells_a_least(clause):
        return None
    behind = clause[prices[0].end :]
    found = tokens_of(behind)
    for place, (word, start, _) in enumerate(found[: _MOST_WORDS_BETWEEN + 1]):
        bracket = _begins_with_an_order_size(behind[start:])
        if bracket is not None:
            return bracket if _of_prices(clause[: prices[0].end + start]) else None
        if place == _MOST_WORDS_BETWEEN or any(sign.isdigit() for sign in word):
            return None
    return None


def _of_prices(before: str) -> bool:
    return not (tax_included(before) or any(phrases(section).find(before) for section in _OTHER_SUBJECTS))


def _begins_with_an_order_size(text: str) -> Bracket | None:
    """The longest order size at a text's start, where nothing, or a further part of the sentence, follows it."""
    ends = [end for _, _, end in tokens_of(text)]
    for end in reversed(ends):
        rest = text[end:].lstrip(" )")
        bracket = bracket_text(text[:end].rstrip(" ,(")) if not rest or not rest[0].isalnum() else None
        if bracket is not None and (bracket.start or bracket.end) and not bracket.alone and not bracket.not_weight:
            return None if names_one_quantity(bracket) else bracket
    return None
