"""Two columns that are the ends of one range of prices hold no price to pay."""

import pytest

from tests.intake.sheets import codes, lines

BOARDS = [["GC1", 250], ["GC1", 300], ["GD2", 350]]
FIGURES = [[1145, 1245, 1190], [1135, 1235, 1180], [905, 945, 920]]


def table(*heads, title="EUR/t"):
    rows = [[title], ["Grade", "g/m²", *heads]]
    return lines([*rows, *([*board, *figures[: len(heads)]] for board, figures in zip(BOARDS, FIGURES, strict=True))])


@pytest.mark.parametrize(
    "heads",
    [
        ("Low", "High"), ("Lowest", "Highest"), ("Min", "Max"), ("Price from", "Price to"), ("Low EUR/t", "High EUR/t"),
        ("Price low", "Price high", "Average price"), ("Price range low", "Price range high"),
        ("von", "bis"), ("Preis von", "Preis bis"), ("Mindestpreis", "Höchstpreis"), ("EUR/t min.", "EUR/t max."),
        ("Prix mini", "Prix maxi"), ("Prix de", "Prix à"), ("Prix bas", "Prix haut", "Prix moyen"),
        ("Precio desde", "Precio hasta"), ("Precio mín.", "Precio máx."),
        ("Pris från", "Pris till"), ("Lägsta pris", "Högsta pris"),
        ("Max. price",), ("Durchschnittspreis",), ("Prix minimum",),
    ],
)  # fmt: skip
def test_the_ends_of_a_range_are_asked_about(heads):
    found = table(*heads)
    assert found
    assert all(line.state == "question" and "number-ambiguous" in codes(line) for line in found.values())


@pytest.mark.parametrize("heads", [("EUR/t up to 5 t", "EUR/t from 5 t"), ("Preis bis 5 t", "Preis ab 5 t")])
def test_prices_by_order_size_are_none(heads):
    assert {line.state for line in table(*heads).values()} == {"accepted"}


def test_neither_are_the_bounds_of_orders_or_measures():
    rows = [["Grade", "µm min", "µm max", "g/m²", "from (t)", "to (t)", "EUR/t"], ["GC1", 380, 400, 250, 1, 5, 1145]]
    (line,) = lines(rows).values()
    assert (line.state, line.offer.price, line.offer.from_kg) == ("accepted", 1145, 1000)
