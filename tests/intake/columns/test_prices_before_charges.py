"""'Price before energy surcharge' is without it, and no price of a time before."""

import pytest

from tests.intake.sheets import lines


def _read(*heads, rows):
    boards = (("GC1", 250), ("GD2", 300))
    body = ([*board, *figures] for board, figures in zip(boards, rows, strict=True))
    return [*lines([["Grade", "g/m²", *heads], *body]).values()]


@pytest.mark.parametrize(
    ("price", "charge"),
    [
        ("Price before energy surcharge EUR/t", "Energy surcharge EUR/t"),
        ("Price before freight EUR/t", "Freight EUR/t"),
        ("Preis vor Energiezuschlag EUR/t", "Energiezuschlag EUR/t"),
        ("Prix avant surcharge énergie EUR/t", "Surcharge énergie EUR/t"),
        ("Precio antes del recargo EUR/t", "Recargo EUR/t"),
        ("Pris före energitillägg EUR/t", "Energitillägg EUR/t"),
    ],
)
def test_the_only_price_is_offered_with_its_charge(price, charge):
    found = _read(price, charge, rows=[(1200, 25), (900, 25)])
    assert [str(line.offer.price) for line in found] == ["1200", "900"]
    assert {str(one.price) for line in found for one in line.offer.charges} == {"25"}


@pytest.mark.parametrize("price", ["Price before VAT EUR/t", "Prix avant TVA EUR/t", "Preis vor Steuern EUR/t"])
def test_so_it_is_before_taxes(price):
    assert len(_read(price, rows=[(1200,), (900,)])) == 2


@pytest.mark.parametrize(
    ("before", "now"), [("Price before", "Price now"), ("Price before increase", "New price"), ("Prix avant", "Prix")]
)
def test_a_price_before_is_still_an_earlier_one(before, now):
    found = _read(f"{before} EUR/t", f"{now} EUR/t", rows=[(1200, 1240), (900, 940)])
    assert [str(line.offer.price) for line in found] == ["1240", "940"]
