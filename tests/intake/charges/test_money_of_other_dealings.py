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


@pytest.mark.parametrize(
    "note",
    [
        "Reprise des déchets et emballage : supplément 8 EUR/t.", "Retur av pall ingår, tillägg 80 SEK/ton.",
        "Der monatlich neu berechnete Rohstoffzuschlag beträgt 25 EUR/t.", "Supplément par mois fixé : 12 EUR/t",
        "Al mes se fija un recargo de 25 EUR/t.", "Per månad fastställt tillägg 250 SEK/ton.",
        "Monatlich angepasster Zuschlag 25 EUR/t.",
    ],
)  # fmt: skip
def test_what_comes_per_ton_beside_them_is_open(note):
    (charge,) = find_charges(note)
    assert not charge.amounts


def test_what_comes_beside_returns_is_charged():
    (charge,) = find_charges("In addition to any returns, a packing surcharge of 10 EUR/t applies.")
    assert charge.amounts


@pytest.mark.parametrize(
    "note",
    [
        "Returns bear a surcharge of 40 EUR/t.", "In the event of late payment, a surcharge of 5 EUR/t applies.",
        "For returned goods, a handling charge of 10 EUR/t applies.", "En cas de retour, supplément 8 EUR/t.",
        "Bei Rückgabe, Zuschlag 8 EUR/t.", "Late payment surcharge 2 % per month.",
        "En cas de retard, supplément de 1,5 % par mois.", "Vid retur, tillägg 80 SEK/ton.",
    ],
)  # fmt: skip
def test_what_comes_per_ton_for_them_is_none(note):
    assert not find_charges(note)
