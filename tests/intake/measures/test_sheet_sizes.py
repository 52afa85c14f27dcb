"""The size of sheets: in cells and heads, in inches, as two sides, and lengths that make none."""

from decimal import Decimal

import pytest

from tests.intake.readings import read_rows
from tests.intake.sheets import lines, merged

HEAD = ["Grade", "pt", "lb/MSF"]


def test_inches_in_halves_and_quarters():
    reading = read_rows([["USD"], [*HEAD, "Size", "$/M"], ["CRB", 18, 72, "28-1/2 x 40 3/4", 268.9]])
    (line,) = reading.lines
    assert [float(side) for side in line.offer.sheet_mm] == [723.9, 1035.05]


@pytest.mark.parametrize("size", ["8 1/2 x 11 in", '8½ x 11"', "8.5 in x 11 in"])
def test_sheets_of_a_letters_size_where_the_cell_names_the_unit(size):
    (line,) = lines([["US$ each"], [*HEAD, "Trimmed size", "Each"], ["SBS", 12, 54, size, 0.031]]).values()
    assert [float(side) for side in line.offer.sheet_mm] == [215.9, 279.4]


@pytest.mark.parametrize(("head", "size"), [("Size", "8 1/2 x 11"), ("Size", "3 x 6 in"), ("Size (cm)", "28 x 40")])
def test_a_size_too_small_for_its_unit_is_asked_about(head, size):
    (line,) = lines([["US$ each"], [*HEAD, head, "Each"], ["SBS", 12, 54, size, 0.031]]).values()
    assert str(line.state) == "question"


def prices(found):
    """Cell -> state, price and basis."""
    return {
        cell: (str(line.state), f"{line.offer.price:f}" if line.offer.price is not None else None, line.offer.basis)
        for cell, line in found.items()
    }


def test_a_word_that_ends_in_x_is_no_sheet_size():
    found = lines([["€/t"], ["Sorte", "€/t"], ["GT2 Triplex 345 µm 250 g/m²", 955]])
    assert (found["B3"].offer.caliper_um, found["B3"].offer.grammage_gsm) == (345, 250)
    assert prices(found)["B3"] == ("accepted", "955", "tonne")


@pytest.mark.parametrize(
    ("board", "sides"),
    [("SBS una cara", 1), ("SBS dos caras", 2), ("SBS une face", 1), ("SBS una cara gris", None)],
)
def test_sides_written_out_behind_a_grade(board, sides):
    found = lines([["Grade", "pt", "g/m²", "USD/kg"], [board, 14, 295, 1.32], [board, 18, 375, 1.31]])
    assert {line.offer.coated_sides for line in found.values()} == {sides}


def test_a_head_over_the_boards_names_the_sheet_that_their_prices_are_for():
    rows = [["Sorte (Format 70 x 100 cm)", "g/m²", "µm", "€/1000 Bogen"], ["GC1", 250, 405, 226]]
    assert lines(rows)["D2"].offer.sheet_mm == (700, 1000)


def export(width, length, sheets, *, sides=(720, 1020), rolls="RL"):
    heads = ["MAT_TXT", "CAL_UM", "GSM", width, length, "NET_PR", "CURR", "PER", "UOM"]
    return [
        heads,
        [f"GC2 {rolls}", 385, 235, None, None, 1048, "EUR", 1000, "KG"],
        ["GC1 x", 495, 295, *sides, 251.4, "EUR", 1000, sheets],
    ]


@pytest.mark.parametrize(
    ("width", "length", "sheets"),
    [
        ("W_MM", "L_MM", "SHT"), ("LAI_MM", "LNG_MM", "FEUILLE"), ("BR_MM", "LG_MM", "Bogen"),
        ("ANC_MM", "LGO_MM", "HOJA"), ("BR_MM", "LGD_MM", "ark"), ("WIDTH_MM", "LEN_MM", "SHT"),
    ],
)  # fmt: skip
def test_two_columns_as_long_as_sheets_are_their_sides(width, length, sheets):
    found = lines(export(width, length, sheets))
    assert {cell: str(line.state) for cell, line in found.items()} == {"F2": "accepted", "F3": "accepted"}
    assert [line.offer.sheet_mm for line in found.values()] == [None, (720, 1020)]


def test_sides_in_centimetres_are_measured_in_them():
    assert lines(export("W_CM", "L_CM", "SHT", sides=(72, 102)))["F3"].offer.sheet_mm == (720, 1020)


@pytest.mark.parametrize("heads", [("W_MM", "D_MM"), ("MIN_MM", "MAX_MM")])
def test_measures_of_rolls_are_no_sides(heads):
    rows = [["Board", "CAL_UM", "GSM", *heads, "EUR per 1000 sheets"], ["GC2", 385, 235, 800, 1200, 104.8]]
    assert [line.offer.sheet_mm for line in lines(rows).values()] == [None]


def test_a_size_behind_a_word_for_the_form_is_read():
    head = ["Bezeichnung", "g/m²", "Format/Breite", "Preis EUR/t"]
    found = lines([head, ["GD2", 400, "Format 72 x 102 cm", 882.5], ["GD2", 350, "Rolle 84 cm", 871.5]])
    assert [line.offer.sheet_mm for line in found.values()] == [(720, 1020), None]


def test_the_sheet_size_of_a_note_is_not_that_of_rolls():
    head = ["Board", "Form", "pt", "Price", "Per"]
    rows = [["SBS", "rolls", 14, 1215, "short ton"], ["SBS", "sheets", 18, 344.1, "1,000 sheets"]]
    found = lines([["U.S. dollars"], head, *rows, [], ["Sheet size: 28 x 40 inches."]])
    assert [line.offer.sheet_mm is None for line in found.values()] == [True, False]


def test_a_web_beside_a_length_is_a_side_of_sheets_where_these_are_priced():
    heads = ["Qualité", "g/m²", "µm", "Laize mm", "Longueur mm"]
    found = lines([[*heads, "€ les 1000 feuilles"], ["GC2", 270, 440, 700, 1000, 248.2]])
    assert found["F2"].offer.sheet_mm == (Decimal(700), Decimal(1000))
    found = lines([[*heads, "€/t bobines"], ["GC2", 270, 440, 700, 1000, 1248]])
    assert found["F2"].offer.sheet_mm is None


def _sizes(head, board="GC1 FBB"):
    rows = [["Board", "g/m²", "µm", head, "EUR/tonne"], [board, 275, 450, "880 mm", 945]]
    rows += [[board, 300, 495, "710x1010 mm", 940], ["GD2", 350, 460, "1090 mm", 615]]
    return [line.offer.sheet_mm for line in lines(rows).values()]


@pytest.mark.parametrize(
    "head",
    [
        "Width/size",
        "Reel width / sheet size",
        "Breite/Format",
        "Rollenbreite/Format",
        "Laize ou format",
        "Ancho/formato",
        "Rullbredd/arkformat",
    ],
)
def test_a_sheets_size_among_widths_of_rolls_is_read(head):
    assert _sizes(head) == [None, (710, 1010), None]


@pytest.mark.parametrize("head", ["Reel width", "Width x dia.", "Laize"])
def test_only_where_the_head_or_the_row_speaks_of_sheets(head):
    assert _sizes(head) == [None, None, None]
    assert _sizes(head, "GC1 FBB reels") == [None, None, None]
    assert _sizes(head, "GC1 FBB sheets") == [None, (710, 1010), None]


def in_rolls_and_sheets(rolls, sheets):
    heads = [["Grade", "g/m²", "µm", rolls, sheets, None], [None, None, None, "€/t", "70x100 cm", "72x102 cm"]]
    rows = [*heads, ["GC1", 250, 400, 1180, 206.5, 216.8], ["GD2", 300, 400, 880, 200.1, 209.9]]
    return {cell: str(line.state) for cell, line in lines(rows, merged=merged((0, 4, 0, 5))).items()}


@pytest.mark.parametrize(
    ("rolls", "sheets"),
    [("ROLLS", "SHEETS (€/1000 sheets)"), ("ROLLEN", "BOGEN (€/1000 Bogen)"), ("BOBINE", "FEUILLES (€/1000 feuilles)"),
     ("BOBINA", "HOJA (€/millar)"), ("RULLAR", "ARK (€/1000 ark)")],
)  # fmt: skip
def test_rolls_need_no_size_beside_sheets_that_have_one(rolls, sheets):
    assert set(in_rolls_and_sheets(rolls, sheets).values()) == {"accepted"}


def test_a_price_that_names_neither_rolls_nor_a_size_is_asked_about():
    found = in_rolls_and_sheets("LARGE", "SHEETS (€/1000 sheets)")
    assert (found["D3"], found["E3"]) == ("question", "accepted")
