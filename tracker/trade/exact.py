"""The exact factors every conversion in the tracker goes through.

Pound, foot and inch are the international definitions of 1959 (also NIST Handbook 44, Appendix C; from memory, the
stored copies print 453.59237 g and 0.3048 m). A caliper point is a thousandth of an inch. All else follows by
exact arithmetic, so every constant is a Fraction.
"""

from decimal import MAX_EMAX, MAX_PREC, MIN_EMIN, ROUND_HALF_UP, Context, Decimal
from fractions import Fraction

KG_PER_LB = Fraction(45359237, 100_000_000)
M_PER_FOOT = Fraction(3048, 10_000)
MM_PER_INCH = Fraction(254, 10)
UM_PER_POINT = Fraction(254, 10)

LB_PER_SHORT_TON = 2000
LB_PER_LONG_TON = 2240
LB_PER_CWT = 100
KG_PER_TONNE = 1000
KG_PER_SHORT_TON = LB_PER_SHORT_TON * KG_PER_LB
KG_PER_LONG_TON = LB_PER_LONG_TON * KG_PER_LB
KG_PER_CWT = LB_PER_CWT * KG_PER_LB

M2_PER_SQUARE_FOOT = M_PER_FOOT**2
M2_PER_MSF = 1000 * M2_PER_SQUARE_FOOT

GSM_PER_LB_MSF = KG_PER_LB * 1000 / M2_PER_MSF
GSM_PER_LB_3000FT2 = GSM_PER_LB_MSF / 3

_TWELVE_DIGITS = Context(prec=12)
_SETTLED = Context(prec=10)
_EVERY_DIGIT = Context(prec=MAX_PREC, Emax=MAX_EMAX, Emin=MIN_EMIN)


def as_decimal(value: Fraction) -> Decimal:
    """The fraction to 12 significant digits, without trailing zeros: for output, never for further arithmetic."""
    return Decimal(figure_text(value))


def figure_text(value: Fraction) -> str:
    """The same as text, as plain_text would write it."""
    return _ratio_text(Decimal(value.numerator), Decimal(value.denominator))


def product_text(value: Decimal, factor: Fraction) -> str:
    """The text of a price times an exact factor, figure_text(Fraction(value) * factor), in a fifth of its time: no
    fraction is made and brought to lowest terms, which rounding to twelve digits has no need of."""
    return _ratio_text(_EVERY_DIGIT.multiply(value, Decimal(factor.numerator)), Decimal(factor.denominator))


def settled(value: float | Fraction) -> Decimal:
    """A computed figure without what storing and arithmetic left behind its tenth digit.

    A weight is kept to a billionth of a g/m², so 71.40 × 52.5 ÷ 100 comes out as 37.48499999998: that is 37.485.
    """
    numerator, denominator = value.as_integer_ratio()
    return _SETTLED.divide(Decimal(numerator), Decimal(denominator))


def half_up(value: float | Fraction, places: int) -> Decimal:
    """A figure rounded as every one that is shown: half away from zero on the settled value, as a calculator and a
    spreadsheet round.

    A long figure is settled further behind its last shown place, or 551,155,655.46 would first become …655.5.
    """
    figure = settled(value)
    least = figure.adjusted() + 1 + places + _BEHIND_THE_LAST
    if least > _SETTLED.prec:
        numerator, denominator = value.as_integer_ratio()
        figure = Context(prec=least).divide(Decimal(numerator), Decimal(denominator))
    return figure.quantize(Decimal(1).scaleb(-places), ROUND_HALF_UP, _EVERY_DIGIT)


_BEHIND_THE_LAST = 5
"""Digits behind the last shown one that a figure is settled to at least."""


def _ratio_text(numerator: Decimal, denominator: Decimal) -> str:
    divided = _TWELVE_DIGITS.divide(numerator, denominator).normalize(_TWELVE_DIGITS)
    # Plus, because it makes a plain nothing of a decimal's negative one.
    return format(_TWELVE_DIGITS.plus(divided), "f")


def plain_text(value: Decimal) -> str:
    """A decimal without exponent or trailing zeros, as the command line's JSON prints it: '1267.5', '0', '1200'."""
    text = format(value, "f")
    if text.startswith("-") and value.is_zero():
        text = text[1:]
    return text.rstrip("0").rstrip(".") if "." in text else text
