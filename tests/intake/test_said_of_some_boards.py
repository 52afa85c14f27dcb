"""What a note says of some boards holds for no others."""

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Board", "pt", "lb/MSF"]
SBS, CRB = ["SBS C1S", 18, 75], ["CRB C1S", 18, 70]


@pytest.mark.parametrize(
    "note",
    [
        ["Bright = GC1 folding boxboard"],
        ["Bright is a GC1 folding boxboard."],
        ["Our Bright is a folding boxboard, Dim a greyboard."],
        ["Bright (GC1)"],
        ["Bright", "GC1 folding boxboard"],
    ],
)
def test_what_one_name_is_explained_to_be_is_no_grade_of_another_name(note):
    found = lines(
        [["Brand", "g/m²", "µm", "Price GBP/t"], ["Bright", 250, 405, 1105], ["Nova", 260, 420, 1120], [], note]
    )
    assert (found["D2"].state, found["D2"].offer.grade) == ("accepted", "FBB")
    assert (found["D3"].state, codes(found["D3"])) == ("question", {"grade-unknown"})


def test_a_note_about_another_board_is_no_grade_of_a_name_but_one_about_all_is():
    rows = [["Brand", "g/m²", "µm", "Price GBP/t"], ["Nova", 260, 420, 1120], []]
    assert lines([*rows, ["GC1 on request."]])["D2"].offer.grade is None
    assert lines([*rows, ["All boards are GC1."]])["D2"].offer.grade == "FBB"


def test_a_title_over_boards_of_several_grades_is_no_grade_of_a_name_among_them():
    rows = [["Brand", "g/m²", "µm", "Price GBP/t"], ["Nova", 260, 420, 1120]]
    assert lines([["Folding boxboard"], [], *rows])["D4"].offer.grade == "FBB"
    mixed = lines([["Folding boxboard"], [], *rows, ["GD2 grey back", 350, 455, 742]])
    assert (mixed["D4"].state, codes(mixed["D4"])) == ("question", {"grade-unknown"})
    assert (mixed["D5"].state, mixed["D5"].offer.grade) == ("accepted", "CRB")


@pytest.mark.parametrize(
    "said",
    [
        "US dollars. SBS and CRB per short ton; CUK per metric ton.",
        "USD. CUK per tonne, all others per short ton",
        "USD per short ton; CUK per tonne",
        "Prices in USD per short ton except CUK, which is per tonne",
        "All prices USD per short ton except CUK (per tonne)",
        "All prices in USD per short ton. CUK prices are per tonne.",
    ],
)
def test_one_grades_unit_is_not_the_others(said):
    rows = [[*HEAD, "Price"], [*SBS, 1178], ["CUK", 18, 74, 1139], [*CRB, 884]]
    bases = [line.offer.basis for line in lines([[said], [], *rows]).values()]
    assert bases == ["short_ton", "tonne", "short_ton"]


@pytest.mark.parametrize("said", ["SBS and CRB in USD, CUK in CAD", "All in USD except CUK, which is in CAD"])
def test_one_grades_currency_is_not_the_others(said):
    rows = [[*HEAD, "Price"], [*SBS, 1178], ["CUK", 18, 74, 1139], [*CRB, 884]]
    found = lines([["USD per short ton"], [], *rows, [], [said]])
    assert [line.offer.currency for line in found.values()] == ["USD", "CAD", "USD"]


@pytest.mark.parametrize(
    "said",
    ["Freight is included for SBS only", "Delivered, except CUK", "FOB mill except CUK"],
)
def test_what_is_said_of_some_boards_freight_is_left_open(said):
    found = lines([[*HEAD, "USD/ST"], [*SBS, 1178], ["CUK", 18, 74, 1139], [], [said]])
    assert [line.offer.delivered for line in found.values()] == [None, None]


def test_two_last_days_of_two_boards_are_not_one():
    said = "Prices valid until December 31, 2026, CRB until January 31, 2027"
    for line in lines([[*HEAD, "USD/ST"], [*SBS, 1178], [*CRB, 884], [], [said]]).values():
        assert (line.offer.valid_until, codes(line)) == (None, {"validity-unread"})
