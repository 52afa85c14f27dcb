"""Indices, averages, the market, wishes and histories beside an offer are no offers."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Grade", "g/m²", "µm", "EUR/t"]


def states(rows):
    """Cell -> state and price."""
    return {cell: (str(line.state), str(line.offer.price)) for cell, line in lines(rows).items()}


@pytest.mark.parametrize(
    "heads",
    [
        ("Market price", "Your target", "Our offer"),
        ("Prix du marché", "Votre objectif", "Notre offre"),
        ("Precio de mercado", "Su objetivo", "Nuestra oferta"),
    ],
)
def test_the_market_and_a_wish_beside_an_offer_are_no_offers(heads):
    rows = [["EUR/t"], [*HEAD[:3], *heads], ["GC1", 250, 400, 1265, 1165, 1225], ["GD2", 300, 395, 900, 820, 862]]
    assert states(rows) == {"F3": ("accepted", "1225"), "F4": ("accepted", "862")}


def test_an_index_beside_the_offers_is_neither_a_price_nor_a_charge():
    rows = [
        ["EUR/t"],
        [*HEAD, None, "Month", "FBB index", "Energy index"],
        ["GC1", 250, 400, 1240, None, "May", 1195, 104],
    ]
    (line,) = lines(rows).values()
    assert (line.offer.source.cell, line.offer.charges) == ("D3", ())


def test_an_average_named_last_is_no_offer():
    rows = [
        ["US$/ST"],
        ["Board", "pt", "lb/MSF", "US$/ST"],
        ["SBS C1S", 14, 60, 1200],
        ["SBS C1S average", None, None, 1200],
    ]
    assert set(states(rows)) == {"D3"}


BOARD = ["SBS C1S", 18, 75]
EXPORT_HEAD = ["Board", "pt", "lb/MSF"]


@pytest.mark.parametrize(
    "cost", ["Avg cost", "Std cost", "Standard price", "Coût moyen", "Durchschnittskosten", "Costo promedio"]
)
def test_what_board_costs_on_average_is_no_offer(cost):
    assert list(lines([[*EXPORT_HEAD, "USD/short ton", cost], [*BOARD, 1190, 1015], ["CRB", 18, 70, 850, 722]])) == [
        "D2",
        "D3",
    ]


def test_an_average_price_by_itself_is_still_asked_about():
    assert {str(line.state) for line in lines([[*EXPORT_HEAD, "Average price USD/ST"], [*BOARD, 1190]]).values()} == {
        "question"
    }


@pytest.mark.parametrize("words", ["Precio medio", "Prix moyen"])
def test_a_mean_below_a_group_is_no_offer(words):
    rows = [["EUR/t"], ["g/m²", "µm", "Prix"], ["GC2"], [250, 400, 1190], [300, 495, 1180], [words, None, 1185]]
    assert set(lines(rows)) == {"C4", "C5"}


def test_an_index_by_months_and_grades_offers_nothing():
    rows = [["Fibre cost index, 2024 = 100"], ["Month", "SBS", "CRB"], ["April", 104.2, 98.1], ["May", 105, 97.4]]
    assert not lines(rows, sheet="Index")


@pytest.mark.parametrize("heads", [("Jan 26", "Feb 26", "Mar 26"), ("Jan\n26", "Feb\n26", "Mar\n26")])
def test_what_prices_were_month_by_month_is_no_offer_on_one_line_or_two(heads):
    rows = [
        ["GBP per tonne"], ["Quality", "Substance, g/m²"], [None, 230, 250, 280], ["GC1", 1295, 1285, 1270],
        ["GD2", 875, 865, 850], [], ["What GD2 has cost, £ per tonne, monthly average"], [None, *heads],
        ["GD2", 822, 826, 833],
    ]  # fmt: skip
    assert {"B4", "C4", "D4", "B5", "C5", "D5"} == {cell for cell, line in lines(rows).items()}


@pytest.mark.parametrize("beside", ["Unser Angebot", "Kolumne 7"])
def test_a_wish_beside_other_prices_is_no_offer(beside):
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", "Ihr Zielpreis", beside], ["GC1", 250, 405, 1240, 1278],
            ["GD2", 350, 465, 840, 868]]  # fmt: skip
    assert list(lines(rows)) == ["E3", "E4"]
