"""Columns that are a share of the price by a head that names the price: '% of base price'."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.heads.role_words import header_roles

LANGUAGES = [
    ("Base price", "EUR per tonne", "Energy surcharge", "% of base price"),
    ("Grundpreis", "EUR je Tonne", "Energiezuschlag", "% vom Grundpreis"),
    ("Preis", "EUR je Tonne", "Energiezuschlag", "in % des Preises"),
    ("Prix de base", "EUR par tonne", "Surcharge énergie", "% du prix de base"),
    ("Precio base", "EUR por tonelada", "Recargo energético", "% s/ precio base"),
    ("Grundpris", "EUR per 1000 kg", "Energitillägg", "% av grundpris"),
]


def read(*heads, charge=3):
    rows = [[None] * 5 for _ in heads]
    for row, (price, energy) in zip(rows, heads, strict=True):
        row[3:] = [price, energy]
    rows[0][:3] = ["Sorte", "g/m²", "µm"]
    return lines([*rows, ["GC2", 255, 430, 1340, charge], ["GD2", 350, 455, 935, charge - 0.5]])


@pytest.mark.parametrize(("price", "unit", "charge", "share"), LANGUAGES)
def test_a_share_below_a_charge_is_the_charges(price, unit, charge, share):
    for found in (read((price, charge), (unit, share)), read((f"{price}, {unit}", f"{charge}, {share}"))):
        assert [(str(line.state), line.offer.price) for line in found.values()] == [
            ("accepted", 1340),
            ("accepted", 935),
        ]
        assert [[str(one.price) for one in line.offer.charges] for line in found.values()] == [["3"], ["2.5"]]


@pytest.mark.parametrize("head", ["Price", "Price, 3 % cash discount taken", "Price 2 % on list price"])
def test_a_percentage_that_is_told_of_the_price_leaves_it_a_price(head):
    assert header_roles(head)[0].role == "price"


@pytest.mark.parametrize(
    "head", ["% of base price", "pct of price", "% vom Grundpreis", "% sur le prix", "% på priset"]
)
def test_a_share_heads_no_price(head):
    assert header_roles(head) == ()
