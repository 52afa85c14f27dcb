"""Two tables, each with a title that says what its prices are per: neither is asked by the other's."""

import pytest

from tests.intake.sheets import read

TITLES = [
    (["Dicke µm", "g/m²", "Preis"], "Graupappe (URB), Preis EUR je kg", "Rollenkarton GD3, Preis EUR je Tonne"),
    (
        ["Dicke µm", "g/m²", "Preis"],
        "Maschinenpappe grau (URB), Preis EUR je kg",
        "Rollenkarton GD3, Preis EUR je Tonne",
    ),
    (["Thickness µm", "g/m²", "Price"], "Greyboard, price EUR per kg", "Lined chipboard GD3, price EUR per tonne"),
    (["Épaisseur µm", "g/m²", "Prix"], "Carton gris, prix EUR le kg", "Carton GD3 en bobines, prix EUR la tonne"),
    (["Espesor µm", "g/m²", "Precio"], "Cartón gris, precio EUR por kg", "Cartón GD3, precio EUR por tonelada"),
    (["Tjocklek µm", "g/m²", "Pris"], "Gråpapp, pris EUR per kg", "Kartong GD3, pris EUR per ton"),
]


@pytest.mark.parametrize("turned", [False, True])
@pytest.mark.parametrize(("head", "first", "second"), TITLES)
def test_each_has_its_own(head, first, second, turned):
    by_kg = [[first], head, [1000, 640, 0.615], [1500, 960, 0.608]]
    by_tonne = [[second], head, [330, 250, 842], [400, 300, 836]]
    upper, lower = (by_tonne, by_kg) if turned else (by_kg, by_tonne)
    found = read([["Veddelmoor Pappenwerk"], [], *upper, [], *lower]).lines
    assert [str(line.state) for line in found] == ["accepted"] * 4
    expected = ["tonne"] * 2 + ["kg"] * 2 if turned else ["kg"] * 2 + ["tonne"] * 2
    assert [str(line.offer.basis) for line in found] == expected


def test_what_all_prices_are_per_is_asked_beside_another_unit():
    rows = [["Alle Preise EUR je kg"], [], ["Rollenkarton GD3, Preis EUR je Tonne"], ["Dicke µm", "g/m²", "Preis"]]
    found = read([*rows, [330, 250, 842], [400, 300, 836]]).lines
    assert [str(line.state) for line in found] == ["question"] * 2


def test_a_title_without_a_unit_leaves_that_of_the_first_table():
    head = ["Dicke µm", "g/m²", "Preis"]
    rows = [["Graupappe (URB), Preis EUR je Tonne"], head, [1000, 640, 615], [], ["Rollenkarton GD3"], head]
    found = read([*rows, [330, 250, 842]]).lines
    assert [str(line.offer.basis) for line in found] == ["tonne"] * 2
