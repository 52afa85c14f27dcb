"""Freight that a note gives for one town is charged; for one of several, or a part of the country, it stays open."""

import pytest

from tests.intake.sheets import lines


def freight(note):
    (line,) = lines([["Grade", "pt", "lb/MSF", "Price USD/ST"], ["SBS C1S", 16, 67, 1230], [], [note]]).values()
    return [charge.price for charge in line.offer.charges]


def test_to_one_town_it_is_charged():
    assert [float(price) for price in freight("Freight to Dayton $1.90/cwt")] == [1.9]


@pytest.mark.parametrize(
    "note",
    [
        "Freight to Dayton $1.90/cwt and Boston $2.90/cwt", "Freight to Midwest $1.90/cwt",
        "Freight to Dayton $1.90/cwt; all other points on request", "Freight to Eastern Seaboard $2.10/cwt",
    ],
)  # fmt: skip
def test_to_others_it_is_open(note):
    assert 0 not in freight(note)
    assert [float(price) for price in freight(note)] != [1.9]


@pytest.mark.parametrize(
    "note",
    [
        "Freight to your Dayton plant $45/ST and to your Akron plant $60/ST",
        "Freight to your Dayton plant $45/ST, to your Akron plant $60/ST",
        "Freight to your plant $45/ST, to your warehouse $60/ST",
        "Freight to your Ohio warehouse $45/ST, elsewhere at cost",
        "Fracht an Ihr Kasseler Werk 45 USD/ST, an Ihr Ulmer Werk 52 USD/ST",
        "Fracht an Ihr Kasseler Werk 45 USD/ST, sonst nach Aufwand",
        "Transport à votre usine de Lannoy 45 USD/ST et à votre usine de Lens 52 USD/ST",
        "Transport à votre usine de Lannoy 45 USD/ST, ailleurs sur demande",
        "Transporte a su planta de Burgos 45 USD/ST y a su planta de Soria 52 USD/ST",
        "Transporte hasta su planta de Burgos 45 USD/ST, otros destinos a consultar",
        "Frakt till er fabrik i Borås 45 USD/ST och till ert lager i Lund 52 USD/ST",
        "Frakt till ert Borås lager 45 USD/ST, annars självkostnad",
    ],
)
def test_to_several_sites_of_the_buyer_it_is_open(note):
    assert 45 not in freight(note)


@pytest.mark.parametrize(
    "note",
    [
        "Freight to your Dayton plant $45/ST", "To your Dayton plant freight is $45/ST",
        "Freight to your plant in Dayton $45/ST. Other grades take 3 weeks.",
        "Fracht an Ihr Kasseler Werk 45 USD/ST", "Fracht zu Ihrem Ulmer Lager 45 USD/ST",
        "Transport à votre usine de Lannoy 45 USD/ST", "Transport jusqu'à votre imprimerie de Lens 45 USD/ST",
        "Transporte a su planta de Burgos 45 USD/ST", "Frakt till ert Borås lager 45 USD/ST",
    ],
)  # fmt: skip
def test_to_one_site_of_the_buyer_it_is_charged(note):
    assert freight(note) == [45]
