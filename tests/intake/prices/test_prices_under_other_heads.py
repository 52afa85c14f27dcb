"""Prices under heads that are called something else, and measures under the heads of boards."""

import pytest

from tests.intake.sheets import lines, merged
from tracker.trade.offer import State


def _told(found):
    return {at: (line.state is State.ACCEPTED, line.offer.price, line.offer.basis) for at, line in found.items()}


@pytest.mark.parametrize("head", ["Nous proposons", "Article", "Lieu"])
def test_money_and_unit_in_nearly_every_row_are_prices_whatever_the_head(head):
    rows = [
        ["Sorte", "g/m²", "µm", head],
        ["GC2", 250, 400, "1 235 € la tonne"],
        ["GT2", 340, 450, "865 € la tonne"],
        ["GD2", 350, 470, "nous consulter"],
    ]
    found = _told(lines(rows))
    assert (found["D2"], found["D3"]) == ((True, 1235, "tonne"), (True, 865, "tonne"))
    assert "D4" not in found


def test_boards_under_a_head_of_boards_are_no_prices():
    rows = [["Article", "Prix €/t"], ["GC2 250 g/m² 400 µm", 1235], ["GT2 340 g/m² 450 µm", 865]]
    assert set(lines(rows)) == {"B2", "B3"}


@pytest.mark.parametrize("unit", ["mic", "µm", "microns"])
def test_the_thickness_of_each_grade_stands_beside_its_prices_and_is_none(unit):
    rows = [
        ["€ per tonne, delivered"],
        ["gsm", "GC1 (folding boxboard)", None, None, "GT2 (triplex)"],
        [None, unit, "under 3 t", "from 3 t", unit, "under 3 t", "from 3 t"],
        [230, 365, 1335, 1270, 300, 925, 870],
        [250, 400, 1325, 1260, 325, 918, 863],
    ]
    found = lines(rows, merged=merged((1, 0, 2, 0), (1, 1, 1, 3), (1, 4, 1, 6)))
    assert set(found) == {f"{column}{row}" for column in "CDFG" for row in (4, 5)}
    assert [found[at].offer.caliper_um for at in ("C4", "F4", "D5", "G5")] == [365, 300, 400, 325]


def test_a_charge_that_no_price_stands_beside_is_asked_about():
    rows = [["gsm", "microns", "Charge per tonne"], [300, 390, 838.5], [350, 465, 829]]
    found = lines([["GD2, every rate in pounds sterling"], *rows])
    assert {at: line.state for at, line in found.items()} == {"C3": State.QUESTION, "C4": State.QUESTION}


def test_a_charge_beside_a_price_is_charged():
    rows = [["gsm", "microns", "Rate £/tonne", "Charge per tonne"], [300, 390, 838.5, 12], [350, 465, 829, 12]]
    found = lines([["GD2"], *rows])
    assert [[charge.price for charge in line.offer.charges] for line in found.values()] == [[12], [12]]


@pytest.mark.parametrize(
    ("title", "basis"),
    [
        ("Preisanpassung Karton, Berechnung je 1000 kg", "tonne"),
        ("Facturation à la tonne", "tonne"),
        ("Billed per MSF", "msf"),
        ("Freight, billed per ton", None),
    ],
)
def test_what_is_invoiced_per_a_unit_is_priced_per_it(title, basis):
    rows = [[title], ["Board", "µm", "g/m²", "EUR"], ["GC1", 365, 230, 1242], ["GT1", 390, 300, 899]]
    assert [line.offer.basis for line in lines(rows).values()] == [basis] * 2
