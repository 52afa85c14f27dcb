"""Heads of numbers and codes of papers: 'Quote ID', 'Price key'."""

from tracker.intake.values.heads.roles import MONEY
from tracker.intake.values.prices.basis import basis_span
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of


def numbers_papers(text: str) -> bool:
    """'Quote ID', 'Price key', 'ID oferta': a number or a code of what would be a price by itself, as 'Price/no' is."""
    found = tokens_of(text)
    if len(found) < 2 or not all(token.isalpha() or token in "_-." for token, _, _ in found):
        return False
    ends = phrases("identifiers").at(found, len(found) - 1) is not None
    begins = phrases("identifiers_ahead").at(found, 0) is not None
    return (ends or begins) and _names_a_price(text) and basis_span(text) is None


def _names_a_price(text: str) -> bool:
    return bool(phrases("price_words").find(text)) or any(
        match.value in MONEY for match in phrases("headers").find(text)
    )
