"""Standard prices, list prices and costs beside each other: which of them is to be paid."""

import pytest

from tests.intake.sheets import codes, lines


def priced(first, second, unit="USD/short ton"):
    rows = [["Marrowgate Board Co."], [], ["Grade", "Caliper (pt)", f"{first} {unit}", f"{second} {unit}"]]
    return lines([*rows, ["SBS C1S", 18, 1250, 1350], ["CRB", 20, 890, 990]])


@pytest.mark.parametrize("names", [("Std price", "Rush price"), ("Standardpreis", "Preis Teilmengen")])
def test_a_standard_price_beside_that_of_some_orders_is_not_dropped(names):
    found = priced(*names)
    assert [str(found[cell].state) for cell in ("C4", "C5")] == ["accepted"] * 2


@pytest.mark.parametrize("other", ["Your price", "Price", "Net price", "Contract price"])
def test_a_standard_price_beside_that_of_every_order_is_a_list_price(other):
    found = priced("Std price", other)
    assert found.keys() == {"D4", "D5"}


@pytest.mark.parametrize("names", [("Purchase price", "List price"), ("Listenpreis", "Einkaufspreis")])
def test_a_cost_beside_a_list_price_alone_is_asked_about(names):
    found = priced(*names)
    assert found.keys() == {"C4", "D4", "C5", "D5"}
    assert all("number-ambiguous" in codes(line) for line in found.values())


@pytest.mark.parametrize("other", ["Price", "Net price"])
def test_a_cost_beside_a_price_is_the_vendors_own(other):
    assert priced("Our cost", other).keys() == {"D4", "D5"}


def test_what_a_buyer_might_sell_for_is_no_offer():
    assert priced("Your cost", "MSRP").keys() == {"C4", "C5"}
