"""A standard's code beside a name that is used of several boards, and words for how its sides are."""

import pytest

from tracker.intake.values.boards.grade import find_grade


@pytest.mark.parametrize(
    "name",
    ["GD2 chipboard, white lined", "GD2 chipboard, white-lined, grey back", "GT2 grey chipboard, white lined"],
)
def test_its_sides_name_no_other_board(name):
    assert find_grade(name).grades == ("CRB",)


@pytest.mark.parametrize("name", ["GD2, chipboard", "GD2 chipboard, greyboard", "URB chipboard, white lined"])
def test_two_boards_stay_two(name):
    assert len(find_grade(name).grades) == 2
