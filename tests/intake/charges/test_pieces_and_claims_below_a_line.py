"""What a line adds to the prices by the piece, or under a name that elsewhere is of other dealings, leaves the cost
open: it is never taken for a charge per sheet, and never passed over in silence."""

import pytest

from tests.intake.sheets import read

_LISTS = {
    "en": (["Grade", "Caliper (pt)", "Price USD/short ton"], ["SBS", 18, 1200], "Added to all prices:"),
    "de": (["Sorte", "Gewicht g/m²", "Preis EUR/t"], ["GC1", 250, 1200], "Hinzu kommen auf alle Sorten:"),
    "fr": (["Qualité", "Grammage g/m²", "Prix EUR/t"], ["GC1", 250, 1200], "S'ajoutent à tous les prix :"),
    "es": (["Calidad", "Gramaje g/m²", "Precio EUR/t"], ["GC1", 250, 1200], "Se añaden a todos los precios:"),
    "sv": (["Kvalitet", "Ytvikt g/m²", "Pris EUR/t"], ["GC1", 250, 1200], "Tillkommer på alla priser:"),
}
_FREIGHT = {
    "en": ("Freight", "$42/ST"),
    "de": ("Fracht", "42 EUR/t"),
    "fr": ("Transport", "42 EUR/t"),
    "es": ("Transporte", "42 EUR/t"),
    "sv": ("Frakt", "42 EUR/t"),
}


def charges(language, name, amount, layout):
    """The name of each charge of the board, with its amount; 0 where that is open."""
    head, board, line = _LISTS[language]
    rows = [
        {"row": [said, amount_], "below the price": [said, None, amount_], "one cell": [f"{said} {amount_}"]}[layout]
        for said, amount_ in ((name, amount), _FREIGHT[language])
    ]
    (found,) = read([head, board, [line], *rows]).lines
    assert str(found.state) == "accepted"
    return {one.label: int(one.price) for one in found.offer.charges}


@pytest.mark.parametrize("layout", ["row", "below the price", "one cell"])
@pytest.mark.parametrize(
    ("language", "name", "amount"),
    [
        ("en", "Pallets", "$12 each"),
        ("en", "Cores", "$8 each"),
        ("en", "Packaging", "$3 each"),
        ("en", "FSC claim fee", "$15/ST"),
        ("de", "Paletten", "9 EUR/Stück"),
        ("de", "Reklamation", "15 EUR/t"),
        ("fr", "Palettes", "9 EUR pièce"),
        ("fr", "Palettes", "9 EUR l'unité"),
        ("es", "Palés", "9 EUR/unidad"),
        ("es", "Palés", "9 EUR c/u"),
        ("sv", "Pallar", "9 EUR/styck"),
    ],
)
def test_what_is_not_read_is_open_and_told(language, name, amount, layout):
    freight, _ = _FREIGHT[language]
    assert charges(language, name, amount, layout) == {name: 0, freight: 42}


@pytest.mark.parametrize("layout", ["row", "below the price", "one cell"])
@pytest.mark.parametrize(
    ("language", "name", "amount", "price"),
    [("en", "Pallets", "$12/ST", 12), ("en", "Certification fee", "$15/ST", 15), ("de", "Paletten", "9 EUR/t", 9)],
)
def test_what_is_per_ton_is_charged(language, name, amount, price, layout):
    freight, _ = _FREIGHT[language]
    assert charges(language, name, amount, layout) == {name: price, freight: 42}


@pytest.mark.parametrize("layout", ["row", "below the price", "one cell"])
@pytest.mark.parametrize(
    ("language", "name", "amount"),
    [("en", "Sales tax", "6 %"), ("en", "Late payment", "1.5 %"), ("de", "Skonto", "2 %")],
)
def test_tax_and_terms_of_payment_are_no_charge(language, name, amount, layout):
    freight, _ = _FREIGHT[language]
    assert charges(language, name, amount, layout) == {freight: 42}


def test_a_surcharge_is_one_whenever_it_is_to_be_paid():
    name = "Raw material surcharge payable with invoice"
    assert charges("en", name, "$15/ST", "row") == {name: 0, "Freight": 42}
