"""Texts that are prices, or stand in the place of one, and so head no column."""

import re

from tracker.intake.values.orders.brackets import bracket_text
from tracker.intake.values.prices.currency import currency_phrases
from tracker.intake.values.prices.money import price_text, price_unit
from tracker.intake.values.prices.price_terms import price_and_terms


def is_money(text: str) -> bool:
    """'$1,145/ST', '54.25 cents per pound, to you', and '$1,205/ST ($36.15/MSF)', which is more than one price; '1 140
    €/t (min. 5 t)' with its terms."""
    return _is_one_amount(text) or _begins_with_money(text) or _has_terms(text)


def _has_terms(text: str) -> bool:
    """A bare figure too has its lead time behind it, as in '1140 (ex stock)'; '240 (min. 5 t)' may head a basis weight
    with an order size."""
    terms = price_and_terms(text)
    price = price_text(terms.price) if terms is not None else None
    bare = price is not None and price.basis is None and bracket_text(text) is None
    return price is not None and (price.currency is not None or bare)


def _is_one_amount(text: str) -> bool:
    price = price_text(text)
    if price is None or not price.amounts or price.currency is None:
        return False
    if price.rest and (price.basis is None or not _counts_money(text)):
        # '54.25 cents per pound, to you' is a price whatever the words behind it mean.
        return False
    # The 'fr' of 'fr 5 000 kg' is a franc to some and 'from' to others; the kilograms say which.
    bracket = bracket_text(text)
    return bracket is None or bracket.alone


_FIGURE_FIRST = re.compile(r"\s*\d[\d.,]*\s?")


def _counts_money(text: str) -> bool:
    """It begins with a figure and the currency that is counted; '1000 kg, EUR' counts kilograms."""
    figure = _FIGURE_FIRST.match(text)
    return figure is not None and any(match.start == 0 for match in currency_phrases().find(text[figure.end() :]))


_MONEY_FIRST = re.compile(r"\s*(?:[A-Z]{2,3}\s?)?[$€£]\s?\d")


def _begins_with_money(text: str) -> bool:
    """'$1,205/ST ($36.15/MSF)' heads nothing, though it is more than one price; '$ 1,000 ft²' is a unit."""
    return _MONEY_FIRST.match(text) is not None and price_unit(text) is None


_HAS_A_FOOTNOTE = re.compile(r"[^\W\d]\s*\(\d\)\s*$")
"""'Nouveau prix (1)'."""
_ENDS_ON_A_DAY = re.compile(r"[^\W\d]\s+\d{1,2}\.\d{1,2}\.\)?\s*$")
"""'NEU ab 1.4.' names the day from which on a price holds."""


def is_price(text: str) -> bool:
    """A figure with nothing beside it that is not of a price, but for the day from which on one holds."""
    if _ENDS_ON_A_DAY.search(text) or _HAS_A_FOOTNOTE.search(text):
        return False
    price = price_text(text)
    return price is not None and bool(price.amounts) and not price.rest
