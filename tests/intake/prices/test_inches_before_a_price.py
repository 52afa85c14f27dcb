"""A width in inches between a board and its price in a letter's line is no other end of a range of prices."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines

_HEADS = {
    "en": "Our prices, in US dollars per tonne, are:",
    "de": "Preise in USD je Tonne:",
    "fr": "Prix en USD la tonne :",
    "es": "Precios en USD por tonelada:",
    "sv": "Priser i USD per ton:",
}


def _only(language, line):
    (found,) = lines([[_HEADS[language]], [], [line]]).values()
    return found


@pytest.mark.parametrize(
    ("language", "width"),
    [
        ("en", '38" rolls'),
        ("en", "38” rolls"),
        ("en", "38'' rolls"),
        ("en", '38.5" wide'),
        ("en", '38"'),
        ("de", '38" Rollen'),
        ("fr", 'bobines 38"'),
        ("es", 'bobinas 38"'),
        ("sv", '38" rullar'),
    ],
)
def test_the_price_behind_a_width_in_inches_is_the_price(language, width):
    found = _only(language, f"GC1 235 g/m² 385 µm, {width} - $1212.00")
    assert (found.state.value, found.offer.price) == ("accepted", Decimal("1212.00"))


@pytest.mark.parametrize(
    ("language", "form"),
    [("en", "rolls"), ("de", "Rollen"), ("fr", "bobines"), ("es", "bobinas"), ("sv", "rullar")],
)
def test_two_prices_are_asked_about(language, form):
    assert _only(language, f"GC1 235 g/m² 385 µm, {form} $1180 - $1212").offer.price is None


@pytest.mark.parametrize("price", ['"$1212.00"', "“1212.00”"])
def test_a_price_in_quotes_is_no_width(price):
    found = lines([["Grade", "g/m²", "µm", "USD/t"], ["GC1", 235, 385, price], ["GC2", 250, 410, "1190"]])
    assert next(iter(found.values())).offer.price == Decimal("1212.00")
