"""A coating told of all boards is not that of a board of which the same note tells another."""

import pytest

from tests.intake.sheets import lines

ROWS = [["Grade", "g/m²", "Price EUR/t"], ["SBS", 300, 1200], ["CUK", 350, 900], ["CRB", 300, 700]]


def _sides(note):
    return [line.offer.coated_sides for line in lines([*ROWS, [note]]).values()]


@pytest.mark.parametrize(
    "note",
    [
        "All grades coated one side; CRB on both", "All grades coated one side; CRB coated both sides",
        "All grades coated one side, CRB both sides", "All grades C1S; CRB C2S",
        "Alle Sorten einseitig gestrichen; CRB beidseitig",
    ],
)  # fmt: skip
def test_no_board_has_one_that_another_part_of_the_note_denies(note):
    assert _sides(note) == [None, None, None]


@pytest.mark.parametrize("note", ["All grades coated one side", "All grades coated one side; CRB on two pallets"])
def test_each_has_one_that_holds_for_all(note):
    assert _sides(note) == [1, 1, 1]
