"""By how much prices change: a rate in per cent or an amount of money, and the words and signs right before one."""

import re
from functools import lru_cache

from tracker.intake.values.orders.masses import Mass, find_masses
from tracker.intake.values.prices.currency import currency_text, find_currencies
from tracker.intake.words.lists import pattern, phrases
from tracker.intake.words.phrases import Found

SHARE = re.compile(r"\d+(?:[.,]\d+)?\s*%")
"""A share of the price, as it is written."""
_RATE = re.compile(r"\d\s*%")
_NEXT_RATE = re.compile(r"[.:]?\s*\d+(?:[.,]\d+)?\s*%")
_FIGURE = re.compile(r"\.?\s*[:=]?\s*([^\W\d]{0,3}[$€£]?)\s*\d+(?:[.,]\d+)*\s*")
_MINUS = re.compile(r"(?<![±+/\d%-])(?<![±+/]\s)(?<!\d\s)(?:[-−]|\./\.)\s*\d+(?:[.,]\d+)?\s*%")
_PLUS = re.compile(r"\+(?=\s*[^\W\d]{0,3}[$€£]?\s*\d)")
EITHER_WAY = re.compile(r"±|\+\s*/\s*[-−–]|\+\s*\d+(?:[.,]\d+)?\s*%?\s*/?\s*[-−–]\s*\d")


@lru_cache(maxsize=8192)
def in_signs(text: str) -> str:
    """The text with its words for per cent as signs: '3 percent', '3 v. H.' -> '3 %'."""
    for match in reversed(phrases("percent").find(text)):
        if text[: match.start].rstrip()[-1:].isdigit():
            text = f"{text[: match.start]}%{text[match.end :]}"
    return text


def names_percent(text: str) -> bool:
    """Whether it holds the sign or a word for per cent."""
    return "%" in text or bool(phrases("percent").find(text))


def states_rate(text: str) -> bool:
    return bool(_RATE.search(text))


def states_amount(text: str) -> bool:
    """A rate, or a sum of money: '$40/ST', '15 EUR'; 'US$ per short ton' is none."""
    return states_rate(text) or any(_is_sum(text, currency.words) for currency in find_currencies(text))


def _is_sum(text: str, currency: str) -> bool:
    before, _, behind = text.partition(currency)
    return before.rstrip()[-1:].isdigit() or behind.lstrip(" .")[:1].isdigit()


def ends_in_per(text: str) -> bool:
    """What stands behind is what money is for: '$2 per', 'EUR/'."""
    *_, last = re.split(r"[\s.,;:()]+", text.rstrip())
    return text.rstrip().endswith("/") or phrases("per").whole(last) == "strong"


def masses_of_orders(text: str) -> tuple[Mass, ...]:
    """The weights of orders: the 20 t of '3 % from 20 t'; the 100 lb of '$2 per 100 lb' are none."""
    return tuple(mass for mass in find_masses(text) if not ends_in_per(text.partition(mass.words)[0]))


def rate_follows(text: str) -> bool:
    return bool(_NEXT_RATE.match(text))


def minus_before_a_rate(text: str) -> bool:
    """'All prices - 2 %', 'Preise ./. 2 %'; the dash of '3-5 %' and of '+/-5 %' is none."""
    return bool(_MINUS.search(text))


def off_behind_a_rate(text: str) -> bool:
    """'12 % off'."""
    ends = [match.end() for match in _RATE.finditer(text)]
    return any(not text[end : match.start].strip() for match in phrases("off_words").find(text) for end in ends)


def amount_follows(text: str) -> bool:
    """'25 for C2S' and '$20/ST' are amounts of money, '3 %' is a rate; '1 week' and '18 pt' are none."""
    figure = _FIGURE.match(text)
    if figure is None:
        return False
    rest = text[figure.end() :]
    if figure.group(1) and currency_text(figure.group(1)) is not None:
        return True
    word = re.match(r"[^\W\d]+", rest)
    return word is None or bool(phrases("addition_links").find(word.group()) or find_currencies(word.group()))


def is_added(text: str) -> bool:
    """A plus, or a word for more, stands at an amount: '+$20/ST', 'add 25', 'zzgl. 3 %', '$15/ST extra', 'Aufpreis bei
    C2S: 30 EUR/t'."""
    if EITHER_WAY.search(text):
        return False
    ends = [match.end() for match in _PLUS.finditer(text)]
    words = (match for section in ("additions", "plus_words") for match in phrases(section).find(text))
    ends += [match.end for match in words if not _compares(text, match)]
    if any(amount_follows(text[end:]) for end in ends):
        return True
    behind = any(_ends_in_amount(text[: match.start]) for match in phrases("more_words").find(text))
    named = any(match.value == "upcharge" for match in phrases("more_words").find(text))
    return (behind or named) and states_amount(text)


def _compares(text: str, plus: Found[str]) -> bool:
    """'Plus de 5 %' and 'más del 5 %' are more than a rate, and add none."""
    sizes = phrases("bracket").find(text)
    return any(size.value == "above" and size.start == plus.start and size.end > plus.end for size in sizes)


_UNIT = rf"\s{pattern('per', 'strong')}\s(?P<unit>[^\d\s]{{1,12}}(?:\s[^\d\s]{{1,8}})?)"
_AMOUNT_BEFORE = re.compile(rf"\d\s*(?:%|[^\d\s]{{1,12}}(?:\s[^\d\s]{{1,6}})?)?(?:{_UNIT})?\s*$", re.IGNORECASE)
"""'$15/ST', '30 EUR/t', '20 euro per tonne' or '3 %' right before a word."""


def _ends_in_amount(text: str) -> bool:
    """The 'tonne and' of 'at 20 euro per tonne and more' is no unit."""
    found = _AMOUNT_BEFORE.search(text)
    if found is None or found["unit"] is None:
        return found is not None
    return phrases("basis").whole(found["unit"]) is not None
