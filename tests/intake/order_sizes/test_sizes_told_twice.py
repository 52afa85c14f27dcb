"""Order sizes in two units, in pieces with their weight, in thousands of pounds; smallest orders by their label."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.orders.brackets import bracket_text
from tracker.intake.values.orders.masses import find_mass_units
from tracker.intake.values.orders.minimum import find_minimum
from tracker.trade.quantities import MassUnit

LB = Decimal("0.45359237")


def ends(text):
    said = bracket_text(text)
    return said and (said.start and said.start.words, said.end and said.end.words, said.not_weight)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("under 5 t (11,000 lb)", (None, "11,000 lb", "")),
        ("5 - 10 t (11,000 - 22,000 lb)", ("11,000 lb", "22,000 lb", "")),
        ("5 tons+ (10,000 lb)", ("10,000 lb", None, "")),
        ("under 20,000 lb (10 tons)", (None, "20,000 lb", "")),
        ("under 5 t (7,000 lb)", (None, None, "other_unit")),
        ("5 t and over (30,000 lb)", (None, None, "other_unit")),
    ],
)
def test_a_size_in_two_units_is_one_where_they_agree(text, said):
    assert ends(text) == said


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("moins de 4 palettes (< 3 000 kg)", (None, "3 000 kg", "")),
        ("4 palettes et plus (≥ 3 000 kg)", ("3 000 kg", None, "")),
        ("1-3 pallets (750-2,250 kg)", ("750 kg", "2,250 kg", "")),
        ("from 6 pallets (6 t)", (None, None, "other_unit")),
    ],
)
def test_pieces_weigh_what_their_brackets_say_with_a_sign(text, said):
    assert ends(text) == said


@pytest.mark.parametrize(
    "head", ["Order size in thousands of lb", "Order size, '000 lb", "Order (thousands of pounds)"]
)
def test_thousands_of_pounds_in_a_head_are_counted_as_such(head):
    rows = [["$/cwt"], ["Grade", "Caliper pt", "Lb/MSF", head, None], [None, None, None, "under 10", "10 and over"]]
    found = list(lines([*rows, ["CRB", 16, 63, 48.75, 46.5], ["CRB", 18, 70, 48.25, 46]]).values())[:2]
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found] == [(None, 10_000 * LB), (10_000 * LB, None)]
    assert [str(line.state) for line in found] == ["accepted", "accepted"]


def test_plain_pounds_in_a_head_stay_pounds():
    assert find_mass_units("Order size in lb") == (MassUnit.LB,)
    assert find_mass_units("Minimum 5,000 lb") == (MassUnit.LB,)
    assert find_mass_units("in thousands of kg") == (MassUnit.TONNE,)


@pytest.mark.parametrize(
    ("text", "kg"),
    [("Minimum order (lb): 5,000", 5000 * LB), ("Mindestmenge [kg] 5000", 5000), ("Minimum (per item): 5 t", 5000)],
)
def test_a_label_may_hold_the_unit_of_a_smallest_order(text, kg):
    assert find_minimum(text).kg(MassUnit.TONNE, ".") == kg


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("No order below 5 tonnes earns a rebate.", False),
        ("Kein Auftrag unter 5 t erhält einen Rabatt.", False),
        ("Kein Auftrag unter 5 t wird frei Haus geliefert.", False),
        ("Aucune commande sous 5 t n'est livrée franco.", False),
        ("El catálogo de bolsas tiene su propia tarifa, con un pedido mínimo de 50 kg.", False),
        ("No order below 5 tonnes is taken.", True),
        ("Kein Auftrag unter 5 t.", True),
    ],
)
def test_what_small_orders_go_without_is_no_smallest_order(text, told):
    assert (find_minimum(text) is not None) is told
