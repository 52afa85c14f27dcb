"""A column of what a year's tons come to, 'Budget 2027 $', beside the prices: its head ends in a year and no price."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.tables.headers.heads import head_of_words

_ROWS = (
    ["SBS", 305, 249, 640, 1232, 788480],
    ["SBS", 457, 371, 1150, 1208, 1389200],
    ["CUK", 533, 424, 410, 1044, 428040],
)


@pytest.mark.parametrize(
    "heads",
    [
        ("Grade", "µm", "g/m²", "Tonnes 2026", "Price 2027 EUR/t", "Budget 2027 €"),
        ("Sorte", "µm", "g/m²", "Tonnen 2026", "Preis 2027 EUR/t", "Budget 2027 €"),
        ("Qualité", "µm", "g/m²", "Tonnes 2026", "Prix 2027 EUR/t", "Budget 2027 €"),
        ("Calidad", "µm", "g/m²", "Toneladas 2026", "Precio 2027 EUR/t", "Presupuesto 2027 €"),
        ("Kvalitet", "µm", "g/m²", "Ton 2026", "Pris 2027 EUR/t", "Budget 2027"),
    ],
)
def test_the_price_is_read_and_the_budget_is_none(heads):
    found = lines([["Alder Board Ltd"], [], [*heads], *_ROWS])
    assert {cell: str(line.offer.price) for cell, line in found.items()} == {"E4": "1232", "E5": "1208", "E6": "1044"}
    assert all(line.state == "accepted" for line in found.values())


@pytest.mark.parametrize("text", ["budget 2027 USD/t", "Budget 2,027 $", "indicative 1240 $/t"])
def test_an_indicative_price_is_no_head_of_a_year(text):
    head = head_of_words(text)
    assert head is None or head.named


def test_a_price_called_so_in_a_row_stays_one():
    found = lines([["Grade", "µm", "g/m²", "EUR/t"], ["SBS", 305, 249, 1232], ["CUK", 533, 424, "budget 1044"]])
    assert [str(line.offer.price) for line in found.values()] == ["1232", "1044"]
