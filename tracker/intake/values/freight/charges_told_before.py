"""What is said of a charge that has ended: what it came to, that it is an old one, and for which goods it has ended."""

import re
from decimal import Decimal

from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, tokens_of

_FIGURE = r"((?<![\d.,])\d[\d.,]*(?<![.,]))"
_MONEY = r"[^\W\d]{1,3}\s?|[$€£]\s?"
_BEHIND = re.compile(rf"(?:\s*:)?(?:\s+[^\W\d]+){{0,3}}?\s*(?:{_MONEY})?{_FIGURE}\s?(?:%|[^\W\d]+|[$€£])?")
"""'Of $25/ST', 'in Höhe von 25 EUR/t', ': 4.5 %'."""
_AHEAD = re.compile(rf"(?:{_MONEY})?{_FIGURE}\s?(?:%|/?\s?[^\W\d]+|[$€£])?(?:\s?/?\s?[^\W\d]+){{0,3}}\s*-?\s*$")
"""'The 4 % energy surcharge', 'the $30 per short ton surcharge'."""


def figures_beside(ahead: str, behind: str) -> frozenset[Decimal]:
    """The amount right beside a charge's name, in its readings; none where no money and no percentage stands there."""
    found = _BEHIND.match(behind) or _AHEAD.search(ahead)
    if found is None or not (find_currencies(found[0]) or "%" in found[0] or phrases("percent").find(found[0])):
        return frozenset()
    return frozenset(reading.value for reading in number_readings(found[1]))


def is_earlier(ahead: str, behind: str) -> bool:
    """'The old energy surcharge', 'el recargo de energía anterior'."""
    return bool(phrases("earlier").find(ahead)) or phrases("earlier").at(tokens_of(behind), 0) is not None


def of_some_alone(behind: str) -> bool:
    """'For tonnage in stock', 'für Lagerware'; not 'for all boards', 'on the price' and 'for 2026'."""
    led = phrases("ended_for").at(tokens_of(behind), 0)
    if led is None or led.value != "leads":
        return False
    of_whom = behind[led.end :]
    everybody = any(match.value == "everybody" for match in phrases("ended_for").find(of_whom))
    said = any(map(str.isalpha, of_whom)) and not any(map(str.isdigit, of_whom))
    return said and not (everybody or find_dates(of_whom) or phrases("price_words").find(of_whom))


def of_some_customers(part: str) -> bool:
    """'Canadian customers', 'customers in Canada', 'Vertragskunden'; not 'our customers', 'all customers' and 'the
    customer'."""
    found = phrases("some_customers").find(part)
    named = (match for match in found if match.value == "any")
    return any(match.value == "apart" for match in found) or any(
        _is_told_apart(part[: match.start], part[match.end :]) for match in named
    )


def _is_told_apart(before: str, behind: str) -> bool:
    told = phrases("some_customers").at(tokens_of(behind), 0)
    if told is not None and told.value == "told":
        return True
    ahead = _LAST.search(before)
    if ahead is None:
        return False
    word, next_word = ahead[1], _NEXT.match(behind)
    if any(lead.end == len(before.rstrip()) for lead in _leads(before)):
        # 'Aux clients canadiens'.
        return next_word is not None and phrases("says_nothing_more").whole(next_word[1]) is None
    return all(phrases(section).whole(word) is None for section in ("ended_for", "articles", "says_nothing_more"))


def _leads(before: str) -> list[Found[str]]:
    return [match for match in phrases("ended_for").find(before) if match.value == "leads"]


_NEXT = re.compile(r"\s+([^\W\d_]+)")
_LAST = re.compile(r"([^\W\d_][^\s(),;:]*)\s+$")
