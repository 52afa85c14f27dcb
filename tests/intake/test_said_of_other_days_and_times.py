"""Days that prices had, and how often something is shipped, are no last days and no lead times."""

from decimal import Decimal

import pytest

from tracker.intake.values.lead import lead_text
from tracker.intake.values.rises_shown import makes_the_difference
from tracker.intake.values.units_denied import units_denied
from tracker.intake.values.validity import validity
from tracker.trade.basis import Basis


@pytest.mark.parametrize(
    "text",
    [
        "We have reduced our prices to 1 October 2025 levels.", "Price to 1 March 2026 list: +3 %",
        "Compared with our list to 1 October 2025", "No change of prices to 31 December 2026",
    ],
)  # fmt: skip
def test_prices_of_another_day_end_on_none(text):
    said = validity(text)
    assert said is None or said.last_day() is None
    assert validity("Prices to 30 September 2026 in EUR").last_day() is not None


def test_how_often_a_mill_runs_is_no_lead_time():
    assert [lead_text(text) for text in ("1 run / week", "2 dispatches / week", "3 trips (week)")] == [None] * 3
    assert lead_text("3-4 viikkoa / weeks").days == (21, 28)


def test_a_rise_explains_no_fall():
    rise, old, new = "Our prices rise by 50 EUR per tonne.", Decimal(950), Decimal(1000)
    assert makes_the_difference(rise, old, new, Basis.TONNE)
    assert not makes_the_difference(rise, new, old, Basis.TONNE)


def test_a_currency_denied_with_its_small_word():
    text, denied = units_denied("in CAD, not in USD")
    assert text == "in CAD"
    assert [unit.currency.codes for unit in denied] == [("USD",)]
