"""Telephones, pages, times of day and years that only look like prices."""

import pytest

from tests.intake.sheets import lines


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


@pytest.mark.parametrize(
    ("said", "leads"),
    [
        ("Délai 3 semaines, contact : service commercial, poste 2", [(21, 21), (21, 21)]),
        ("Poste 2 : délai 3 semaines", [None, (21, 21)]),
    ],
)  # fmt: skip
def test_the_number_of_a_telephone_is_that_of_no_line(said, leads):
    rows = [["Pos.", "Qualité", "g/m²", "µm", "€ / tonne"], [1, "GC1", 250, 410, 1250], [2, "GC2", 300, 500, 1210]]
    assert [line.offer.lead_days for line in lines([[said], [], *rows]).values()] == leads


_FREIGHTS = [["GD2", 280, 365, 782, 820, 839], ["GD2", 320, 420, 776, 814, 833], ["GC2", 255, 415, 1188, 1226, 1245]]


@pytest.mark.parametrize(("head", "state"), [("µm", None), ("Epp", "question"), ("Type", "question")])
def test_figures_that_only_the_head_of_another_column_calls_prices_are_asked_about(head, state):
    heads = [["Prix €/tonne", None, None, "Départ usine", "Franco"], ["Sorte", "g/m²", head, "Lyon", "Lyon", "Lille"]]
    found = lines([*heads, *_FREIGHTS])
    assert {str(found[cell].state) if cell in found else None for cell in ("C3", "C4", "C5")} == {state}


@pytest.mark.parametrize("head", ["Item", "Item No.", "Pos.", "Artikel", "Référence", "Artículo", "Artikelnr"])
def test_numbers_of_items_as_high_as_prices_are_none(head):
    rows = [[head, "Board", "g/m²", "EUR/t"], [1003, "GC1", 300, 1200], [1004, "GD2", 350, 1003]]
    assert list(lines(rows)) == ["D2", "D3"]


def test_figures_that_do_not_number_rows_are_asked_about():
    rows = [["Item", "Board", "g/m²", "EUR/t"], [1203, "GC1", 300, 1200], [904, "GD2", 350, 903]]
    assert {str(line.state) for line in lines(rows).values()} == {"accepted", "question"}
