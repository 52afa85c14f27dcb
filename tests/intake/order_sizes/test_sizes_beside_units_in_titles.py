"""A line over a table that says an order size and what the prices are per."""

import pytest

from tests.intake.sheets import lines

HEADS = {
    "de": ["Sorte", "g/m²", "µm", "EUR"], "en": ["Board", "g/m²", "µm", "EUR"], "fr": ["Qualité", "g/m²", "µm", "EUR"],
    "es": ["Calidad", "g/m²", "µm", "EUR"], "sv": ["Kvalitet", "g/m²", "µm", "EUR"],
}  # fmt: skip
SMALL, LARGE = ["GC1", 250, 405, 1355.5], ["GC1", 250, 405, 1255.5]


def sizes(language, *titles):
    rows = [["Ferrowick Board"]]
    for title, board in zip(titles, (SMALL, LARGE), strict=False):
        rows += [[], [title], HEADS[language], board]
    return [(line.offer.from_kg, line.offer.below_kg, line.offer.basis) for line in lines(rows).values()]


@pytest.mark.parametrize(
    ("language", "title"),
    [
        ("de", "Mengen ab 5 t, Preis je 1.000 kg"), ("de", "Bestellungen ab 5 t, Preise in EUR je Tonne"),
        ("en", "Orders of 5 t and more, price per tonne"), ("en", "Orders of 5 t and more (price per tonne)"),
        ("en", "Price per tonne - orders of 5 t and over"), ("fr", "À partir de 5 t, prix à la tonne"),
        ("fr", "Quantités à partir de 5 t, prix aux 1 000 kg"), ("es", "Pedidos desde 5 t, precio por 1.000 kg"),
        ("es", "A partir de 5 t, precio por tonelada métrica"), ("sv", "Order från 5 ton, pris per ton (1000 kg)"),
    ],
)  # fmt: skip
def test_a_size_beside_the_unit_holds_for_the_table(language, title):
    assert sizes(language, title) == [(5000, None, "tonne")]


@pytest.mark.parametrize(
    ("language", "below", "rest"),
    [
        ("de", "Kleinmengen unter 5 t, Preis je kg", "Mengen ab 5 t, Preis je 1.000 kg"),
        ("en", "Small lots: under 5 t, price per kg", "Orders of 5 t and more, price per tonne"),
        ("fr", "Moins de 5 t, prix au kg", "À partir de 5 t, prix à la tonne"),
        ("es", "Menos de 5 t, precio por kg", "A partir de 5 t, precio por tonelada métrica"),
        ("sv", "Under 5 ton, pris per kg", "Från 5 ton, pris per 1000 kg"),
    ],
)
def test_two_tables_have_each_their_orders(language, below, rest):
    assert sizes(language, below, rest) == [(None, 5000, "kg"), (5000, None, "tonne")]


@pytest.mark.parametrize(
    "title",
    [
        "Frei Haus ab 5 t, Preis je Tonne", "Zuschlag unter 5 t, Preis je Tonne", "Ab 5 t 3 % Rabatt, Preis je Tonne",
        "Mindestmenge 5 t, Preis je Tonne", "Mengen ab 5 t, 3 % Rabatt", "Tonne von 1.000 kg, Preise in EUR je Tonne",
    ],
)  # fmt: skip
def test_a_size_of_something_else_bounds_no_price(title):
    assert [found[:2] for found in sizes("de", title)] == [(None, None)]
