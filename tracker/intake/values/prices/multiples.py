"""Figures that only become prices when they are multiplied: 'x 0.95', 'a factor of 0.95', 'in thousands', "('000)"."""

import re
from functools import lru_cache

from tracker.intake.values.boards.caliper import caliper_unit
from tracker.intake.values.boards.weight import weight_units
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.orders.masses import end_of_unit
from tracker.intake.values.prices.basis import basis_span
from tracker.intake.values.prices.currency import counted_in_thousands, currency_text, find_currencies
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, tokens_of

# A word and no figure stands before the sign: '700 x 1000 mm' is a sheet.
_TIMES = re.compile(r"(?<![^\W\d])([^\W\d]{1,40})\s+[×x]\s*\d", re.IGNORECASE)
_FACTOR = re.compile(r"\W{0,3}(?:[^\W\d]{1,5}\s+)?(?:0?[.,][5-9]|1[.,]\d)\d*(?!\d|\s*%)")
"""What follows 'factor' where prices are meant: 'of 0.95', ': 1,05'."""
_SHORT_FACTOR = re.compile(r"\s*(?:0[.,][5-9]\d?|1[.,][0-4]\d?)(?!\d|\s*%)")
"""'0,95', not '1.000'."""
_THOUSANDS = re.compile(
    r"(?<!\d)(?<!\d\s)(?:[×x*]\s*|\b(?:in|en|i)\s+)1[.,' ]?000\b|[×x*]\s*10(?:\^3|³)"
    r"|(?<![\d.,/])(?<!/\s)(?<!\d\s)(?<!\d['’])0{3}s?\b(?![.,]?\d)",
    re.IGNORECASE,
)
"""'x1000', '×10³', "'000" and '(000)'."""
_PRICES = frozenset({Role.PRICE, Role.NET_PRICE, Role.LIST_PRICE})


def multiplied(clause: str) -> bool:
    """Whether a part sentence says so of the prices: 'Multiply all prices by 1.05', 'List x 0.95', 'in thousands'."""
    if converts(clause) or _of_measures(clause):
        return False
    words = [match for match in phrases("multiplies").find(clause) if not _counts_weights(clause, match)]
    if _times_a_price(clause) or any(_takes_factor(clause[match.end :], match.value) for match in words):
        return True
    told = any(match.value in ("by", "counted") for match in words) or _TIMES.search(clause)
    return bool(told or _counts_thousands(clause)) and _speaks_of_money(clause)


@lru_cache(maxsize=1024)
def multiplied_in_head(text: str) -> bool:
    """Whether the head of a column of prices says so: 'EUR/t x1000', "Price ('000)", 'Price (thousands)'."""
    counted = (match for match in phrases("multiplies").find(text) if match.value == "counted")
    return any(not _counts_weights(text, match) for match in counted) or _counts_thousands(text)


def _counts_weights(text: str, match: Found[str]) -> bool:
    """'Order size in thousands of lb'."""
    behind = max((of.end for of in phrases("money_thousands").find(text) if of.start == match.start), default=match.end)
    return end_of_unit(fold(text), behind) is not None


def _counts_thousands(text: str) -> bool:
    """By a figure, no unit behind it, or by a word in brackets or beside a currency; 'x 1000 mm' and 'per thousand
    sheets' count no money."""
    if any(counted_in_thousands(text, each.words) for each in find_currencies(text)):
        return True
    counted = (match for match in _THOUSANDS.finditer(text) if not _behind_per(text[: match.start()]))
    if any(_of_money(text[match.end() :]) for match in counted):
        return True
    named = (match for match in phrases("multiplies").find(text) if match.value == "thousands")
    return any(_stands_beside_money(text[: match.start], text[match.end :]) for match in named)


def _behind_per(before: str) -> bool:
    """'Per 000' and "je '000" say what a price is for, as 'per 1000' does."""
    *_, last = before.rstrip(" '’").split() or [""]
    return last.endswith("/") or phrases("per").whole(last) is not None


def _of_money(behind: str) -> bool:
    word = re.match(r"[^\W\d]+", behind.lstrip(" ()"))
    return word is None or phrases("per").whole(word.group()) is not None or currency_text(word.group()) is not None


def _stands_beside_money(before: str, behind: str) -> bool:
    if before.rstrip()[-1:] == "(" and behind.lstrip(" .")[:1] == ")":
        return True
    *_, last = before.split() or [""]
    return currency_text(last) is not None and re.match(r"[\s.]*[^\W\d]", behind) is None


def converts(clause: str) -> bool:
    """'Multiply by 1.1023 for the price per metric ton' leads to another unit and changes no price; 'EUR/t x 1000' does
    not end in one."""
    words = {match.value for match in phrases("multiplies").find(clause)}
    if "converts" in words:
        return True
    if basis_span(clause) is None:
        return False
    times = _TIMES.search(clause)
    return "by" in words or (times is not None and bool(re.search(r"[^\W\d]", clause[times.end() :])))


def _of_measures(clause: str) -> bool:
    """'Multiply lb/MSF by 4.88' and 'points x 25.4' are about boards."""
    measures = bool(weight_units(clause)) or caliper_unit(clause) is not None
    return measures and not phrases("price_words").find(clause)


def _takes_factor(rest: str, kind: str) -> bool:
    if kind == "short_factor":
        return _takes_no_unit(rest)
    return kind in ("by", "factor") and _FACTOR.match(rest) is not None


def _takes_no_unit(rest: str) -> bool:
    """'0,95' by itself: '1.000 hojas' and '0,5 m²' behind a word that also means 'per' are what a price is for."""
    factor = _SHORT_FACTOR.match(rest)
    return factor is not None and phrases("basis").at(tokens_of(rest[factor.end() :]), 0) is None


def _times_a_price(clause: str) -> bool:
    """'List x 0.95' names what is multiplied."""
    times = _TIMES.search(clause)
    return times is not None and any(reading.role in _PRICES for reading in header_roles(times.group(1)))


def _speaks_of_money(clause: str) -> bool:
    return bool(phrases("price_words").find(clause) or find_currencies(clause))
