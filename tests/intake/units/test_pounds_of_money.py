"""Pounds per a weight are money; per an area they weigh the board."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.heads.header import header
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.prices.price_sentences import SaysCurrency


@pytest.mark.parametrize("unit", ["pounds per tonne", "Pounds/tonne", "libras por tonelada", "pounds per kilo"])
def test_a_weight_is_not_per_another(unit):
    said = [one.currency.codes for one in statements(f"Making orders - {unit}") if isinstance(one, SaysCurrency)]
    assert said == [("GBP",)]
    assert header(f"Price, {unit}").currency is not None


@pytest.mark.parametrize(
    "text", ["pounds per MSF", "pounds per 3,000 sq ft", "minimum 5,000 pounds per tonne ordered", "lb per tonne"]
)
def test_other_pounds_are_weights(text):
    assert not any(isinstance(one, SaysCurrency) for one in statements(text))
    assert header(text).currency is None


def test_a_heading_over_prices_says_it_in_words():
    heading = "Making orders - pounds per tonne, delivered, 5-6 weeks"
    rows = [["Tarn Board Merchants Ltd"], [heading], ["Grade", "gsm", "Price"], ["GC2", 250, 1098]]
    (line,) = lines(rows).values()
    assert (str(line.state), line.offer.currency, str(line.offer.basis)) == ("accepted", "GBP", "tonne")


@pytest.mark.parametrize("head", ["Pounds per tonne", "Waste, pounds per tonne", "Starch (pounds per tonne)"])
def test_a_column_of_pounds_beside_prices_is_no_price(head):
    rows = [["Tarn Board Ltd"], ["Grade", "Caliper (pt)", head, "Price USD/t"], ["SBS", 18, 55, 1200]]
    assert [(line.offer.price, line.offer.currency) for line in lines(rows).values()] == [(1200, "USD")]
