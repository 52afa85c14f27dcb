"""'Prices delivered, for orders from 20 t' says so of prices for such orders, behind a comma too."""

import pytest

from tests.intake.sheets import lines


def _delivered(title, head):
    rows = [[title], [], ["Sorte", "g/m²", "µm", head], ["GC1", 250, 410, 1262], ["GD2", 350, 465, 792]]
    return {line.offer.delivered for line in lines(rows).values()}


@pytest.mark.parametrize(
    ("title", "head"),
    [
        ("Grundpreise in EUR/t frei Haus, für Bestellungen ab 20 t", "EUR/t ab 20 t"),
        ("Grundpreise in EUR/t, frei Haus, ab 20 t", "EUR/t ab 20 t"),
        ("Base prices in EUR/t delivered, for orders of 20 t and more", "EUR/t from 20 t"),
        ("Prix de base en EUR/t franco, pour commandes à partir de 20 t", "EUR/t à partir de 20 t"),
        ("Precios base en EUR/t franco destino, para pedidos desde 20 t", "EUR/t desde 20 t"),
        ("Grundpriser i EUR/ton fritt kund, för order från 20 ton", "EUR/ton från 20 ton"),
    ],
)
def test_prices_of_such_orders_are_delivered(title, head):
    assert _delivered(title, head) == {True}


@pytest.mark.parametrize(
    ("title", "head"),
    [
        ("Grundpreise in EUR/t frei Haus, für Bestellungen ab 20 t", "EUR/t ab 5 t"),
        ("Grundpreise in EUR/t frei Haus, für Bestellungen ab 20 t", "EUR/t"),
        ("Grundpreise in EUR/t frei Haus, für Bestellungen unter 20 t", "EUR/t ab 20 t"),
    ],
)
def test_of_prices_for_other_orders_it_is_not_known(title, head):
    assert _delivered(title, head) == {None}
