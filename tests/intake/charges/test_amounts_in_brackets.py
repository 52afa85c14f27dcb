"""'Prices exclude freight ($42/ST) and energy ($18/ST)' charges both, 'Freight ($42/ST) is included' neither."""

import pytest

from tests.intake.charges.one_board import told


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Prices exclude freight ($42/ST) and energy ($18/ST)."),
        ("en", "Prices exclude freight at $42/ST and energy at $18/ST."),
        ("en", "Prices do not include freight ($42/ST) or energy ($18/ST)."),
        ("en", "Prices exclude freight ($42/ST), energy ($18/ST) and sales tax."),
        ("de", "Die Preise enthalten keine Fracht (42 EUR/t) und keine Energie (18 EUR/t)."),
        ("de", "Preise ohne Fracht (42 EUR/t) und Energiezuschlag (18 EUR/t)."),
        ("fr", "Les prix ne comprennent pas le transport (42 EUR/t) ni l'énergie (18 EUR/t)."),
        ("fr", "Prix hors transport (42 EUR/t) et énergie (18 EUR/t)."),
        ("es", "Los precios no incluyen transporte (42 EUR/t) ni energía (18 EUR/t)."),
        ("sv", "Priserna inkluderar inte frakt (42 EUR/t) och energi (18 EUR/t)."),
    ],
)
def test_what_prices_leave_out_is_charged(language, note):
    assert told(language, note) == ([42, 18], False)


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Freight ($42/ST) is included."), ("en", "Prices include freight ($42/ST) and energy ($18/ST)."),
        ("de", "Fracht (42 EUR/t) ist enthalten."), ("de", "Fracht (42 EUR/t) ist im Preis enthalten."),
        ("fr", "Le transport (42 EUR/t) est inclus."), ("es", "El transporte (42 EUR/t) está incluido."),
        ("sv", "Frakten (42 EUR/t) ingår."),
    ],
)  # fmt: skip
def test_what_they_hold_is_not_charged_once_more(language, note):
    assert told(language, note) == ([], True)


@pytest.mark.parametrize("note", ["Freight ($42/ST) is not included.", "Freight ($42/ST) not included."])
def test_what_is_not_included_is_charged(note):
    assert told("en", note) == ([42], False)


@pytest.mark.parametrize(
    "note", ["Freight ($42/ST) may be included.", "Freight ($42/ST) is included for orders over 20 ST."]
)
def test_what_is_included_perhaps_or_for_some_is_left_open(note):
    assert told("en", note) == ([], None)
