"""Sheet sizes that a legend gives for the codes of a column."""

import pytest

from tests.intake.sheets import codes, lines

_EN = [["Cobble Board Inc."], ["Sheeted board, US$ per 1,000 sheets, FOB our plant"], []]
_HEAD = ["Board", "Cal. (pt)", "lb/MSF", "Size", "Price"]
_ROWS = [["SBS C1S", 12, 51, "A", 258.4], ["SBS C1S", 14, 59, "B", 219.65], ["CRB C1S", 18, 71, "C", 240.75]]
_INCHES = {"E5": (711.2, 1016.0), "E6": (635.0, 965.2), "E7": (584.2, 889.0)}


def _sheets(rows):
    return {cell: line.offer.sheet_mm and tuple(map(float, line.offer.sheet_mm)) for cell, line in lines(rows).items()}


def _read(*key, head=_HEAD, rows=_ROWS):
    return _sheets([*_EN, head, *rows, [], *([text] if isinstance(text, str) else text for text in key)])


@pytest.mark.parametrize(
    "key",
    [
        ["Size A = 28 x 40 in", "Size B = 25 x 38 in", "Size C = 23 x 35 in"],
        ["Sizes: A = 28 x 40 in, B = 25 x 38 in, C = 23 x 35 in"],
        ["Sizes in inches: A = 28 x 40; B = 25 x 38; C = 23 x 35"],
        ["A = 28 x 40 in, long grain", "B = 25 x 38 in, short grain", "C = 23 x 35 in"],
        ["Size A is 28 x 40 in, size B is 25 x 38 in and size C is 23 x 35 in."],
        ["Size A = 28 x 40 in (711 x 1016 mm)", "Size B = 25 x 38 in", "Size C = 23 x 35 in"],
        [["Size A", "28 x 40 in"], ["Size B", "25 x 38 in"], ["Size C", "23 x 35 in"]],
        [["Size code", "Dimensions"], ["A", "28 x 40 in"], ["B", "25 x 38 in"], ["C", "23 x 35 in"]],
    ],
)
def test_each_row_has_the_size_that_its_code_stands_for(key):
    assert _read(*key) == _INCHES
    assert _read(*key, head=["Board", "Cal. (pt)", "lb/MSF", "Code", "Price"]) == _INCHES


def test_a_key_may_stand_above_the_table_and_cells_may_say_size_before_the_code():
    key = [[f"Size {code} = {size} in"] for code, size in zip("ABC", ("28 x 40", "25 x 38", "23 x 35"), strict=True)]
    rows = [[*row[:3], f"Size {row[3]}", row[4]] for row in _ROWS]
    assert list(_sheets([*_EN[:2], *key, [], _HEAD, *rows]).values()) == list(_INCHES.values())


@pytest.mark.parametrize(
    ("title", "head", "label", "boards"),
    [
        ("Preise in EUR je 1000 Bogen, frei Haus", ["Sorte", "g/m²", "µm", "Format", "Preis"], "Format", "GC2"),
        ("Prix en EUR les 1000 feuilles, franco", ["Qualité", "g/m²", "µm", "Format", "Prix"], "Format", "GC2"),
        ("Precios en EUR por 1000 hojas", ["Calidad", "g/m²", "µm", "Formato", "Precio"], "Formato", "GC2"),
        ("Priser i EUR per 1000 ark, fritt levererat", ["Kvalitet", "g/m²", "µm", "Format", "Pris"], "Format", "GC2"),
    ],
)
@pytest.mark.parametrize("one_text", [True, False])
def test_other_languages(title, head, label, boards, one_text):
    sizes = {"A": "70 x 100 cm", "B": "72 x 102 cm"}
    rows = [[boards, 250, 400, "A", 310], [boards, 300, 495, "B", 290.5]]
    whole = [f"{label}: " + ", ".join(f"{code} = {size}" for code, size in sizes.items())]
    key = [whole] if one_text else [[f"{label} {code}: {size}"] for code, size in sizes.items()]
    assert _sheets([[title], [], head, *rows, [], *key]) == {"E4": (700.0, 1000.0), "E5": (720.0, 1020.0)}


def test_a_code_that_no_key_explains_has_no_size():
    assert _read("Size A = 28 x 40 in", "Size B = 25 x 38 in") == {**_INCHES, "E7": None}
    assert _read("Size A = 28 x 40 in") == {**_INCHES, "E6": None, "E7": None}


def test_a_code_explained_two_ways_has_no_size():
    assert _read("Size A = 28 x 40 in", "Size B = 25 x 38 in", "Size A = 26 x 38 in")["E5"] is None


def test_of_several_sizes_told_in_texts_none_is_every_rows():
    rows = [[*row[:3], row[4]] for row in _ROWS]
    head = ["Board", "Cal. (pt)", "lb/MSF", "Price"]
    found = lines([*_EN, head, *rows, [], ["Size A = 28 x 40 in"], ["Size B = 25 x 38 in"]])
    assert {line.offer.sheet_mm for line in found.values()} == {None}
    assert all("basis-unknown" in codes(line) for line in found.values())


def test_one_size_in_the_title_is_every_rows_whatever_others_a_note_offers():
    rows = [[*row[:3], row[4]] for row in _ROWS]
    titles = [["Cobble Board Inc."], ["Sheets 28 x 40 in, US$ per 1,000 sheets"], []]
    found = _sheets(
        [*titles, ["Board", "Cal. (pt)", "lb/MSF", "Price"], *rows, [], ["Other sizes: 25 x 38 in on request"]]
    )
    assert set(found.values()) == {(711.2, 1016.0)}


def test_heads_of_prices_are_explained_as_well():
    rows = [[*row[:3], row[4], row[4] - 30] for row in _ROWS]
    head = ["Board", "Cal. (pt)", "lb/MSF", "Size A", "Size B"]
    found = _read("Size A = 28 x 40 in", "Size B = 25 x 38 in", head=head, rows=rows)
    assert {cell: size for cell, size in found.items() if cell[1:] == "5"} == {
        "D5": (711.2, 1016.0),
        "E5": (635.0, 965.2),
    }


def test_the_letters_of_order_sizes_are_no_sheets():
    key = ["A = less than 10,000 lb", "B = 10,000 lb to 40,000 lb", "C = 40,000 lb or more"]
    assert set(_read(*key, head=["Board", "Cal. (pt)", "lb/MSF", "Class", "Price"]).values()) == {None}
