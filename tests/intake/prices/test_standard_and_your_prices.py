"""What everybody pays beside 'Your price' is a list price; what board will cost next is not offered today."""

import pytest

from tests.intake.sheets import read


def states(*heads, title="Price list"):
    rows = [[title], ["Grade", "Caliper", *heads], ["SBS", "18 pt", 1200, 1100], ["CUK", "20 pt", 1100, 1000]]
    return {line.offer.source.cell: str(line.state) for line in read(rows).lines}


YOURS = [
    ("Standard USD/ST", "Your price USD/ST"), ("Regular USD/ST", "Your price USD/ST"),
    ("Standard EUR/tonne", "Ihr Preis EUR/tonne"), ("Tarif standard EUR/tonne", "Votre prix EUR/tonne"),
    ("Estándar EUR/tonne", "Su precio EUR/tonne"), ("Standard EUR/tonne", "Ert pris EUR/tonne"),
]  # fmt: skip


@pytest.mark.parametrize("heads", YOURS)
def test_beside_your_price_the_standard_one_is_no_offer(heads):
    assert states(*heads) == {"D3": "accepted", "D4": "accepted"}


def test_so_it_is_where_the_title_gives_the_unit():
    assert states("Standard", "Your price", title="Prices in USD per short ton") == {"D3": "accepted", "D4": "accepted"}


@pytest.mark.parametrize(
    "heads", [("Standard USD/ST", "Your current price USD/ST"), ("Standard USD/ST", "Rush price USD/ST")]
)
def test_beside_other_prices_it_stays(heads):
    assert "C3" in states(*heads)


@pytest.mark.parametrize(
    "heads",
    [
        ("This quarter USD/ST", "Next quarter USD/ST"), ("Current USD/ST", "Next month USD/ST"),
        ("Price USD/ST", "Next quarter USD/ST"), ("Q4 2026 USD/ST", "Next quarter USD/ST"),
        ("Dieses Quartal EUR/tonne", "Nächstes Quartal EUR/tonne"),
        ("Ce trimestre EUR/tonne", "Trimestre prochain EUR/tonne"),
        ("Este trimestre EUR/tonne", "Próximo trimestre EUR/tonne"), ("Detta kvartal EUR/tonne",
        "Nästa kvartal EUR/tonne"),
    ],
)  # fmt: skip
def test_a_price_of_the_next_time_is_asked_about(heads):
    assert states(*heads) == {"C3": "accepted", "D3": "question", "C4": "accepted", "D4": "question"}


def test_alone_it_is_the_price():
    rows = [["Grade", "Caliper", "Next quarter USD/ST"], ["SBS", "18 pt", 1200], ["CUK", "20 pt", 1100]]
    assert [str(line.state) for line in read(rows).lines] == ["accepted"] * 2
