from decimal import ROUND_HALF_UP, Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tracker.trade.exact import GSM_PER_LB_MSF, M2_PER_MSF, as_decimal, half_up, plain_text, settled

fractions = st.fractions(min_value=-(10**15), max_value=10**15)


@given(fractions)
def test_as_decimal_is_within_half_a_unit_of_the_twelfth_digit(value):
    shown = as_decimal(value)
    if value == 0:
        assert shown == 0
        return
    assert abs(Fraction(shown) - value) <= abs(value) * Fraction(1, 2 * 10**11)


@given(st.decimals(-(10**7), 10**7, places=4))
def test_a_decimal_of_up_to_twelve_digits_comes_back_as_it_was(value):
    assert as_decimal(Fraction(value)) == value


@pytest.mark.parametrize(
    ("value", "text"),
    [
        (Fraction(1, 3), "0.333333333333"),
        (Fraction(2535, 2), "1267.5"),
        (Fraction(1200), "1200"),
        (Fraction(0), "0"),
        (Fraction(1, 10**9), "0.000000001"),
        (Fraction(10**30), "1" + "0" * 30),
        (Fraction(123456789012345678), "123456789012000000"),
        (Fraction(-1, 8), "-0.125"),
    ],
)
def test_a_fraction_prints_plainly(value, text):
    assert plain_text(as_decimal(value)) == text


@pytest.mark.parametrize(
    ("value", "text"),
    [
        ("1267.50", "1267.5"),
        ("0.00", "0"),
        ("-0.0", "0"),
        ("1E+3", "1000"),
        ("1200", "1200"),
        ("1.20E-7", "0.00000012"),
    ],
)
def test_plain_text_has_neither_exponent_nor_trailing_zeros(value, text):
    assert plain_text(Decimal(value)) == text


@given(st.decimals(allow_nan=False, allow_infinity=False, places=6, min_value=-(10**12), max_value=10**12))
def test_plain_text_keeps_the_value(value):
    assert Decimal(plain_text(value)) == value


@given(st.integers(1, 99_999), st.integers(100, 2_000))
def test_a_figure_through_a_kept_weight_is_the_one_of_the_quoted_weight(cents, tenths_of_a_pound):
    """A price per cwt and a weight in lb/MSF, kept to a billionth of a g/m² and brought back by floats."""
    pounds = Fraction(tenths_of_a_pound, 10)
    kept = float(round(pounds * GSM_PER_LB_MSF, 9))
    figure = cents / 100 * kept * float(M2_PER_MSF) / (1000 * 45.359237)
    exact = Fraction(cents, 100) * pounds / 100
    assert settled(figure) == settled(exact) == Decimal(exact.numerator) / exact.denominator
    assert half_up(figure, 2) == (Decimal(exact.numerator) / exact.denominator).quantize(Decimal("0.01"), ROUND_HALF_UP)


@pytest.mark.parametrize(
    ("value", "places", "said"),
    [
        (37.48499999998389, 2, "37.49"),
        (47.215, 2, "47.22"),
        (962.5, 0, "963"),
        (963.5, 0, "964"),
        (-2.5, 0, "-3"),
        (Fraction(2, 3), 3, "0.667"),
        (0.0, 2, "0.00"),
        (1e15, 0, "1000000000000000"),
    ],
)
def test_halves_are_rounded_up_wherever_a_figure_is_shown(value, places, said):
    assert format(half_up(value, places), "f") == said
