"""Pounds per a weight are money; per an area they weigh the board."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.prices.money import find_price_unit, price_unit


@pytest.mark.parametrize("unit", ["pounds per tonne", "Pounds/tonne", "libras por tonelada", "pounds per kilo"])
def test_a_weight_is_not_per_another(unit):
    said = price_unit(unit)
    assert said is not None
    assert said.currency is not None
    assert said.currency.codes == ("GBP",)


@pytest.mark.parametrize(
    "text", ["pounds per MSF", "pounds per 3,000 sq ft", "minimum 5,000 pounds per tonne ordered", "lb per tonne"]
)
def test_other_pounds_are_weights(text):
    said = find_price_unit(text)
    assert said is None or said.currency is None


def test_a_heading_over_prices_says_it_in_words():
    heading = "Making orders - pounds per tonne, delivered, 5-6 weeks"
    rows = [["Tarn Board Merchants Ltd"], [heading], ["Grade", "gsm", "Price"], ["GC2", 250, 1098]]
    (line,) = lines(rows).values()
    assert (str(line.state), line.offer.currency, str(line.offer.basis)) == ("accepted", "GBP", "tonne")
