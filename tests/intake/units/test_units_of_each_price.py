"""Several prices in a row, each with a column of units of its own: the one right behind it, or right before it."""

import pytest

from tests.intake.sheets import codes, lines, prices

US = "All prices in USD"
BOARD = ["SBS C1S", "18 pt", 75]
HEAD = ["Grade", "Caliper", "lb/MSF"]
AGREE = [1140, "ST", 42.75, "MSF"]
IN_EUROS = {
    "de": ("Alle Preise in EUR", ["Sorte", "g/m²"], ["Preis", "je", "Preis", "je"]),
    "de-2": ("Alle Preise in EUR", ["Sorte", "g/m²"], ["Preis 1", "Einheit 1", "Preis 2", "Einheit 2"]),
    "fr": ("Tous les prix en EUR", ["Qualité", "g/m²"], ["Prix 1", "Unité 1", "Prix 2", "Unité 2"]),
    "es": ("Todos los precios en EUR", ["Calidad", "g/m²"], ["Precio", "Unidad", "Precio", "Unidad"]),
    "sv": ("Alla priser i EUR", ["Kvalitet", "g/m²"], ["Pris", "Enhet", "Pris", "Enhet"]),
}


@pytest.mark.parametrize(
    ("heads", "cells", "first", "second"),
    [
        (["Price", "Per", "Price", "Per"], AGREE, "D3", "F3"),
        (["Price 1", "Unit 1", "Price 2", "Unit 2"], AGREE, "D3", "F3"),
        (["Unit", "Price", "Unit", "Price"], ["ST", 1140, "MSF", 42.75], "E3", "G3"),
    ],
)
def test_one_price_on_two_bases_is_one_offer(heads, cells, first, second):
    found = lines([[US], [*HEAD, *heads], [*BOARD, *cells]])
    assert prices(found) == {first: ("accepted", "1140", "short_ton")}
    assert found[first].offer.source.also == (second,)


@pytest.mark.parametrize("language", IN_EUROS)
def test_in_every_language(language):
    title, head, heads = IN_EUROS[language]
    found = lines([[title], [*head, *heads], ["GC1", 300, 1140, "t", 342, "1000 m²"]])
    assert prices(found) == {"C3": ("accepted", "1140", "tonne")}
    assert found["C3"].offer.source.also == ("E3",)


def test_how_many_units_a_price_is_for_is_its_own_too():
    rows = [
        ["Alle Preise in EUR"],
        ["Sorte", "g/m²", "Preis", "PE", "ME", "Preis", "ME"],
        ["GC1", 300, 1140, 1000, "KG", 0.342, "M2"],
    ]
    found = lines(rows)
    assert prices(found) == {"C3": ("accepted", "1140", "tonne")}
    assert found["C3"].offer.source.also == ("F3",)


def test_two_prices_that_do_not_agree_are_asked_about():
    found = lines([[US], [*HEAD, "Price", "Per", "Price", "Per"], [*BOARD, 1140, "ST", 45, "MSF"]])
    assert {str(line.state) for line in found.values()} == {"question"}
    assert codes(found["D3"]) & {"prices-disagree", "basis-unknown"} == {"prices-disagree"}


def test_each_row_may_name_other_units():
    rows = [
        [US],
        [*HEAD, "Price", "Per", "Price", "Per"],
        [*BOARD, *AGREE],
        ["CRB", "20 pt", 78, 33.54, "MSF", 860, "ST"],
    ]
    assert prices(lines(rows)) == {"D3": ("accepted", "1140", "short_ton"), "D4": ("accepted", "33.54", "msf")}


@pytest.mark.parametrize(
    "heads",
    [
        ["Roll price", "U/M", "Sheet price", "U/M"],
        ["Price FOB mill", "U/M", "Price delivered", "U/M"],
        ["Harrowgate Board Inc.", "U/M", "Pinemoor Paper Co.", "U/M"],
        ["< 5 ST", "U/M", "> 5 ST", "U/M"],
    ],
)
def test_prices_of_two_things_keep_their_units_and_stay_apart(heads):
    found = lines([[US], [*HEAD, *heads], [*BOARD, 1140, "ST", 62, "CWT"], ["CRB", "20 pt", 78, 860, "ST", 50, "CWT"]])
    assert prices(found) == {
        "D3": ("accepted", "1140", "short_ton"),
        "F3": ("accepted", "62", "cwt"),
        "D4": ("accepted", "860", "short_ton"),
        "F4": ("accepted", "50", "cwt"),
    }


def test_currencies_are_told_apart_as_units_are():
    heads = ["Price", "Cur", "Per", "Price", "Cur", "Per"]
    found = lines([["Price list"], [*HEAD, *heads], [*BOARD, 1140, "USD", "ST", 1240, "EUR", "kg"]])
    assert [line.offer.currency for line in found.values()] == ["USD", "EUR"]
    assert [line.offer.basis for line in found.values()] == ["short_ton", "kg"]


def test_an_old_price_has_a_unit_of_its_own():
    heads = ["Old price", "Per", "New price", "Per"]
    found = lines([[US], [*HEAD, *heads], [*BOARD, 1140, "ST", 60, "CWT"]])
    assert prices(found) == {"F3": ("accepted", "60", "cwt")}


def test_a_single_unit_is_of_all_prices():
    found = lines([[US], [*HEAD, "FOB", "Delivered", "Per"], [*BOARD, 1140, 1190, "ST"]])
    assert prices(found) == {"D3": ("accepted", "1140", "short_ton"), "E3": ("accepted", "1190", "short_ton")}


@pytest.mark.parametrize(
    ("heads", "cells"),
    [
        # Which of three units a price is in, no place tells.
        (["Unit", "Price", "Per", "Price", "Per"], ["ST", 1140, "ST", 42.75, "MSF"]),
        # What the freight is per may be told, or what the price is.
        (["Price", "Per", "Freight", "Per"], [1140, "ST", 3.2, "CWT"]),
        # Its own unit is not filled in, and the other's is not its own.
        (["Price rolls", "Per", "Price sheets", "Per"], [1140, "ST", 62, ""]),
        # Two prices by the ton are two offers that nothing tells apart.
        (["Price 1", "Unit 1", "Price 2", "Unit 2"], [1140, "ST", 1190, "ST"]),
        # Without the sheet's size nobody can say whether the two agree.
        (["Price 1", "Unit 1", "Price 2", "Unit 2"], [1140, "ST", 190, "1000 sheets"]),
    ],
)
def test_what_no_place_tells_is_asked(heads, cells):
    found = lines([[US], [*HEAD, *heads], [*BOARD, *cells]])
    assert "question" in {str(line.state) for line in found.values()}


@pytest.mark.parametrize("heads", [["Roll price", "Sheet price"], ["Precio bobina", "Precio hojas"]])
def test_roll_price_beside_sheet_price_is_for_no_number_of_rolls(heads):
    found = lines([["Prices in USD/ST"], [*HEAD, *heads], [*BOARD, 1140, 1240], ["CRB", "20 pt", 78, 860, 960]])
    assert [str(line.state) for line in found.values()] == ["accepted"] * 4
