"""The last day of a lead time, of rates for sheeting, of tools or of general terms is not that of the prices."""

from datetime import date

import pytest

from tests.intake.sheets import codes, lines

BOARD = [["Grade", "Caliper (µm)", "Weight (g/m²)", "Price EUR/tonne"], ["GC1", 430, 290, 1201], []]


def line_over(text):
    return lines([*BOARD, [text]])["D2"]


@pytest.mark.parametrize(
    "text",
    [
        "Lead time valid until 31 December 2026.", "Sheeting rates good through 31 December 2026.",
        "Tooling quote valid until 31 December 2026.", "Our general terms are valid until 31 December 2026.",
        "Rates for sheeting valid until 31 December 2026.", "Lieferzeit gültig bis 31.12.2026.",
        "Schneidpreise gültig bis 31.12.2026.", "Preise für Zuschnitt gültig bis 31.12.2026.",
        "Unsere AGB gültig bis 31.12.2026.", "Délai valable jusqu'au 31/12/2026.",
        "Tarifs de coupe valables jusqu'au 31/12/2026.", "Plazo de entrega válido hasta el 31/12/2026.",
        "Tarifas de corte válidas hasta el 31/12/2026.", "Leveranstiden gäller till 2026-12-31.",
        "Priser för arkning gäller till 2026-12-31.",
    ],
)  # fmt: skip
def test_the_prices_get_no_last_day(text):
    assert line_over(text).offer.valid_until is None


@pytest.mark.parametrize(
    "text",
    [
        "Lead time 3 weeks valid until 31 December 2026.", "Lieferzeit 3 Wochen gültig bis 31.12.2026.",
        "Our general terms, valid until 31 December 2026, apply.",
    ],
)  # fmt: skip
def test_whose_last_day_it_is_may_be_open(text):
    line = line_over(text)
    assert line.offer.valid_until is None
    assert "validity-unread" in codes(line)


@pytest.mark.parametrize(
    "text",
    [
        "Lead time 3 weeks, valid until 31 December 2026.", "Prices and lead times valid until 31 December 2026.",
        "Sheet prices valid until 31 December 2026.", "Prices including sheeting valid until 31 December 2026.",
        "Prices with packing valid until 31 December 2026.", "Terms valid until 31 December 2026.",
        "Quote valid until 31 December 2026, lead time 3 weeks.", "Preise gültig bis 31.12.2026.",
        "Tarif valable jusqu'au 31/12/2026.", "Délai de validité : 31/12/2026", "Plazo de validez: 31/12/2026",
        "Tarifa válida hasta el 31/12/2026.", "Priserna gäller till 2026-12-31.",
    ],
)  # fmt: skip
def test_prices_hold_until_their_day(text):
    assert line_over(text).offer.valid_until == date(2026, 12, 31)
