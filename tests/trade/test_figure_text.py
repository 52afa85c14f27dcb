"""A figure written straight as text is the text of the figure."""

from decimal import Decimal
from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from tracker.trade.exact import as_decimal, figure_text, plain_text, product_text


@given(st.fractions() | st.builds(Fraction, st.integers(), st.integers(1, 10**40)))
def test_the_text_is_the_decimals_own(value):
    assert figure_text(value) == plain_text(as_decimal(value))
    assert "E" not in figure_text(value)


@given(st.decimals(-(10**20), 10**20) | st.decimals(-1, 1, places=18), st.fractions())
def test_a_price_times_a_factor_reads_as_their_exact_product(value, factor):
    assert product_text(value, factor) == figure_text(Fraction(value) * factor)
    assert product_text(Decimal("0.1"), Fraction(1, 3)) == "0.0333333333333"
    assert product_text(Decimal(0), Fraction(-1)) == "0"
