"""Currencies and units that a sentence gives one board behind commas, in brackets or since a day; and Euro pallets."""

import pytest

from tests.intake.sheets import read

_HEADS = {
    "en": ["Grade", "Basis weight g/m²", "Price"],
    "de": ["Sorte", "Gewicht g/m²", "Preis"],
    "fr": ["Qualité", "Grammage g/m²", "Prix"],
    "es": ["Calidad", "Gramaje g/m²", "Precio"],
    "sv": ["Kvalitet", "Ytvikt g/m²", "Pris"],
}
_ROWS = [["GC1", 250, 1200], ["GD2", 300, 900], ["SBS", 280, 1300]]


def told(language, note):
    """The currency and the basis of each board; None where it is asked."""
    found = read([_HEADS[language], *_ROWS, [note]]).lines
    return [(line.offer.currency, line.offer.basis and line.offer.basis.value) for line in found]


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Prices EUR/tonne, GD2, made in Switzerland, in CHF"),
        ("en", "Prices EUR/tonne, GD2, imported, in CHF"),
        ("en", "Prices EUR/tonne, GD2, in CHF"),
        ("en", "All prices EUR/tonne (GD2: CHF/tonne)"),
        ("en", "All prices in EUR per tonne (GD2 in CHF)"),
        ("en", "Prices EUR/tonne; GD2 since October 2026 in CHF"),
        ("de", "Preise EUR/t, GD2, aus der Schweiz, in CHF"),
        ("de", "Alle Preise EUR/t (GD2: CHF/t)"),
        ("de", "Preise EUR/t; GD2 seit Oktober 2026 in CHF"),
        ("fr", "Prix EUR/t, GD2, fabriqué en Suisse, en CHF"),
        ("fr", "Tous les prix EUR/t (GD2 : CHF/t)"),
        ("fr", "Prix EUR/t ; GD2 depuis octobre 2026 en CHF"),
        ("es", "Precios EUR/t, GD2, fabricado en Suiza, en CHF"),
        ("es", "Todos los precios EUR/t (GD2: CHF/t)"),
        ("sv", "Priser EUR/t, GD2, tillverkad i Schweiz, i CHF"),
        ("sv", "Alla priser EUR/t (GD2: CHF/t)"),
    ],
)
def test_the_board_has_its_own_currency(language, note):
    assert told(language, note) == [("EUR", "tonne"), ("CHF", "tonne"), ("EUR", "tonne")]


def test_other_money_behind_a_board_is_not_its_own():
    assert told("en", "Prices EUR/tonne, GD2, fuel bought in CHF") == [("EUR", "tonne")] * 3


def test_a_unit_from_an_order_size_on_is_asked_about():
    assert told("en", "Prices EUR/tonne; GD2 per cwt from 5 tonnes")[1] == ("EUR", None)


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Packed on Euro pallets"),
        ("en", "Euro pallets included"),
        ("de", "Lieferung auf Euro-Paletten"),
        ("de", "GC1 auf Euro-Paletten"),
        ("fr", "Livré sur Euro-palettes"),
        ("es", "Entrega en euro-palés"),
        ("sv", "Levereras på Euro-pallar"),
    ],
)
def test_a_euro_pallet_is_no_money(language, note):
    head = [*_HEADS[language][:2], f"{_HEADS[language][2]} USD/tonne"]
    found = read([head, *_ROWS, [note]]).lines
    assert {(str(line.state), line.offer.currency) for line in found} == {("accepted", "USD")}


def test_a_price_in_euro_per_pallet_is_asked_about():
    assert told("en", "Prices in Euro per pallet") == [("EUR", None)] * 3
