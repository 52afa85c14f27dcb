"""What an answer says, in words: answers are kept as short keys and values that no person should have to read."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from tracker.trade.exact import KG_PER_LB, half_up
from tracker.trade.grades import grades
from tracker.trade.layout import MARKED_ROLES
from tracker.trade.offer import LEAVE_OUT, Choice

_TONS = {"short": "a short ton (2,000 lb)", "metric": "a tonne (1,000 kg)"}
_AREAS = {"msf": "pounds on 1,000 ft²", "3000ft2": "pounds on 3,000 ft²", "gsm": "g/m²"}
_SIGNS = {".": "point", ",": "comma"}
_ORDERS = {"dmy": "day first, then month", "mdy": "month first, then day"}
_BASES = dict(next(known.units for known in MARKED_ROLES if known.role == "price"))


def answer_words(key: str, value: str, said: str = "") -> str:
    """'“Fenlight” is SBS', 'the ton is a short ton (2,000 lb)'; what is not known is told as it is kept.

    `said`: the sheet's own words, with their capitals, where they are at hand; the key has them folded.
    """
    kind, _, words = key.partition(":")
    words = said if words and said else words
    if value == LEAVE_OUT:
        return f"lines with “{said}” are left out" if said else "the lines of this question are left out"
    say = _SAY.get(kind)
    told = say(words, value) if say is not None else f"{key} is {value}"
    # Such an answer is about the prices beside which nothing stands, and leaves all others alone.
    return told.replace("prices", _WITHOUT_WORDS[key], 1) if key in _WITHOUT_WORDS else told


_WITHOUT_WORDS = {"currency:": "prices that name no currency", "basis:": "prices that say no unit"}


def sentence(words: str) -> str:
    """'Prices are in USD.'"""
    return f"{words[:1].upper()}{words[1:]}."


def other_answers(key: str, value: str) -> tuple[Choice, ...]:
    """What else a question of this key can be answered with; () where that is not for a list to offer."""
    offered = _OFFERED.get(key.partition(":")[0])
    choices = () if offered is None else tuple(Choice(each, label) for each, label in offered().items())
    return tuple(choice for choice in choices if choice.value != value)


USUAL_CURRENCIES = ("USD", "EUR", "GBP", "CAD", "SEK", "NOK", "DKK", "PLN", "CHF", "CZK")
_OFFERED: Mapping[str, Callable[[], Mapping[str, str]]] = {
    "grade": lambda: {code: f"{code} · {grade.name.says}" for code, grade in grades().items()},
    "currency": lambda: {code: code for code in USUAL_CURRENCIES},
    "ton": lambda: _TONS,
    "weight-basis": lambda: _AREAS,
    "decimal": lambda: _SIGNS,
    "date-order": lambda: _ORDERS,
    "basis": lambda: _BASES,
}


def _currency(words: str, value: str) -> str:
    """Of a head and a heading that name different ones, the words of each stand between strokes."""
    told = [f"“{part}”" for part in words.split(" / ") if part]
    if len(told) > 1:
        return f"where {' and '.join(told)} differ, prices are in {value}"
    return f"{told[0]} is {value}" if told else f"prices are in {value}"


def _basis(words: str, value: str) -> str:
    per = _BASES.get(value, value)
    return f"“{words}” is {per}" if words else f"prices are {per}"


def size_words(value: str) -> str:
    """'from 4,536 kg (10,000 lb)', 'of any size': an order size as it is kept, in both units of orders."""
    low, _, high = value.partition(":")
    bounds = [f"{word} {_mass(kg)}" for word, kg in (("from", low), ("below", high)) if kg]
    return " ".join(bounds) or "of any size"


def _mass(kg: str) -> str:
    in_lb = half_up(float(kg) / float(KG_PER_LB), 0)
    return f"{half_up(float(kg), 0):,f} kg ({in_lb:,f} lb)"


def _bracket(words: str, value: str) -> str:
    return f"“{words}” is an order {size_words(value)}"


_SAY: Mapping[str, Callable[[str, str], str]] = {
    "vendor": lambda _, value: f"the vendor is {value}",
    "currency": _currency,
    "ton": lambda _, value: f"the ton is {_TONS.get(value, value)}",
    "weight-basis": lambda _, value: f"basis weight is in {_AREAS.get(value, value)}",
    "decimal": lambda _, value: f"the decimal sign is the {_SIGNS.get(value, value)}",
    "date-order": lambda _, value: f"dates are {_ORDERS.get(value, value)}",
    "grade": lambda words, value: f"“{words}” is {value}" if words else f"boards without a name are {value}",
    "basis": _basis,
    "bracket": _bracket,
    "price": lambda _, value: f"the price is {value}",
    "price-change": lambda words, _: f"prices stand as they are beside “{words}”",
}
