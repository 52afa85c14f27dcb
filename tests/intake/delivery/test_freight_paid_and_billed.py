"""Freight that the seller pays and then bills, and what is billed beside freight that prices include."""

import pytest

from tests.intake.lead_times.notes import BOARD
from tests.intake.sheets import lines


def delivered_over(text):
    return lines([*BOARD, [text]])["D2"].offer.delivered


@pytest.mark.parametrize(
    "text",
    [
        "Freight prepaid and billed at cost.", "Freight paid by seller, then invoiced to you.",
        "Freight paid, billed to you monthly.", "Freight prepaid and added.", "Fracht bezahlt und berechnet.",
        "Port payé et facturé.", "Port payé, refacturé.", "Portes pagados, facturados aparte.",
        "Frakt betald och fakturerad.",
    ],
)  # fmt: skip
def test_freight_that_is_billed_is_not_in_the_prices(text):
    assert delivered_over(text) is False


@pytest.mark.parametrize(
    "text",
    [
        "Prices include freight, and billed weights are net.", "Freight included and invoiced in USD.",
        "Freight included, billed to you in USD.", "Freight included, charged separately: pallets.",
        "Fracht inklusive, gesondert berechnet werden Paletten.",
        "Prix franco, transport compris et facturé en euros.",
    ],
)  # fmt: skip
def test_freight_that_prices_include_stays_so_whatever_is_billed_beside_it(text):
    assert delivered_over(text) is True


@pytest.mark.parametrize(
    "text",
    [
        "Freight paid by seller, charged to you only below 10,000 lb.",
        "Freight allowed and charged separately for Canada.", "Freight included, billed separately.",
        "Preise frei Haus; Fracht bezahlt und berechnet",
    ],
)  # fmt: skip
def test_what_is_billed_to_some_or_contradicts_itself_is_left_open(text):
    assert delivered_over(text) is None
