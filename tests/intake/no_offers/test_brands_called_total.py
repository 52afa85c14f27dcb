"""Boards whose names begin as totals do."""

from tests.intake.sheets import lines


def test_a_row_with_its_own_grade_and_caliper_sums_up_nothing():
    rows = [
        ["Alpha", "SBS C1S", 16, 67, 1230],
        ["Total Print", "SBS C1S", 20, 82, 1230],
        ["Total Pack", "CUK", 18, 74, 1230],
    ]
    found = lines([["Brand", "Grade", "Caliper (pt)", "lb/MSF", "Price USD/ST"], *rows])
    assert sorted(found) == ["E2", "E3", "E4"]


def test_a_mean_of_the_list_does():
    rows = [["SBS C1S", 67, 1230], ["SBS C2S", 75, 1210], ["Average of list", 71, 1220]]
    assert sorted(lines([["Grade", "lb/MSF", "Price USD/ST"], *rows])) == ["C2", "C3"]
