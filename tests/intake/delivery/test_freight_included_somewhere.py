"""Freight that is included in some place, or in something else than the price."""

import pytest

from tests.intake.charges.one_board import SHEETS, told
from tests.intake.sheets import read


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Freight ($42/ST) is included within Ohio"),
        ("en", "Freight is included within Ohio"),
        ("en", "Freight ($42/ST) included to Ohio"),
        ("en", "Freight ($42/ST) included; Texas $60/ST"),
        ("en", "Freight ($42/ST) is included in the invoice"),
        ("en", "Freight is included in the invoice"),
        ("de", "Fracht (42 EUR/t) enthalten nach Bayern"),
        ("de", "Fracht enthalten innerhalb Bayerns"),
        ("fr", "Transport (42 EUR/t) inclus en Bretagne"),
        ("fr", "Transport inclus en Bretagne"),
        ("fr", "Transport inclus dans la facture"),
        ("es", "Transporte (42 EUR/t) incluido en Galicia"),
        ("es", "Transporte incluido en la factura"),
        ("sv", "Frakt (42 EUR/t) ingår inom Skåne"),
        ("sv", "Frakt ingår i fakturan"),
    ],
)
def test_it_is_not_known_of_these_prices(language, note):
    assert told(language, note) == ([], None)


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Freight ($42/ST) is included in all prices"),
        ("en", "Freight ($42/ST) is included in the prices shown"),
        ("en", "Freight ($42/ST) included to your dock"),
        ("en", "Freight ($42/ST) is included. Energy is included too."),
        ("en", "Freight included in Germany"),
        ("de", "Fracht enthalten innerhalb Deutschlands"),
        ("fr", "Transport (42 EUR/t) inclus"),
        ("es", "Transporte incluido"),
        ("sv", "Frakt ingår"),
    ],
)
def test_what_is_included_in_all_prices_is(language, note):
    assert told(language, note) == ([], True)


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Freight ($42/ST) is included within Ohio"), ("en", "Freight is included within Ohio"),
        ("de", "Fracht (42 EUR/t) enthalten nach Bayern"), ("fr", "Transport inclus en Bretagne"),
        ("es", "Transporte incluido en Galicia"), ("sv", "Frakt ingår inom Skåne"),
    ],
)  # fmt: skip
def test_that_it_is_left_open_is_told(language, note):
    passed_over = read([*SHEETS[language], [], [note]]).passed_over
    assert any(note in part.why for part in passed_over)
