"""A sheet's size in the column of the rolls' widths is one; how wide and how thick a roll is makes none."""

import pytest

from tests.intake.sheets import lines


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
