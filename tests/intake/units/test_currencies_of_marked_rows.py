"""Currencies of rows that carry a sign, and of prices that show their own."""

import pytest

from tests.intake.sheets import lines


def _currencies(note, *, mark="†", price=1140):
    rows = [["SBS C1S", 300, 400, 1380], [f"GC2 {mark}".strip(), 250, 420, price], ["CRB GD2", 350, 460, 860]]
    found = lines([["Tarnwell Board Ltd"], ["Board", "g/m²", "µm", "Price"], *rows, [note]])
    return [line.offer.currency for line in found.values()]


@pytest.mark.parametrize(
    ("note", "usual", "marked"),
    [
        (
            (
                "Prices are in Canadian dollars per metric tonne. Items marked † are imported and are quoted in U.S."
                " dollars per metric tonne."
            ),
            "CAD",
            "USD",
        ),
        ("Prices are in Canadian dollars per metric tonne. Items marked † are in U.S. funds.", "CAD", "USD"),
        ("Prices are in U.S. dollars per metric tonne. Items marked † are in Canadian dollars.", "USD", "CAD"),
        (
            (
                "Preise in EUR je Tonne. Mit † gekennzeichnete Artikel sind Importware und werden in US-Dollar je Tonne"
                " angeboten."
            ),
            "EUR",
            "USD",
        ),
        (
            "Les prix sont en euros la tonne. Les articles marqués † sont cotés en dollars américains la tonne.",
            "EUR",
            "USD",
        ),
        (
            (
                "Los precios son en euros por tonelada. Los artículos marcados con † se cotizan en dólares americanos"
                " por tonelada."
            ),
            "EUR",
            "USD",
        ),
        ("Priserna är i SEK per ton (1 000 kg). Artiklar märkta † offereras i euro per ton.", "SEK", "EUR"),
    ],
)
def test_marked_rows_have_their_own(note, usual, marked):
    assert _currencies(note) == [usual, marked, usual]


@pytest.mark.parametrize(
    "note",
    [
        "Items marked † are imported from the U.S. and ship in 6 weeks. Prices in CAD per metric tonne.",
        "Prices in CAD per metric tonne. Items marked † are imported.",
    ],
)
def test_what_else_is_said_of_them_leaves_their_money_as_it_is(note):
    assert _currencies(note) == ["CAD"] * 3


@pytest.mark.parametrize(
    ("note", "price", "usual", "shown"),
    [
        ("Prices are in CAD per metric tonne except where US$ is shown.", "US$1,140", "CAD", "USD"),
        ("Prices are in GBP per tonne unless marked €.", "€1,140", "GBP", "EUR"),
        ("Preise in CHF je Tonne, sofern nicht mit € gekennzeichnet.", "1140 €", "CHF", "EUR"),
        ("Prix en CHF la tonne, sauf indication en €.", "1140 €", "CHF", "EUR"),
        ("Precios en USD por tonelada métrica, salvo los marcados con €.", "1140 €", "USD", "EUR"),
        ("Priserna är i SEK per 1000 kg om inte € anges.", "1140 €", "SEK", "EUR"),
    ],
)
def test_prices_that_show_another(note, price, usual, shown):
    assert _currencies(note, mark="", price=price) == [usual, shown, usual]
    assert _currencies(note, mark="") == [usual] * 3
