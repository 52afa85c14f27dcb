"""Crowns and cents that are prices, and telephones, pages and times of day that only look like some."""

import pytest

from tests.intake.sheets import lines, prices


@pytest.mark.parametrize(
    ("text", "price"), [("13 450:50", "13450.50"), ("8.995:00", "8995.00"), ("9:75 kr/kg", "9.75"), ("8995:-", "8995")]
)
def test_crowns_and_ore(text, price):
    unit = "SEK/kg" if "kg" in text else "SEK/ton"
    found = lines([[f"Priser i {unit}"], ["Sort", "g/m²", "µm", "Pris"], ["GC2", 240, 390, text]])
    assert f"{found['D3'].offer.price:f}" == price


@pytest.mark.parametrize(("beside", "currency"), [("1.145 €/t", "EUR"), ("1.145 CHF/t", None), ("1145", None)])
def test_a_cent_is_a_part_of_the_only_money_that_the_list_names(beside, currency):
    found = lines([["Bezeichnung", "Preis"], ["GC2 250 g/m² 405 µm", beside], ["GD2 350 g/m² 465 µm", "78 ct/kg"]])
    assert found["B3"].offer.currency == currency


def test_crowns_and_ore_in_a_column_that_holds_no_times_of_day():
    rows = [["Prislista SEK"], ["Sort", "g/m²", "µm", "Pris per kg"], ["GC1", 260, 420, "15:80"]]
    found = lines([*rows, ["GC2", 240, 390, "14:30"]])
    assert [(str(line.state), f"{line.offer.price:f}") for line in found.values()] == [
        ("accepted", "15.80"), ("accepted", "14.30"),
    ]  # fmt: skip
    assert {str(line.state) for line in lines([*rows, ["GC2", 240, 390, "14:30:00"]]).values()} == {"question"}


def test_crowns_and_ore_beside_crowns_that_are_plainly_so():
    rows = [["Prislista SEK"], ["Sort", "g/m²", "µm", "Pris/kg", "Pris/ton"], ["GC1", 260, 420, "12:45", "12 450:-"]]
    assert prices(lines(rows)) == {"D3": ("accepted", "12.45", "kg")}


@pytest.mark.parametrize(("label", "figure"), [("Vertrieb Süd", "0171 4417218"), ("Kurs EUR/CHF", 0.94)])
def test_telephones_and_rates_of_exchange_below_the_prices_are_no_prices(label, figure):
    rows = [
        ["Preise CHF/t"],
        ["Sorte", "g/m²", "µm", "Preis"],
        ["GC1", 250, 405, 1204],
        [],
        [label, None, None, figure],
    ]
    assert list(lines(rows)) == ["D3"]


def test_a_page_number_in_the_column_of_prices_is_no_price():
    rows = [["Sorte", "g/m²", "µm", "EUR/t"], ["GC1", 250, 405, 1190], ["Liste 1/2027", None, None, "Seite 2 von 3"]]
    assert list(lines([*rows, ["GD2", 350, 465, 840]])) == ["D2", "D4"]


def test_a_time_of_day_is_no_price():
    found = lines([["Priser i SEK/ton"], ["Sort", "g/m²", "µm", "Pris"], ["GC2", 240, 390, "14:30"]])
    assert str(found["D3"].state) == "question"


@pytest.mark.parametrize(("title", "state"), [("Preise 2027 EUR/t", "accepted"), ("Preis 2027 EUR/t", "question")])
def test_a_year_behind_the_word_for_a_list_is_no_amount(title, state):
    rows = [[title], ["Sorte", "g/m²", "µm", "Preis"], ["GC1", 250, 405, 1298]]
    assert [str(line.state) for line in lines(rows).values()] == [state]
