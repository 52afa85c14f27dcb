"""'Importe' and 'Betrag' over what board costs: below a unit of price, where nothing counts what is bought."""

import pytest

from tests.intake.sheets import lines

LANGUAGES = [
    ("Condiciones: DAP, EUR/tonelada métrica", "Importe", "Cantidad (t)"),
    ("Preise in EUR je Tonne", "Betrag", "Menge (t)"),
    ("Prix en EUR par tonne métrique", "Montant", "Quantité (t)"),
    ("Priser i EUR per 1000 kg", "Belopp", "Mängd (t)"),
]


@pytest.mark.parametrize(("title", "amount", "quantity"), LANGUAGES)
def test_an_amount_below_a_unit_of_price_is_the_price(title, amount, quantity):
    rows = [
        [title],
        [],
        ["Nr.", "Sorte", "g/m²", "µm", amount],
        [11, "GC2", 255, 430, 1219],
        [12, "GD2", 300, 385, 853],
    ]
    assert [(str(line.state), line.offer.price, str(line.offer.basis)) for line in lines(rows).values()] == [
        ("accepted", 1219, "tonne"),
        ("accepted", 853, "tonne"),
    ]


@pytest.mark.parametrize(("title", "amount", "quantity"), LANGUAGES)
def test_what_a_quantity_comes_to_is_asked_about(title, amount, quantity):
    rows = [
        [title],
        [],
        ["Sorte", "g/m²", "µm", quantity, amount],
        ["GC2", 255, 430, 2, 2438],
        ["GD2", 300, 385, 3, 2559],
    ]
    assert "accepted" not in {str(line.state) for line in lines(rows).values()}


@pytest.mark.parametrize(("title", "amount", "quantity"), LANGUAGES)
def test_an_amount_below_no_unit_is_asked_about(title, amount, quantity):
    rows = [["EUR"], [], ["Sorte", "g/m²", "µm", amount], ["GC2", 255, 430, 1219], ["GD2", 300, 385, 853]]
    assert "accepted" not in {str(line.state) for line in lines(rows).values()}


@pytest.mark.parametrize(
    ("amount", "unit"), [("Valor", "Moneda/unidad"), ("Valeur", "Devise/unité"), ("Value", "Currency/unit")]
)
def test_a_value_whose_row_says_what_it_is_per_is_a_price(amount, unit):
    rows = [["Board", "µm", "g/m²", amount, unit], ["GC1", 400, 250, 1285, "EUR/t"], ["GD2", 450, 350, 0.866, "EUR/kg"]]
    assert [(str(line.state), line.offer.currency, str(line.offer.basis)) for line in lines(rows).values()] == [
        ("accepted", "EUR", "tonne"),
        ("accepted", "EUR", "kg"),
    ]


def test_a_value_beside_a_price_is_what_the_line_comes_to():
    rows = [
        ["Board", "µm", "g/m²", "Qty t", "Price EUR/t", "Value"],
        ["GC1", 400, 250, 2, 1285, 2570],
        ["GD2", 450, 350, 3, 866, 2598],
    ]
    assert list(lines(rows)) == ["E2", "E3"]


@pytest.mark.parametrize(
    ("value", "unit"),
    [("Valor", "Moneda/unidad"), ("Valeur", "Unité"), ("Wert", "Einheit"), ("Värde", "Enhet"), ("Value", "Unit")],
)
def test_the_value_of_so_much_board_is_no_price_per_the_unit_beside_it(value, unit):
    heads = ["Board", "g/m²", "µm", "Quantity (t)", value, unit]
    rows = [heads, ["GC1", 250, 400, 3, 3855, "EUR/tonne"], ["GC2", 300, 500, 2, 1980, "EUR/tonne"]]
    assert "accepted" not in {str(line.state) for line in lines(rows).values()}
    smallest = [[*heads[:3], "Minimum order (t)", *heads[4:]], ["GC1", 250, 400, 3, 1285, "EUR/tonne"]]
    assert [(str(line.state), line.offer.minimum_kg) for line in lines(smallest).values()] == [("accepted", 3000)]
