"""'Los precios anteriores' below a table are those above it where that is said of them which is said of prices to be
paid; else they may be an older list's."""

import pytest

from tests.intake.sheets import lines

ROWS = [["Calidad", "Gramaje g/m²", "Precio EUR/t"], ["GC1", 250, 1200], ["GD2", 300, 900], []]


def read_below(note):
    return list(lines([*ROWS, [note]]).values())


@pytest.mark.parametrize(
    ("note", "delivered"),
    [
        ("Los precios anteriores no incluyen transporte.", False), ("Los precios anteriores son franco fábrica", False),
        ("Los precios anteriores incluyen palés.", None), ("Los precios anteriores son netos.", None),
        ("Precios anteriores sin IVA", None), ("Los precios anteriores se entienden por tonelada.", None),
    ],
)  # fmt: skip
def test_what_is_said_of_the_prices_above_leaves_them_in_force(note, delivered):
    found = read_below(note)
    assert [line.state for line in found] == ["accepted", "accepted"]
    assert [line.offer.delivered for line in found] == [delivered, delivered]


def test_what_comes_on_top_of_them_is_charged():
    for note in (
        "A los precios anteriores se suma transporte 40 EUR/t",
        "Sobre los precios anteriores hay energía 40 EUR/t",
    ):
        found = read_below(note)
        assert [line.state for line in found] == ["accepted", "accepted"]
        assert [[int(charge.price) for charge in line.offer.charges] for line in found] == [[40], [40]]


@pytest.mark.parametrize(
    "note",
    [
        "Precios anteriores", "Precios anteriores: lista de enero", "Los precios anteriores quedan anulados.",
        "Los precios anteriores ya no son válidos.", "Los precios anteriores eran más bajos.",
        "Estos precios anteriores están anulados.",
    ],
)  # fmt: skip
def test_where_an_older_list_may_be_meant_it_is_asked(note):
    assert {line.state for line in read_below(note)} == {"question"}
