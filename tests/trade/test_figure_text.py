"""A figure written straight as text is the text of the figure."""

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from tracker.trade.exact import as_decimal, figure_text, plain_text


@given(st.fractions() | st.builds(Fraction, st.integers(), st.integers(1, 10**40)))
def test_the_text_is_the_decimals_own(value):
    assert figure_text(value) == plain_text(as_decimal(value))
    assert "E" not in figure_text(value)
