"""Who bears the way is heard beside what is said of tax, and in a cell of its own beside others."""

import pytest

from tests.intake.sheets import read

HEAD, BOARD = ["Grade", "g/m²", "EUR/t"], ["GC1", 250, 1200]


@pytest.mark.parametrize(
    ("text", "delivered"),
    [
        ("Tarif cartons pliants n° 18 – prix HT départ usine", False), ("Prix HT départ usine", False),
        ("Prix HTVA départ usine", False), ("Prix HT franco", True), ("Tarif HT franco", True),
        ("Preise zzgl. MwSt. ab Werk", False), ("Prices excl. VAT ex works", False),
        ("Precios sin IVA en fábrica", False), ("Priser exkl. moms fritt fabrik", False),
        ("Échantillons HT départ usine", None), ("Prix HT départ usine ou franco", None),
    ],
)  # fmt: skip
def test_tax_beside_the_term(text, delivered):
    assert [line.offer.delivered for line in read([[text], HEAD, BOARD]).lines] == [delivered]


@pytest.mark.parametrize(
    "text",
    [
        "Warehouse pick-up, ex works", "Abholung am Lager, ab Werk", "Enlèvement au dépôt, départ usine",
        "Recogida en almacén, ex works", "Hämtning på lager, fritt fabrik",
    ],
)  # fmt: skip
def test_a_term_between_other_cells(text):
    rows = [["Seller: Vesterlund Board", None, text, None, None, "EUR"], [], HEAD, BOARD]
    assert [line.offer.delivered for line in read(rows).lines] == [False]


def test_a_term_that_asks_for_its_place_takes_it_from_the_next_cell():
    assert [line.offer.delivered for line in read([["FCA", "Hamburg"], [], HEAD, BOARD]).lines] == [False]
