"""Grades with their coatings, and boards that head their own columns."""

import pytest

from tests.intake.sheets import lines, merged


def test_a_grade_above_its_coatings_is_one_name_with_each():
    rows = [
        ["Caliper", "SBS", None, "CRB"],
        ["(pt)", "C1S", "C2S", "C1S"],
        [14, 1195, 1255, 905],
        [16, 1185, 1245, 895],
    ]
    found = lines([["US$ per short ton"], *rows], merged=merged((1, 1, 1, 2)))
    told = {cell: (line.offer.grade, line.offer.coated_sides, str(line.state)) for cell, line in found.items()}
    assert told["B4"] == ("SBS", 1, "accepted")
    assert told["C5"] == ("SBS", 2, "accepted")
    assert told["D4"] == ("CRB", 1, "accepted")


def test_a_grade_is_said_by_the_cell_that_names_it_though_a_unit_stands_below():
    found = lines(
        [["Gramaje (g/m²)", "Reverso gris (GD2)", "Reverso crema (GC2)"], ["", "EUR/t", "EUR/t"], [250, 962, 1268]]
    )
    said = {piece.field: piece for piece in found["C3"].evidence}
    assert (said["grade"].said_by, said["grade"].words) == ("C1", "Reverso crema (GC2)")


def test_a_board_with_its_unit_parts_the_rows_below_the_heads():
    heads = ["Caliper", "lb/MSF", "Lead", "Price"]
    rows = [["SBS C1S", None, None, "$/ST"], ["14 pt", 60, "3 wks", 1205]]
    rows += [["CRB C1S", None, None, "$/cwt"], ["18 pt", 70, "3 wks", 44.5]]
    found = lines([["FOB mill, US dollars"], [], heads, *rows])
    told = {cell: (line.offer.grade, line.offer.basis.value, str(line.state)) for cell, line in found.items()}
    assert told == {"D5": ("SBS", "short_ton", "accepted"), "D7": ("CRB", "cwt", "accepted")}


def test_a_board_may_head_its_own_calipers():
    block = [["SBS C1S", "lb/MSF", "$/ST"], ["14 pt", 60, 1240], ["18 pt", 77, 1220], []]
    found = lines([["Delivered"], [], *block, ["CUK", "lb/MSF", "$/ST"], ["18 pt", 75, 1085]])
    assert [(line.offer.grade, line.offer.coated_sides, str(line.state)) for line in found.values()] == [
        ("SBS", 1, "accepted"),
        ("SBS", 1, "accepted"),
        ("CUK", None, "accepted"),
    ]


def test_two_prices_in_one_cell_head_no_column():
    rows = [["SBS C1S 14 pt 60 lb/MSF", "$1,205/ST ($36.15/MSF)"], ["CUK 18 pt 75 lb/MSF", "$1,050/ST ($39.38/MSF)"]]
    assert set(lines([["Board", "Price"], *rows])) == {"B2", "B3"}


@pytest.mark.parametrize(
    ("heads", "measure", "first"),
    [
        (("16 pt ($/ST)", "18 pt ($/ST)"), "caliper_um", 406.4),
        (("16 pt price USD/ST", "18 pt price USD/ST"), "caliper_um", 406.4),
        (("16 pt\nUSD/ST", "18 pt\nUSD/ST"), "caliper_um", 406.4),
        (("250 g/m² (EUR/t)", "300 g/m² (EUR/t)"), "grammage_gsm", 250),
        (("Preis 250 g/m² €/t", "Preis 300 g/m² €/t"), "grammage_gsm", 250),
        (("250 g/m², prix EUR/t", "300 g/m², prix EUR/t"), "grammage_gsm", 250),
        (("250 g/m² precio €/t", "300 g/m² precio €/t"), "grammage_gsm", 250),
        (("250 g/m² pris EUR/t", "300 g/m² pris EUR/t"), "grammage_gsm", 250),
    ],
)
def test_a_head_may_be_a_value_and_the_unit_of_the_prices_below_it(heads, measure, first):
    found = lines([["Grade", *heads], ["SBS C1S", 1145, 1150], ["CRB", 905, 910]])
    assert sorted(found) == ["B2", "B3", "C2", "C3"]
    assert all(str(line.state) == "accepted" for line in found.values())
    assert float(getattr(found["B3"].offer, measure)) == first
