"""Sums as a buyer checks them on a pocket calculator: few digits, and never fewer than the shown result needs.

Underneath all is exact. What is shown is rounded just so far that whoever types it in gets the shown result.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Context, Decimal
from fractions import Fraction

from tracker.trade.exact import half_up

_FEWEST_DIGITS, _MOST_DIGITS = 4, 12
_MONEY_DIGITS, _MONEY_PLACES = 6, 2


@dataclass(frozen=True, slots=True)
class Part:
    """One number of a product. over: it divides. given: its text where it is quoted or agreed and so never rounded.
    digits: how many it is known by, the fewest to be shown."""

    value: Fraction
    unit: str = ""
    over: bool = False
    given: str = ""
    digits: int = _FEWEST_DIGITS


def product(parts: Sequence[Part]) -> Fraction:
    """The exact result."""
    return _multiplied(parts, [part.value for part in parts])


def product_text(parts: Sequence[Part]) -> str:
    """'$1,240 × 74 lb/MSF ÷ 2,000 lb = 45.88'; a lone number is only said."""
    exact = amount_text(product(parts))
    shown: list[Fraction] = []
    for digits in range(_FEWEST_DIGITS, _MOST_DIGITS):
        shown = [part.value if part.given else rounded(part.value, max(digits, part.digits)) for part in parts]
        if amount_text(_multiplied(parts, shown)) == exact:
            break
    if len(parts) == 1:
        return _said(parts[0], shown[0])
    signs = ["", *(" ÷ " if part.over else " × " for part in parts[1:])]
    terms = (f"{sign}{_said(part, value)}" for sign, part, value in zip(signs, parts, shown, strict=True))
    return f"{''.join(terms)} = {exact}"


def addition_text(terms: Sequence[Fraction]) -> str:
    """'45.88 + 2.34 = 48.22', with more places where the rounded terms would not add up."""
    exact = amount_text(sum(terms, Fraction(0)))
    texts: list[str] = []
    for more in range(_MOST_MORE_PLACES):
        shown = [_to_places(term, _places(term) + more) for term in terms]
        texts = [figure_text(value) if more else amount_text(value) for value in shown]
        if amount_text(sum(shown, Fraction(0))) == exact:
            break
    return f"{' + '.join(texts)} = {exact}"


_MOST_MORE_PLACES = 12
"""So many for a sum that lies just below the half of its last shown place."""


def amount_text(value: Fraction) -> str:
    """An amount of money: two places, fewer where it is long, more where it is small: '45.88', '18,450', '0.01831'."""
    places = _places(value)
    return f"{_decimal(_to_places(value, places)):,.{places}f}"


def figure_text(value: Fraction) -> str:
    """A number that ends, without trailing zeros: '2,204.62', '78'."""
    text = f"{_decimal(value):,f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def rounded(value: Fraction, digits: int) -> Fraction:
    """The value to so many significant digits."""
    return Fraction(Context(prec=digits).divide(Decimal(value.numerator), Decimal(value.denominator)))


def _multiplied(parts: Sequence[Part], values: Sequence[Fraction]) -> Fraction:
    result = Fraction(1)
    for part, value in zip(parts, values, strict=True):
        result = result / value if part.over else result * value
    return result


def _said(part: Part, value: Fraction) -> str:
    text = part.given or figure_text(value)
    return f"{text} {part.unit}" if part.unit else text


def _places(value: Fraction) -> int:
    if not value:
        return _MONEY_PLACES
    before_point = _decimal(abs(value)).adjusted() + 1
    if before_point <= 0:
        return _FEWEST_DIGITS - before_point
    return max(0, min(_MONEY_PLACES, _MONEY_DIGITS - before_point))


def _to_places(value: Fraction, places: int) -> Fraction:
    return Fraction(half_up(value, places))


def _decimal(value: Fraction) -> Decimal:
    return Context(prec=40).divide(Decimal(value.numerator), Decimal(value.denominator))
