"""What a note adds to the prices is charged, or not known, but never left out; tax and small orders are told apart."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.freight.added_on_top import added_on_top
from tracker.intake.values.freight.charges import find_charges


def offer(note):
    (line,) = lines([["EUR/t, frei Haus"], ["Board", "g/m²", "µm", "Price"], ["GC2", 250, 410, 1098], [note]]).values()
    return line


@pytest.mark.parametrize(
    "note",
    [
        "An eco-fee of 8 EUR/tonne is added to all prices", "Se añade una tasa verde de 8 EUR/t a todos los precios",
        "Un éco-geste de 8 €/t s'ajoute à tous les prix", "Le supplément de carburant de 8 €/t s'ajoute aux prix",
    ],
)  # fmt: skip
def test_an_amount_under_any_name_is_charged(note):
    assert [float(charge.price) for charge in offer(note).offer.charges] == [8.0]
    assert "number-ambiguous" not in codes(offer(note))


@pytest.mark.parametrize(
    "note",
    ["A contribution of 2 % is added to the prices", "A contribution of 12 or 14 EUR per tonne is added to all prices"],
)
def test_what_can_t_be_read_leaves_the_sum_open(note):
    line = offer(note)
    assert "number-ambiguous" in codes(line)
    assert [charge.currency for charge in line.offer.charges] == ["XXX"]


@pytest.mark.parametrize(
    "note",
    [
        "VAT of 20 % is added to all prices", "La TVA 20 % s'ajoute aux prix", "Prices are added up on page 2",
        "For broken pallets 5 % is added to the prices",
    ],
)  # fmt: skip
def test_tax_and_small_orders_are_no_such_charge(note):
    assert not list(added_on_top(note))
    assert not find_charges(note)
