"""Prices that are delivered to a part of a country, in small letters as well, and what else comes 'delivered'."""

import pytest

from tests.intake.sheets import read

LIST = [["Board", "pt", "lb/MSF", "USD/ST"], ["FBB", 16, 62, 1190], ["FBB", 20, 76, 1140]]


def delivered(text):
    return {line.offer.delivered for line in read([[text], *LIST]).lines}


@pytest.mark.parametrize(
    "text",
    [
        "Imported folding boxboard, delivered east coast, valid until 28 February 2027",
        "Prices delivered midwest",
        "Delivered northeast and midwest",
        "Preise geliefert norddeutschland",
        "Frei Haus süddeutschland, gültig bis 28.02.2027",
        "Prix franco région lyonnaise",
        "Prix livrés côte est",
        "Precios entregados costa este",
        "Precios entregados zona norte",
        "Priser levererat västkusten",
    ],
)
def test_a_region_behind_delivered_is_where_the_price_leads(text):
    assert delivered(text) == {True}


@pytest.mark.parametrize(
    "text",
    [
        "Delivered west coast only",
        "Delivered east coast on request",
        "Delivered east coast +$20/ST",
        "Delivered east coast, west coast add $30/ST",
        "Geliefert Norddeutschland, Süddeutschland zzgl. 30 EUR/t",
    ],
)
def test_a_region_that_bounds_the_freight_leaves_it_open(text):
    assert delivered(text) == {None}


@pytest.mark.parametrize(
    "text",
    [
        "Delivered in reels",
        "Board delivered in sheets",
        "Delivered within 3 weeks",
        "Delivered on pallets",
        "Delivered quantity ±10 %",
        "Weight: as delivered",
        "As delivered",
        "Geliefert auf Paletten",
        "Geliefert in Rollen",
        "Geliefert innerhalb 3 Wochen",
        "Livré en bobines",
        "Livré sous 3 semaines",
        "Entregado en bobinas",
        "Entregado en 3 semanas",
        "Entregado este mes",
        "Levererat i rullar",
        "Levererat på pall",
    ],
)
def test_how_and_when_board_comes_is_no_freight(text):
    assert delivered(text) == {None}


@pytest.mark.parametrize(
    "text", ["Sheets and rolls, delivered", "Prices delivered in reels", "Board in rolls delivered"]
)
def test_the_form_of_board_beside_delivered_takes_nothing_from_it(text):
    assert delivered(text) == {True}
