"""Order sizes and times said twice, in two languages, and units that stand beside an order size."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines, read
from tracker.intake.values.brackets import bracket_text
from tracker.intake.values.lead import lead_text
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
    "text", ["3–4 viikkoa / weeks", "3-4 viikkoa (weeks)", "3 - 4 týdny / Wochen", "3-4 weken/semaines"]
)
def test_a_unit_of_time_may_stand_behind_the_same_in_a_language_of_no_list(text):
    said = lead_text(text)
    assert (said.low, said.high) == (21, 28)


@pytest.mark.parametrize(
    "text",
    [
        "3–4 viikkoa",
        "3-4 viikkoa / pallets",
        "3-4 months / weeks",
        "3 weeks / days",
        "2 trucks / week",
        "40 tonnes / week",
    ],
)
def test_but_not_beside_no_unit_or_another_one(text):
    assert lead_text(text) is None


_UNITS = {
    "en": ("Scale from", "UoM"),
    "de": ("Staffel ab", "ME"),
    "es": ("Cantidad desde", "Unidad"),
    "sv": ("Från", "Enhet"),
}


@pytest.mark.parametrize(("start", "unit"), _UNITS.values(), ids=_UNITS)
def test_a_column_of_units_right_of_an_order_size_is_the_order_size_s(start, unit):
    head = ["Board", "g/m²", "Dicke mm", start, unit, "Betrag", "Währung", "pro", unit]
    rows = [
        ["GD2", "300", "0,39", "1.000", "KG", "868,00", "EUR", "1.000", "KG"],
        [None, None, None, "5.000", "KG", "839,00", "EUR", "1.000", "KG"],
    ]
    found = list(lines([head, *rows]).values())
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found] == [(1000, 5000), (5000, None)]
    assert {str(line.state) for line in found} == {"accepted"}


def test_one_that_is_no_unit_of_weight_is_asked_about():
    head = ["Board", "g/m²", "Dicke mm", "Staffel ab", "ME", "Betrag", "Währung", "pro", "ME"]
    board = ["GD2", "300", "0,39"]
    rows = [[*board, "5", "PAL", "868,00", "EUR", "1.000", "KG"], [*board, "10", "PAL", "839,00", "EUR", "1.000", "KG"]]
    assert {str(line.state) for line in lines([head, *rows]).values()} == {"question"}


@pytest.mark.parametrize(
    ("first", "vendor"),
    [
        ("PELLGATE PAPER STOCK CO.  *** SECONDS / SIDE ROLLS ***", "PELLGATE PAPER STOCK CO."),
        ("Tarnmoor Board Ltd -- price list 4", "Tarnmoor Board Ltd"),
        ("Lieferant: Kartonwerk Aarbach AG 100482", "Kartonwerk Aarbach AG"),
        ("Supplier: 100482 Tarnmoor Board", "Tarnmoor Board"),
        ("Supplier: Karton 2000", "Karton 2000"),
    ],
)
def test_a_vendor_s_name_ends_before_signs_and_before_its_number(first, vendor):
    assert read([[first], [], ["Board", "g/m²", "µm", "EUR/t"], ["GC1", 250, 400, 1100]]).vendor == vendor
