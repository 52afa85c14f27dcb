"""One order size said twice, in two languages or in two units."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.orders.brackets import bracket_text
from tracker.trade.quantities import MassUnit

_TWICE = {
    "fr-en": ("Moins de 10 000 lb / Under 10,000 lb", "10 000 lb et plus / 10,000 lb and over"),
    "de-en": ("unter 5 t / under 5 t", "ab 5 t\nfrom 5 t"),
    "es-en": ("Menos de 5 t / Less than 5 t", "5 t o más / 5 t and over"),
    "sv-en": ("under 5 t / below 5 t", "från 5 t | from 5 t"),
}


@pytest.mark.parametrize(("small", "large"), _TWICE.values(), ids=_TWICE)
def test_one_order_size_said_twice_is_one(small, large):
    below, above = bracket_text(small), bracket_text(large)
    assert below.start is None
    assert above.end is None
    assert below.end.kg(MassUnit.TONNE) == above.start.kg(MassUnit.TONNE) in (5000, Decimal("4535.9237"))


@pytest.mark.parametrize("text", ["Moins de 5 t / Under 10 t", "ab 5 t / from 10 t", "5 t o más / 15 t and over"])
def test_two_order_sizes_are_none(text):
    assert bracket_text(text).not_weight


def test_where_one_begins_and_where_it_ends_are_one():
    size = bracket_text("ab 5 t / bis 10 t")
    assert (size.start.kg(MassUnit.TONNE), size.end.kg(MassUnit.TONNE)) == (5000, 10000)


def test_such_heads_are_asked_about_where_the_two_differ():
    heads = ["Board", "g/m²", "µm", "Moins de 5 000 kg / Under 10,000 kg", "10 000 kg et plus / 10,000 kg and over"]
    found = lines([["EUR per tonne"], heads, ["GC1", 250, 400, 1100, 1080]])
    assert [codes(line) for line in found.values()] == [{"bracket-unread"}, set()]


@pytest.mark.parametrize(
    ("head", "kilograms"),
    [("5 tons (10,000 lb) +", 4536), ("5 tons+ (10,000 lb)", 4536), ("5 tons (30,000 lb) +", None)],
)
def test_an_order_size_in_two_units(head, kilograms):
    rows = [["US$ per short ton"], ["Grade", "Caliper pt", "lb/MSF", "< 10,000 lb", head], ["CCNB", 18, 70, 948, 901]]
    line = lines(rows)["E3"]
    assert (line.offer.from_kg and round(line.offer.from_kg)) == kilograms
    assert ("bracket-unread" in codes(line)) is (kilograms is None)
