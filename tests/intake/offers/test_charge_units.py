"""A charge without a unit of its own has the price's, unless that makes no possible cost."""

import pytest

from tests.intake.sheets import codes, lines

HEADS = [
    ("Grade", "Caliper (pt)", "Price USD/{}", "Freight"),
    ("Sorte", "g/m²", "Preis EUR/{}", "Fracht"),
    ("Qualité", "g/m²", "Prix EUR/{}", "Transport"),
    ("Calidad", "g/m²", "Precio EUR/{}", "Flete"),
    ("Kvalitet", "g/m²", "Pris EUR/{}", "Frakt"),
]


def line(head, unit, price, charge):
    (found,) = lines(
        [[word.format(unit) for word in head], ["CRB", 20 if "(pt)" in head[1] else 350, price, charge]]
    ).values()
    return found


@pytest.mark.parametrize("head", HEADS)
@pytest.mark.parametrize(
    ("unit", "price", "charge"),
    [("tonne", 905, 62), ("tonne", 905, 8), ("1000 sq ft", 48.2, 2.6), ("kg", 0.905, 0.062), ("tonne", 905, 180)],
)
def test_it_is_per_the_price_s_unit(head, unit, price, charge):
    found = line(head, unit, price, charge)
    assert [float(one.price) for one in found.offer.charges] == [charge]


@pytest.mark.parametrize("head", HEADS)
@pytest.mark.parametrize(
    ("unit", "price", "charge"),
    [("1000 sq ft", 48.2, 62), ("kg", 0.905, 62), ("tonne", 905, 3.1), ("tonne", 905, 0.03)],
)
def test_the_delivered_cost_stays_open_where_it_can_not_be(head, unit, price, charge):
    found = line(head, unit, price, charge)
    assert (found.state, [one.currency for one in found.offer.charges]) == ("accepted", ["XXX"])
    assert codes(found) >= {"number-ambiguous"}


def test_a_unit_of_its_own_is_believed():
    rows = [["Grade", "Caliper (pt)", "Price USD/MSF", "Freight USD/ST"], ["CRB", 20, 38.2, 62]]
    (found,) = lines(rows).values()
    assert [(one.price, one.basis) for one in found.offer.charges] == [(62, "short_ton")]
