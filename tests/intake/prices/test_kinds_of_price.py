"""List, net, standard and cost prices of one board beside each other: which of them is to be paid."""

import pytest

from tests.intake.sheets import codes, lines


def priced(head, first, second):
    rows = [
        ["SBS C1S", 18, first, 1250],
        ["SBS C1S", 18, second, 1200],
        ["CRB", 20, first, 890],
        ["CRB", 20, second, 830],
    ]
    return lines([["Marrowgate Board Co."], [], ["Grade", "Caliper (pt)", head, "USD/short ton"], *rows]).values()


@pytest.mark.parametrize("head", ["Status", "Condition"])
@pytest.mark.parametrize("words", [("List", "Net"), ("Old", "New"), ("alt", "neu"), ("Previous", "Current")])
def test_a_list_price_and_a_net_price_of_one_board_are_not_both_accepted(head, words):
    assert all("prices-disagree" in codes(line) for line in priced(head, *words))


@pytest.mark.parametrize("words", [("Stock", "Making"), ("Prime", "Job lot"), ("Delivered", "FOB mill")])
def test_what_tells_two_lots_apart_asks_nothing(words):
    assert {str(line.state) for line in priced("Status", *words)} == {"accepted"}


@pytest.mark.parametrize("heads", [("Preis I", "Preis II"), ("Price A", "Price B"), ("Pris 1", "Pris 2")])
def test_prices_told_apart_by_a_sign_alone_are_asked(heads):
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", *heads], ["GC1", 250, 405, 1290, 1270]]
    assert {str(line.state) for line in lines(rows).values()} == {"question"}


def both_priced(first, second, unit="USD/short ton"):
    rows = [["Marrowgate Board Co."], [], ["Grade", "Caliper (pt)", f"{first} {unit}", f"{second} {unit}"]]
    return lines([*rows, ["SBS C1S", 18, 1250, 1350], ["CRB", 20, 890, 990]])


@pytest.mark.parametrize("names", [("Std price", "Rush price"), ("Standardpreis", "Preis Teilmengen")])
def test_a_standard_price_beside_that_of_some_orders_is_not_dropped(names):
    found = both_priced(*names)
    assert [str(found[cell].state) for cell in ("C4", "C5")] == ["accepted"] * 2


@pytest.mark.parametrize("other", ["Your price", "Price", "Net price", "Contract price"])
def test_a_standard_price_beside_that_of_every_order_is_a_list_price(other):
    found = both_priced("Std price", other)
    assert found.keys() == {"D4", "D5"}


@pytest.mark.parametrize("names", [("Purchase price", "List price"), ("Listenpreis", "Einkaufspreis")])
def test_a_cost_beside_a_list_price_alone_is_asked_about(names):
    found = both_priced(*names)
    assert found.keys() == {"C4", "D4", "C5", "D5"}
    assert all("number-ambiguous" in codes(line) for line in found.values())


@pytest.mark.parametrize("other", ["Price", "Net price"])
def test_a_cost_beside_a_price_is_the_vendors_own(other):
    assert both_priced("Our cost", other).keys() == {"D4", "D5"}


def test_what_a_buyer_might_sell_for_is_no_offer():
    assert both_priced("Your cost", "MSRP").keys() == {"C4", "C5"}
