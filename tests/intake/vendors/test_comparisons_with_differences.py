"""Two vendors' bids with the difference between them, and old and new prices with theirs."""

import pytest

from tests.intake.sheets import lines, read

_BOARD = ["Board", "g/m²", "µm"]
_BIDS = [["GC1", 250, 405, 1284, 1271, -13], ["GD2", 350, 465, 817, 831, 14]]


def _compared(*heads):
    rows = [["EUR per tonne, delivered"], [], [*_BOARD, *heads], ["", "", "", "EUR/tonne", "EUR/tonne", "EUR/tonne"]]
    return {cell: (str(line.state), line.offer.vendor) for cell, line in lines([*rows, *_BIDS]).items()}


@pytest.mark.parametrize(
    ("one", "other", "difference"),
    [
        ("Supplier: Larchmoor Paperboard", "Supplier: Tarnside Board Ltd", "Difference"),
        ("Lieferant: Kartonfabrik Ostmark", "Lieferant: Verrin Karton GmbH", "Differenz"),
        ("Fournisseur : Cartonneries Verdaine", "Fournisseur : Papeteries Soulac", "Écart"),
        ("Proveedor: Papelera Altoria", "Proveedor: Cartones Benasca S.A.", "Diferencia"),
        ("Leverantör: Granforsa Kartong AB", "Leverantör: Fallbro Kartong AB", "Skillnad"),
        ("Larchmoor Board Inc.", "Tarnside Mills", "Diff."),
    ],
)
def test_of_two_vendors_bids_with_their_difference_neither_is_the_old_price(one, other, difference):
    found = _compared(one, other, difference)
    vendors = [name.split(":")[-1].strip() for name in (one, other)]
    assert found == {f"{column}{row}": ("accepted", vendors["DE".index(column)]) for row in (5, 6) for column in "DE"}


@pytest.mark.parametrize(
    "heads",
    [("Ostmark", "Verrin", "Differenz"), ("Supplier 1", "Supplier 2", "Difference"), ("Ist", "Soll", "Differenz")],
)
def test_two_prices_by_words_for_no_time_and_no_vendor_are_asked_about(heads):
    assert {state for state, _ in _compared(*heads).values()} == {"question"}
    assert set(_compared(*heads)) == {"D5", "E5", "D6", "E6"}


@pytest.mark.parametrize(
    "heads",
    [
        ("Preis alt", "Preis neu", "Differenz"),
        ("Current price", "New price", "Difference"),
        ("Q3", "Q4", "Diff."),
        ("Contract", "Offer", "Increase"),
    ],
)
def test_old_and_new_price_with_their_difference_stay_one_offer(heads):
    assert set(_compared(*heads)) == {"E5", "E6"}


US, METRIC = ["Board", "pt", "lb/MSF"], ["Sorte", "g/m²", "µm"]


def test_how_far_two_vendors_are_apart_is_no_offer():
    rows = [
        ["€/t"],
        [*METRIC, "Prix"],
        ["GC1", 250, 400, 1268],
        ["GD2", 300, 390, 797],
        [],
        ["Ecart moyen A/B", None, None, -46],
    ]
    assert set(lines(rows)) == {"D3", "D4"}
    assert read(rows).lines
