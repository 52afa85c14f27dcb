"""How long the prices hold that these follow is no validity of these."""

import pytest

from tracker.intake.values.notes.statements import statements
from tracker.intake.values.times.validity import Validity


def held(text):
    return [said.last_day() for said in statements(text) if isinstance(said, Validity)]


@pytest.mark.parametrize(
    "text",
    [
        "The new prices apply from 1 January 2027; the old prices are valid until 31 December 2026.",
        "Der bisherige Preis gilt nur noch bis 31.12.2026.", "Die alten Preise sind gültig bis 31.12.2026.",
        "Les anciens tarifs restent valables jusqu'au 31 décembre 2026.",
        "Los precios anteriores son válidos hasta el 31 de diciembre de 2026.",
        "De gamla priserna gäller till och med 31 december 2026.",
    ],
)  # fmt: skip
def test_old_prices(text):
    assert held(text) == []


@pytest.mark.parametrize(
    "text",
    [
        "These prices replace the previous prices and are valid until 31 December 2026.",
        "The old prices end today. New prices are valid until 31 December 2026.",
        "Precios antes de IVA, válidos hasta el 31 de diciembre de 2026",
        "Preise gültig bis 31.12.2026", "Prix valables jusqu'au 31 décembre 2026",
        "Nya priser, gäller till och med 31 december 2026",
    ],
)  # fmt: skip
def test_these_prices(text):
    assert [str(day) for day in held(text)] == ["2026-12-31"]
