"""Both sides of a sheet in one column or two, under heads that could as well name the width of rolls."""

import pytest

from tests.intake.sheets import codes, lines

BOARD = ["Qualité", "g/m²", "µm"]


def size(*, heads, cells, price="€ le mille"):
    (line,) = lines([[*BOARD, *heads, price], ["GC2", 270, 440, *cells, 248.2]]).values()
    return line


@pytest.mark.parametrize("price", ["€ le mille", "EUR / 1000 feuilles"])
def test_a_width_beside_a_length_is_of_sheets_where_the_price_is_by_the_thousand(price):
    line = size(heads=["Laize mm", "Longueur mm"], cells=[700, 1000], price=price)
    assert (line.state, line.offer.basis, line.offer.sheet_mm) == ("accepted", "1000sheets", (700, 1000))


def test_both_sides_under_a_word_for_the_width_of_rolls_are_a_sheet():
    line = size(heads=["Laize cm"], cells=["70 x 100"])
    assert (line.state, line.offer.sheet_mm) == ("accepted", (700, 1000))


def test_of_a_price_by_weight_they_are_what_a_roll_measures():
    line = size(heads=["Laize cm"], cells=["70 x 100"], price="€/t")
    assert (line.offer.sheet_mm, codes(line)) == (None, set())


def test_a_width_alone_leaves_the_size_open():
    line = size(heads=["Laize mm"], cells=[700])
    assert (line.state, codes(line)) == ("question", {"basis-unknown"})
