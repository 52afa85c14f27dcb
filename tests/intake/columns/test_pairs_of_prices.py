"""Two columns of figures like prices beside each other: with freight and without, of the list and net, old and new."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines

GC2, GD2 = ["GC2", 255, 400], ["GD2", 330, 450]


def _read(*heads, first=(1200, 1250), second=(900, 950)):
    return lines([["EUR/t"], ["Sorte", "g/m²", "µm", *heads], [*GC2, *first], [*GD2, *second]])


@pytest.mark.parametrize("without", ["excl. freight EUR/t", "ohne Fracht EUR/t", "hors transport EUR/t"])
def test_a_price_without_freight_beside_one_with_it(without):
    found = _read(without, "incl. freight EUR/t")
    assert [(line.offer.price, line.offer.delivered) for line in found.values()][:2] == [(1200, False), (1250, True)]
    assert not any(map(codes, found.values()))


def test_what_freight_costs_is_no_price_without_it():
    found = _read("Preis EUR/t", "excl. freight EUR/t", first=(1200, 45), second=(900, 45))
    assert [[charge.price for charge in line.offer.charges] for line in found.values()] == [[45], [45]]


@pytest.mark.parametrize(("listed", "net"), [("Liste EUR/t", "Netto EUR/t"), ("anc. prix", "Nouveau prix")])
def test_the_price_of_the_list_or_of_last_time_is_no_offer_beside_the_one_to_pay(listed, net):
    found = _read(listed, net)
    assert [line.offer.price for line in found.values()] == [1250, 950]


def test_a_list_by_itself_is_what_is_paid():
    rows = [["Sorte", "g/m²", "µm", "Liste EUR/t"], [*GC2, 1200], [*GD2, 900]]
    assert [line.offer.price for line in lines(rows).values()] == [1200, 900]


@pytest.mark.parametrize("head", ["Verpackungszuschlag EUR/t", "Papierholzzuschlag EUR/t", "Emballagetillägg EUR/t"])
def test_a_supplement_of_any_kind_is_charged_and_no_price(head):
    found = _read("Preis EUR/t", head, first=(1200, 50), second=(900, 50))
    assert [[charge.price for charge in line.offer.charges] for line in found.values()] == [[Decimal(50)]] * 2
