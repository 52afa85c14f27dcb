"""Which of two prices beside each other is the one to pay."""

import pytest

from tests.intake.sheets import lines

SPECS = ["Grade", "Caliper (pt)", "lb/MSF"]


def _offered(*heads: str, prices: tuple[float, ...] = (1240, 1265)) -> set[str]:
    return set(lines([["USD per short ton"], [*SPECS, *heads], ["SBS C1S", 14, 58, *prices]]))


@pytest.mark.parametrize(
    "base", ["Base", "Base price", "Basispreis", "Prix de base", "Base USD/ST", "Coste USD/ST", "Mill cost"]
)
def test_a_base_leads_to_the_price_beside_it(base):
    assert _offered(base, "Price") == {"E3"}


def test_a_cost_by_weight_beside_a_price_by_area_is_the_same_price_said_twice():
    found = lines([[*SPECS, "Cost USD/ST", "Price USD/MSF"], ["SBS C1S", 14, 58, 1240, 40]])
    assert {str(line.state) for line in found.values()} == {"question"}
    assert set(lines([[*SPECS, "Cost USD/ST", "Price USD/MSF"], ["SBS C1S", 14, 58, 1240, 35.96]])) == {"D2"}


@pytest.mark.parametrize(
    "heads",
    [
        ("Current price", "Proposed price"),
        ("Derzeitiger Preis", "Künftiger Preis"),
        ("Price now", "Price from 1 July 2026"),
        ("Price", "Price effective 1 July 2026"),
    ],
)
def test_prices_of_two_times_are_asked_about(heads):
    found = lines([["USD per short ton"], [*SPECS, *heads], ["SBS C1S", 14, 58, 1240, 1265]])
    assert {str(line.state) for line in found.values()} == {"question"}


@pytest.mark.parametrize("heads", [("Old", "New"), ("Alt", "Neu")])
def test_the_new_beside_the_old_is_the_price(heads):
    assert _offered(*heads) == {"E3"}


def test_a_base_alone_or_beside_two_places_is_a_price():
    assert _offered("Base price", prices=(1240,)) == {"D3"}
    assert _offered("Base", "Freight", prices=(1240, 45)) == {"D3"}
    assert _offered("Base price", "Price delivered") == {"D3", "E3"}


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("Price Apr 2026 (old)", "Price Jul 2026 (current)"),
        ("Price Apr 2026", "Price Jul 2026, current"),
        ("Price (was)", "Price (now)"),
        ("Preis Jan. (alt)", "Preis Juli (aktuell)"),
        ("Prix (ancien)", "Prix (nouveau)"),
        ("Pris gammalt", "Pris nytt"),
        ("Preis alt (bis 30.09.2026)", "Preis neu (ab 01.10.2026)"),
        ("Prix ancien jusqu'au 30/09/2026", "Prix nouveau du 01/10/2026"),
    ],
)
def test_of_prices_that_differ_in_their_age_the_one_in_force_is_offered(old, new):
    assert _offered(old, new) == {"E3"}


@pytest.mark.parametrize(
    ("days", "states"),
    [
        (("01/05/2026", "01/11/2026"), ["accepted"]),
        (("1 May 2026", "1 November 2026"), ["accepted"]),
        # One of them is still to come, and the others are told apart by the order of day and month alone.
        (("1 November 2026", "1 January 2027"), ["question"] * 2),
        (("12/10/2026", "10/11/2026"), ["question"]),
    ],
)
def test_of_prices_at_days_the_last_before_the_list_is_offered(days, states):
    heads = [f"Prix au {day}" for day in days]
    rows = [["Tarif du 15 novembre 2026, EUR/t"], ["Qualité", "µm", "g/m²", *heads], ["GC1", 410, 250, 1240, 1265]]
    found = lines(rows)
    assert [str(line.state) for line in found.values()] == states


def test_two_prices_that_are_both_in_force_are_asked():
    rows = [["EUR/t"], ["Calidad", "µm", "g/m²", "Precio vigente", "Precio nuevo"], ["GC1", 410, 250, 1240, 1265]]
    assert {line.state.value for line in lines(rows).values()} == {"question"}


@pytest.mark.parametrize(
    ("title", "heads"),
    [
        ("Price change effective 1 November 2026", ("Current price", "New price")),
        ("Prisavisering fr.o.m. 1 november 2026", ("Nuvarande pris", "Nytt pris")),
        ("Nya priser från och med 1 november 2026", ("Pris idag", "Nytt pris")),
        ("Neue Preise ab 1. November 2026", ("Derzeitiger Preis", "Neuer Preis")),
        ("Nos prix augmentent à compter du 1er novembre 2026", ("Prix en vigueur", "Nouveau prix")),
        ("Nuevos precios a partir del 1 de noviembre de 2026", ("Precio vigente", "Nuevo precio")),
    ],
)
def test_the_new_price_of_a_letter_of_new_prices_is_the_offer(title, heads):
    rows = [[title], [], ["EUR/t"], ["Grade", "µm", "g/m²", *heads], ["GC1", 410, 250, 1240, 1265]]
    assert {cell: str(line.state) for cell, line in lines(rows).items()} == {"E5": "accepted"}
    assert {str(line.state) for line in lines(rows[1:]).values()} == {"question"}
