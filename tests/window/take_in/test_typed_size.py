"""Order sizes as buyers type them: tons, pounds and kilograms, one figure or two."""

import pytest

from tracker.trade.answers import objection
from tracker.window.look.figures import Units
from tracker.window.take_in.typed_size import size_typed


@pytest.mark.parametrize(
    ("typed", "value"),
    [
        ("5 tons", "4535.9237:"), ("5 short tons", "4535.9237:"), ("5 ST", "4535.9237:"), ("5ST", "4535.9237:"),
        ("5 t", "5000:"), ("5 tonnes", "5000:"), ("5 metric tons", "5000:"), ("5 MT", "5000:"),
        ("10,000 lb", "4535.9237:"), ("10000 lbs", "4535.9237:"), ("from 10,000 lb", "4535.9237:"),
        ("100 cwt", "4535.9237:"), ("2,000 kg", "2000:"), ("20 tons and up", "18143.6948:"), ("20 t+", "20000:"),
        ("5-10 t", "5000:10000"), ("5 – 10 t", "5000:10000"), ("5 to 10 tons", "4535.9237:9071.8474"),
        ("5 t - 10 t", "5000:10000"), ("500 lb - 5 tons", "226.796185:4535.9237"), ("0-5 t", ":5000"),
        ("below 20 t", ":20000"), ("< 20 t", ":20000"), ("up to 20 tons", ":18143.6948"), ("5 t or less", ":5000"),
        ("5.5 t", "5500:"), ("5,5 t", "5500:"), ("1,234.5 kg", "1234.5:"),
        ("5000:18000", "5000:18000"), ("18000:", "18000:"), (":18000", ":18000"),
        ("5000 : 18000 lb", "2267.96185:8164.66266"),
    ],
)  # fmt: skip
def test_what_a_buyer_types_is_an_order_size(typed: str, value: str) -> None:
    assert size_typed(typed, Units.US) == value
    assert objection("bracket:x", value) is None


def test_a_ton_is_that_of_the_units_chosen() -> None:
    assert size_typed("5 tons", Units.METRIC) == "5000:"
    assert size_typed("5 short tons", Units.METRIC) == "4535.9237:"


@pytest.mark.parametrize(
    "typed",
    [
        "",
        "5000",
        "5000-9000",
        "10.000 lb",
        "10,00,0 lb",
        "10-5 t",
        "5 t - 5 t",
        "a lot",
        "5 rolls",
        "t",
        "5 t and 3 rolls",
        "-5 t",
    ],
)
def test_what_may_be_anything_is_none(typed: str) -> None:
    assert size_typed(typed, Units.US) is None
