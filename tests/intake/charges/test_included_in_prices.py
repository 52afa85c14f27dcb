"""Rows below 'The prices include:' are no charges, and freight among them makes the prices delivered ones."""

import pytest

from tests.intake.sheets import lines

ROWS = [["Grade", "g/m²", "Price EUR/t"], ["GC1", 250, 1200], ["GD2", 300, 900]]
NAMES = {
    "en": ("Freight", "Energy"),
    "de": ("Fracht", "Energie"),
    "fr": ("Transport", "Énergie"),
    "es": ("Transporte", "Energía"),
    "sv": ("Frakt", "Energi"),
}


def _offers(line, language, *, apart=()):
    freight, energy = NAMES[language]
    rows = [*ROWS, *apart, [line], [freight, "42 EUR/t"], [energy, "18 EUR/t"]]
    return [found.offer for found in lines(rows).values()]


@pytest.mark.parametrize(
    ("line", "language"),
    [
        ("The prices include:", "en"), ("Prices already contain:", "en"), ("Prices above include:", "en"),
        ("Included in the prices:", "en"), ("In den Preisen enthalten:", "de"),
        ("Die Preise enthalten:", "de"), ("Les prix comprennent :", "fr"), ("Compris dans les prix :", "fr"),
        ("Los precios incluyen:", "es"), ("I priserna ingår:", "sv"), ("Priserna innehåller:", "sv"),
    ],
)  # fmt: skip
@pytest.mark.parametrize("apart", [(), ([],)])
def test_what_prices_include_is_not_charged(line, language, apart):
    found = _offers(line, language, apart=apart)
    assert [(offer.charges, offer.delivered) for offer in found] == [((), True)] * 2


@pytest.mark.parametrize(
    ("line", "language"),
    [
        ("The prices do not include:", "en"), ("Not included in the prices:", "en"),
        ("Nicht in den Preisen enthalten:", "de"), ("Non compris dans les prix :", "fr"),
        ("No incluido en los precios:", "es"), ("I priserna ingår inte:", "sv"),
    ],
)  # fmt: skip
def test_what_they_do_not_include_is(line, language):
    for offer in _offers(line, language):
        assert ([charge.price for charge in offer.charges], offer.delivered) == ([42, 18], None)


def test_in_one_cell_as_in_rows():
    for note in (
        "The prices include: freight 42 EUR/t, energy 18 EUR/t",
        "Included: freight 42 EUR/t; energy 18 EUR/t",
    ):
        assert [line.offer.charges for line in lines([*ROWS, [note]]).values()] == [(), ()]


def test_freight_to_some_is_not_that_to_the_buyer():
    rows = [*ROWS, ["The prices include:"], ["Freight over 500 km", "42 EUR/t"]]
    assert [(line.offer.charges, line.offer.delivered) for line in lines(rows).values()] == [((), None)] * 2
