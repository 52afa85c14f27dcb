"""Groups of boards in different money, each said in the line over its boards, whatever else that line names."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import State

HEADS = {
    "en": (["Board", "g/m²", "µm", "Price"], "Prices per tonne, delivered", "Board"),
    "de": (["Sorte", "g/m²", "µm", "Preis"], "Preise je Tonne, frei Haus", "Karton"),
    "fr": (["Qualité", "g/m²", "Épaisseur µm", "Prix"], "Prix à la tonne, franco domicile", "Carton"),
    "es": (["Calidad", "g/m²", "µm", "Precio"], "Precios por tonelada métrica", "Cartón"),
    "sv": (["Kvalitet", "g/m²", "µm", "Pris"], "Priser per ton (1000 kg)", "Kartong"),
}


def money(language, first, second, as_text=False):
    head, title, board = HEADS[language]
    figure = str if as_text else (lambda value: value)
    rows = [
        ["Ferrowick Board"], [title], [], head,
        [first], *([f"{board} {name}", *map(figure, measures)] for name, *measures in BOARDS),
        [second], *([f"{board} {name}", *map(figure, measures)] for name, *measures in BOARDS),
    ]  # fmt: skip
    return [line.offer.currency if line.state is State.ACCEPTED else "asked" for line in lines(rows).values()]


BOARDS = [("GC1", 250, 405, 1268.5), ("GD2", 350, 470, 889.5)]


@pytest.mark.parametrize("as_text", [False, True])
@pytest.mark.parametrize(
    ("language", "first", "second"),
    [
        ("en", "Own make, prices in CHF", "Imported grades, prices in EUR"),
        ("en", "Mill direct, CHF", "Traded boards, EUR"),
        ("de", "Eigenfertigung, Preise in CHF", "Importware, Preise in EUR"),
        ("fr", "Fabrication maison, prix en CHF", "Qualités importées, prix en EUR"),
        ("fr", "Spécialités de l'atelier, en CHF", "Négoce, en EUR"),
        ("es", "Fabricación propia, precios en CHF", "Importados, precios en EUR"),
        ("sv", "Egen tillverkning, priser i CHF", "Import, priser i EUR"),
    ],
)
def test_each_group_is_in_the_money_that_its_line_says(language, first, second, as_text):
    assert money(language, first, second, as_text) == ["CHF", "CHF", "EUR", "EUR"]


@pytest.mark.parametrize(
    ("language", "first"),
    [
        ("en", "Bought in USD, prices in CHF"), ("de", "Einkauf in USD, Preise in CHF"),
        ("fr", "Achat en USD, prix en CHF"), ("es", "Compra en USD, precios en CHF"),
        ("sv", "Inköp i USD, priser i CHF"),
    ],
)  # fmt: skip
def test_money_that_prices_are_not_in_is_none_of_theirs(language, first):
    assert money(language, first, "EUR")[:2] in (["CHF", "CHF"], ["asked", "asked"])


def test_money_of_some_boards_stays_theirs():
    assert money("en", "GC1 in USD, GD2 prices in CAD", "EUR")[:2] == ["USD", "CAD"]
