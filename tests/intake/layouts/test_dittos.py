"""A ditto says what the cell above it says; what a spoilt file leaves of an empty field repeats nothing."""

import pytest

from tests.intake.sheets import lines


def prices(found):
    """Cell -> state, price and basis."""
    return {
        cell: (str(line.state), f"{line.offer.price:f}" if line.offer.price is not None else None, line.offer.basis)
        for cell, line in found.items()
    }


@pytest.mark.parametrize("same", ['"', "dto.", "id.", "d:o", '- " -', "idem"])
def test_a_ditto_says_what_the_cell_above_it_says(same):
    rows = [["€/t"], ["Sorte", "g/m²", "µm", "€/t"], ["GC1", 240, 405, 1320], [same, 270, 460, 1310]]
    found = lines(rows)
    assert (found["D4"].offer.grade, found["D4"].offer.product) == ("FBB", "GC1")
    assert prices(found)["D4"] == ("accepted", "1310", "tonne")


def test_a_ditto_in_the_price_column_is_the_price_above_it():
    rows = [
        ["Grade", "pt", "lb/MSF", "USD/ST"],
        ["SBS C1S", 14, 59, 1190],
        ["SBS C1S", 18, 76, '"'],
        ["CRB", 20, 78, 870],
    ]
    assert {cell: line.offer.price for cell, line in lines(rows).items()} == {"D2": 1190, "D3": 1190, "D4": 870}


@pytest.mark.parametrize(("mark", "repeats"), [('"', True), ("〃", True), ('""', False)])
def test_a_ditto_repeats_a_price_and_what_a_spoilt_file_leaves_of_an_empty_field_none(mark, repeats):
    rows = [["SBS C1S", 14, 58, 1240], ["SBS C1S", 18, 74, mark]]
    found = lines([["USD per short ton"], ["Grade", "Caliper (pt)", "lb/MSF", "Price"], *rows])
    assert ("D4" in found and str(found["D4"].state) == "accepted") is repeats
