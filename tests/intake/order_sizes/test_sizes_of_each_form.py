"""'Rolls, 10,000 lb' and 'Price per cwt - Rolls': the form that board comes in beside its order size or its unit."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines, merged
from tracker.trade.offer import State

LB = Decimal("0.45359237")
SIZES = [(5000 * LB, 20000 * LB), (20000 * LB, None)] * 2


def sizes(found):
    return [(line.offer.from_kg, line.offer.below_kg) for line in found.values()]


@pytest.mark.parametrize("joint", [", ", " ", " - ", ": "])
@pytest.mark.parametrize(
    "forms", [("Rolls", "Sheets"), ("Rollen", "Bogen"), ("Bobines", "Feuilles"), ("Rullar", "Ark")]
)
def test_a_form_before_an_order_size(forms, joint):
    heads = [f"{form}{joint}{size}" for form in forms for size in ("5M lb", "20M lb")]
    found = lines([["USD per cwt"], ["Board", "pt", "lb/MSF", *heads], ["SBS C1S", 16, 68, 58.5, 57, 63.5, 62]])
    assert sizes(found) == SIZES
    assert {line.state for line in found.values()} == {State.ACCEPTED}


@pytest.mark.parametrize(
    "forms",
    [
        ("Price per cwt - Rolls", "Price per cwt - Sheets"),
        ("Rolls - price per cwt", "Sheets - price per cwt"),
        ("Price, rolls", "Price, sheets"),
        ("Preis je cwt - Rollen", "Preis je cwt - Bogen"),
    ],
)
def test_forms_beside_the_unit_over_order_sizes(forms):
    rows = [
        ["All in US dollars per cwt"],
        ["Board", "pt", "lb/MSF", forms[0], None, forms[1], None],
        [None, None, None, *["5M - 20M lb", "20M lb +"] * 2],
        ["SBS C1S", 16, 68, 58.5, 57, 63.5, 62],
    ]
    found = lines(rows, merged=merged((1, 3, 1, 4), (1, 5, 1, 6)))
    assert sizes(found) == SIZES
    assert {line.state for line in found.values()} == {State.ACCEPTED}


@pytest.mark.parametrize("heads", [("Rolls, 1-4", "Rolls, 5+"), ("1-4 rolls", "5+ rolls")])
def test_rolls_counted_are_asked(heads):
    found = lines([["USD per cwt"], ["Board", "pt", "lb/MSF", *heads], ["SBS C1S", 16, 68, 58.5, 57]])
    assert {line.state for line in found.values()} == {State.QUESTION}
