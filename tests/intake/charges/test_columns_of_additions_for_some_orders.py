"""Columns of what orders of some size cost more: charged to no other order, and told."""

import pytest

from tests.intake.sheets import codes, lines


def _found(head, figure=60):
    rows = [["Board", "g/m²", "EUR/t", head], ["GC1", 300, 1200, figure], ["GD2", 350, 900, figure]]
    return list(lines(rows).values())


@pytest.mark.parametrize(
    "head",
    ["Under 5 t add", "Under 5 t add EUR/t", "Surcharge under 5 t", "Surcharge under 5 t EUR/t", "Orders under 5 t +",
     "Zuschlag unter 5 t", "unter 5 t zzgl.", "Supplément moins de 5 t EUR/t", "Recargo menos de 5 t",
     "Tillägg under 5 t"],
)  # fmt: skip
def test_they_are_told_and_charged_to_no_other_order(head):
    found = _found(head)
    assert [(line.offer.from_kg, line.offer.charges, codes(line)) for line in found] == [
        (None, (), {"bracket-unread"})
    ] * 2


@pytest.mark.parametrize("head", ["Surcharge", "Surcharge EUR/t", "Zuschlag", "Surcharge EUR/t (min. 5 t)"])
def test_what_names_no_such_orders_is_charged_to_all(head):
    assert [[str(one.price) for one in line.offer.charges] for line in _found(head)] == [["60"], ["60"]]


def test_a_price_of_such_orders_is_a_price():
    assert [str(line.offer.price) for line in _found("Under 5 t", 1260)] == ["1200", "1260", "900", "1260"]


@pytest.mark.parametrize("head", ["Freight under 5 t EUR/t", "Freight over 5 t EUR/t", "Fracht ab 5 t €/t"])
def test_freight_of_some_orders_leaves_the_cost_open(head):
    found = _found(head)
    assert {one.currency for line in found for one in line.offer.charges} == {"XXX"}
    assert all("number-ambiguous" in codes(line) for line in found)
