"""Money of goods that come back, of deposits and late payment: no charge on prices, and no discount from them."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.changes.price_changes import price_changes
from tracker.intake.values.freight.charges import find_charges


@pytest.mark.parametrize(
    "note",
    [
        "Les retours se font sur accord, moins 10 % pour frais.",
        "Net 30 days; a service charge of 1.5% a month runs on late money.",
        "Wooden pallets bear a $20 deposit, credited on return within 3 months.",
        "Unopened rolls may come back against a 15% restocking fee.",
    ],
)
def test_it_is_no_charge(note):
    assert not [charge for charge in find_charges(note) if charge.amounts]


@pytest.mark.parametrize(
    "note",
    [
        "Obrutna rullar tas i retur mot 10 % avdrag.",
        "La consigne sur les palettes est de 18 $ et vous est remise au retour.",
        "Goods returned within a week earn a credit less 5 %.",
    ],
)
def test_it_is_no_discount(note):
    assert not price_changes(note)


def test_a_charge_beside_a_deposit_still_is_one():
    (charge,) = [one for one in find_charges("Energy surcharge 3 %, pallet deposit 12 EUR") if one.amounts]
    assert (charge.label, charge.percent) == ("Energy surcharge", True)


@pytest.mark.parametrize(
    ("note", "charged"),
    [
        ("Nous avons mis fin à la surcharge énergie de 3 % en janvier 2026.", False),
        ("The 3% energy surcharge has fallen away.", False),
        ("An energy surcharge of 3% applies.", True),
    ],
)
def test_a_surcharge_that_was_done_away_with_is_not_charged(note, charged):
    rows = [["Date: 2026-06-01"], ["Board", "g/m²", "µm", "EUR/t"], ["GC2", 300, 490, 1215], [None], [note]]
    (line,) = lines(rows).values()
    assert bool(line.offer.charges) is charged
