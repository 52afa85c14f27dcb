"""An 'item' column beside quality classes may name another board than the heading above it."""

import pytest

from tests.intake.sheets import codes, lines

TITLES = {
    "en": "Prices in EUR per tonne", "de": "Preise in EUR je Tonne", "fr": "Prix en EUR par tonne",
    "es": "Precios en EUR por tonelada métrica", "sv": "Priser i EUR per ton (1000 kg)",
}  # fmt: skip


def grades(language, head, heading, *items, classes=("A", "B")):
    rows = [["Ferrowick Board"], [TITLES[language]], [*head[:2], "µm", "g/m²", head[2]], [heading]]
    rows += [[classes[at % 2], item, 770, 500, 716 + at] for at, item in enumerate(items)]
    return [line.offer.grade for line in lines(rows).values()]


HEADS = [
    ("en", ("Grade", "Item", "Price"), "SOLID BLEACHED SULFATE", "Roll stock", "Plain chipboard", "URB"),
    ("en", ("Class", "Item", "Price"), "COATED RECYCLED BOARD", "Rolls", "Coated unbleached kraft carrier", "CUK"),
    ("de", ("Qualität", "Position", "Preis"), "CHROMODUPLEX GD2", "Rollenware", "Graukarton ungestrichen", "URB"),
    ("fr", ("Qualité", "Article", "Prix"), "CARTON SBS", "Bobines", "Carton gris non couché", "URB"),
    ("es", ("Calidad", "Artículo", "Precio"), "CARTULINA SBS", "Bobinas", "Cartón gris sin estucar", "URB"),
    ("sv", ("Kvalitet", "Artikel", "Pris"), "SBS-KARTONG", "Rullar", "Gråkartong obestruken", "URB"),
]


@pytest.mark.parametrize(("language", "head", "heading", "form", "item", "grade"), HEADS)
def test_a_row_s_own_item_names_its_board_below_another_heading(language, head, heading, form, item, grade):
    first, *others = grades(language, head, heading, form, item, item)
    assert first in ("SBS", "CRB")
    assert others == [grade, grade]


NUMBERS = [("CRB-21", "CRB-24"), ("CUK 21", "CUK 24"), ("UC40", "UC42"), ("GD-250", "GD-300")]


@pytest.mark.parametrize("numbers", NUMBERS)
@pytest.mark.parametrize("classes", [("A", "B"), ("Larkin", "Thornby")])
def test_item_numbers_that_look_like_a_grade_name_no_board(numbers, classes):
    found = grades("en", ("Grade", "Item", "Price"), "SOLID BLEACHED SULFATE", *numbers, classes=classes)
    assert found == ["SBS", "SBS"]


def test_items_beside_a_column_that_names_the_grade_stay_items():
    rows = [
        ["Ferrowick Board"], ["Prices in EUR per tonne"], ["Item", "Grade", "µm", "g/m²", "Price"],
        ["Plain chipboard trays", "GC1", 400, 250, 1240], ["Trays", "GD2", 450, 350, 880],
    ]  # fmt: skip
    assert [line.offer.grade for line in lines(rows).values()] == ["FBB", "CRB"]


def test_a_number_that_contradicts_its_heading_is_asked_where_other_items_name_boards():
    rows = [
        ["Ferrowick Board"], ["Prices in EUR per tonne"], ["Grade", "Item", "µm", "g/m²", "Price"],
        ["SOLID BLEACHED SULFATE"], ["A", "Plain chipboard", 770, 500, 716], ["A", "CRB-21", 450, 350, 880],
    ]  # fmt: skip
    chip, numbered = lines(rows).values()
    assert chip.offer.grade == "URB"
    assert "grade-unknown" in codes(numbered)


@pytest.mark.parametrize(
    ("language", "head", "items"),
    [
        ("en", ("Product", "Item", "Price"), ("Replaces SBS", "like CUK")),
        ("de", ("Produkt", "Position", "Preis"), ("ersetzt GC1", "wie GD2")),
        ("fr", ("Produit", "Pos.", "Prix"), ("remplace GC1", "comme GD2")),
        ("es", ("Producto", "Pos.", "Precio"), ("sustituye a GC1", "como GD2")),
        ("sv", ("Produkt", "Pos.", "Pris"), ("ersätter GC1", "som GD2")),
    ],
)
def test_what_an_item_is_like_or_replaces_is_not_its_board(language, head, items):
    rows = [["Ferrowick Board"], [TITLES[language]], [head[1], head[0], "µm", "g/m²", head[2]]]
    rows += [[item, name, 770, 500, 716] for item, name in zip(items, ("Larkin", "Thornby"), strict=True)]
    found = lines(rows).values()
    assert [(line.offer.grade, str(line.state)) for line in found] == [(None, "question")] * 2
