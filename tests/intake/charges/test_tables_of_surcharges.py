"""Surcharges in a small table of their own below the boards, and in rows among the boards' prices."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import OPEN, State

BOARDS = [["GC1", 240, 390, 1158], ["GD2", 350, 465, 796]]


def charged(*below, price="EUR/t", boards=BOARDS):
    """What the first board is charged, by label; None for what is not certain."""
    found = lines([["EXW"], [], ["Board", "g/m²", "µm", price], *boards, *below])
    assert found["D4"].state is State.ACCEPTED
    return {
        charge.label: (float(charge.price), charge.basis) if charge.currency != OPEN else None
        for charge in found["D4"].offer.charges
    }


@pytest.mark.parametrize(
    ("title", "energy", "freight"),
    [
        ("Surcharges on all prices", "Energy surcharge", "Freight"),
        ("Zuschläge zu allen Preisen", "Energiezuschlag", "Fracht"),
        ("Suppléments sur tous les prix", "Supplément énergie", "Transport"),
        ("Recargos sobre todos los precios", "Recargo energético", "Flete"),
        ("Tillägg på alla priser", "Energitillägg", "Frakt"),
    ],
)
def test_every_price_bears_what_is_listed_under_surcharges(title, energy, freight):
    told = charged([], [title, None, None, "EUR/t"], [energy, None, None, 38], [freight, None, None, 52])
    assert told == {energy: (38, "tonne"), freight: (52, "tonne")}


def test_each_amount_is_in_the_unit_over_it_or_in_its_own():
    told = charged([], ["Surcharges", None, None, "EUR/1000 m²"], ["Toll", None, None, 2.5])
    assert told == {"Toll": (2.5, "1000m2")}
    told = charged([], ["Surcharges", "EUR/t"], ["Energy surcharge", "3.5 %"], ["Toll", 12])
    assert told == {"Energy surcharge": (3.5, None), "Toll": (12, "tonne")}


@pytest.mark.parametrize(
    "table",
    [
        [["Freight rates", None, None, "EUR/t"], ["Freight", None, None, 52]],
        [["Surcharges", None, None, "EUR/t"], ["Freight north", None, None, 38], ["Freight south", None, None, 52]],
        [["Surcharges from 1 July 2027", None, None, "EUR/t"], ["Energy surcharge", None, None, 38]],
        [["Surcharges for small orders", None, None, "EUR/t"], ["Energy surcharge", None, None, 38]],
    ],
)
def test_rates_to_places_and_charges_of_some_orders_are_not_every_prices(table):
    assert charged([], *table) == {}


KILOS = [["URB", 400, 590, 0.712], ["GD2", 300, 400, 0.905]]


def test_an_amount_too_small_for_a_percentage_is_money():
    told = charged(["Energy surcharge", None, None, 0.035], price="EUR/kg", boards=KILOS)
    assert told == {"Energy surcharge": (0.035, "kg")}


@pytest.mark.parametrize(("amount", "boards", "price"), [(3.5, KILOS, "EUR/kg"), (0.035, BOARDS, "EUR/t")])
def test_an_amount_that_may_be_a_percentage_is_left_open(amount, boards, price):
    assert charged(["Energy surcharge", None, None, amount], price=price, boards=boards) == {"Energy surcharge": None}


def test_amounts_with_a_unit_beside_each_under_a_title_that_puts_them_on_every_price():
    rows = [
        ["Prices FOB mill, USD"], [], ["Board", "Caliper (pt)", "lb/MSF", "USD/ST"], ["SBS C1S", 18, 76, 1164], [],
        ["Added to every price above"], ["Charge", "Amount", "Unit"],
        ["Freight to your Lakemoor plant", 1.95, "USD/cwt"],
        ["Energy surcharge", 4, "% of board price"], ["Wrapping", 6.5, "USD/ST"],
    ]  # fmt: skip
    (line,) = lines(rows).values()
    charged = [(charge.label, str(charge.price)) for charge in line.offer.charges]
    assert [label for label, _ in charged] == ["Freight", "Energy surcharge", "Wrapping"]
    assert [price for _, price in charged] == ["1.95", "4", "6.5"]


def test_amounts_under_a_title_that_says_something_else_are_on_no_price():
    rows = [
        ["Prices FOB mill, USD"], [], ["Board", "Caliper (pt)", "lb/MSF", "USD/ST"], ["SBS C1S", 18, 76, 1164], [],
        ["Charged by us last year"], ["Charge", "Amount", "Unit"],
        ["Freight", 1.95, "USD/cwt"], ["Wrapping", 6.5, "USD/ST"],
    ]  # fmt: skip
    (line, *_) = lines(rows).values()
    assert line.offer.charges == ()


def listed(title, *rows, heads=("Charge", "Amount", "Unit")):
    below = [[], [title], list(heads), *rows]
    found = lines([["FOB mill"], [], ["Board", "Caliper (pt)", "lb/MSF", "USD/ST"], ["SBS C1S", 18, 76, 1164], *below])
    return {one.label: float(one.price) if one.currency != OPEN else None for one in found["D4"].offer.charges}


ADDED = "Added to every price above"


def test_a_share_of_another_charge_is_no_share_of_the_price():
    rows = [["Fuel", 18, "% of freight"], ["Energy", 4, "% of board price"]]
    assert listed(ADDED, *rows) == {"Fuel": None, "Energy": 4}


@pytest.mark.parametrize("amount", [-10, "-10", "(10)"])
def test_what_is_taken_off_is_not_added(amount):
    assert listed(ADDED, ["Energy", amount, "USD/ST"], ["Wrapping", 12, "USD/ST"]) == {"Energy": None, "Wrapping": 12}


@pytest.mark.parametrize("head", ["USD/ST", "Amount USD/ST", "Amount (USD/ST)", "Amount, USD/ST"])
def test_a_head_may_name_the_amount_before_its_unit(head):
    assert listed(ADDED, ["Energy", 25], ["Wrapping", 12], heads=("Charge", head)) == {"Energy": 25, "Wrapping": 12}


@pytest.mark.parametrize(
    ("title", "energy", "wrapping"),
    [
        ("Added to every price above", "Energy", "Wrapping"),
        ("Zu allen Preisen kommen hinzu", "Energie", "Verpackung"),
        ("S'ajoutent à tous les prix", "Énergie", "Emballage"),
        ("Se añaden a todos los precios", "Energía", "Embalaje"),
        ("Tillkommer på alla priser", "Energi", "Emballage"),
    ],
)
def test_a_title_that_adds_to_all_prices_charges_them(title, energy, wrapping):
    assert listed(title, [energy, 25, "USD/ST"], [wrapping, 12, "USD/ST"]) == {energy: 25, wrapping: 12}


@pytest.mark.parametrize(
    "title",
    [
        "All prices", "Included in all prices", "Not added to any price above", "Alle Preise",
        "In allen Preisen enthalten", "Compris dans tous les prix", "Incluido en todos los precios",
        "Ingår i alla priser",
    ],
)  # fmt: skip
def test_a_title_that_adds_nothing_charges_nothing(title):
    assert listed(title, ["Energy", 25, "USD/ST"], ["Wrapping", 12, "USD/ST"]) == {}


@pytest.mark.parametrize(
    ("title", "pallets"),
    [
        (ADDED, "Pallets"), ("Zu allen Preisen kommen hinzu", "Einwegpaletten"),
        ("S'ajoutent à tous les prix", "Palettes perdues"), ("Se añaden a todos los precios", "Palés"),
        ("Läggs till på alla priser", "Engångspallar"),
    ],
)  # fmt: skip
def test_what_such_a_title_adds_is_charged_whatever_its_name(title, pallets):
    told = listed(title, ["Energy", 25, "USD/ST"], [pallets, 12, "USD/ST"], ["Dunnage", 3, "USD/ST"])
    assert told == {"Energy": 25, pallets: 12, "Dunnage": 3}


def test_and_under_a_title_of_surcharges_names_that_nobody_knows_leave_the_list_unread():
    assert listed("Surcharges", ["Energy", 25, "USD/ST"], ["SBS samples", 12, "USD/ST"]) == {}
