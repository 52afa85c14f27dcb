"""The number of a note behind the name of a load counts no loads."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.orders.brackets import bracket_text

TERMS = [["Delivered prices, $ per short ton (2,000 lb)"]]
NOTES = [["(1) LTL: orders under 40,000 lb"], ["(2) TL: orders of 40,000 lb and more"]]


def _starts(*heads):
    sheet = [["Tarn Board Inc."], *TERMS, ["Grade", "Caliper (pt)", *heads], ["SBS C1S", 14, 1268, 1194], *NOTES]
    return [line.offer.from_kg and round(line.offer.from_kg) for line in lines(sheet).values()]


@pytest.mark.parametrize("heads", [("LTL (1)", "TL (2)"), ("LTL 1)", "TL 2)")])
def test_a_truckload_with_a_note_is_one(heads):
    assert _starts(*heads) == [None, 18144]


def test_two_truckloads_are_two():
    assert _starts("1 TL", "2 TL") == [18144, 36287]


@pytest.mark.parametrize("text", ["2 TL", "pallets (5)", "TL 2"])
def test_a_count_beside_a_load_stays_one(text):
    bracket = bracket_text(text)
    assert bracket is not None
    assert bracket.start is not None
