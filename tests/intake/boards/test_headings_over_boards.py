"""Headings within a table, and names written once: which boards have the grade and the measures that they say."""

import pytest

from tests.intake.sheets import codes, lines, merged


def prices(found):
    """Cell -> state, price and basis."""
    return {
        cell: (str(line.state), f"{line.offer.price:f}" if line.offer.price is not None else None, line.offer.basis)
        for cell, line in found.items()
    }


def test_measures_under_a_heading_belong_to_the_prices_under_it():
    rows = [
        ["€/t frei Haus"],
        [],
        ["Grammatur", "GC1", None, "GD2", None],
        ["g/m²", "Dicke µm", "€/t", "Dicke µm", "€/t"],
        [250, 420, 1310, 330, 895],
        [300, 510, 1290, 395, 885],
    ]
    found = lines(rows)
    assert prices(found)["E5"] == ("accepted", "895", "tonne")
    assert [(found[cell].offer.grade, found[cell].offer.caliper_um) for cell in ("C5", "E5", "C6", "E6")] == [
        ("FBB", 420),
        ("CRB", 330),
        ("FBB", 510),
        ("CRB", 395),
    ]


def test_lead_times_under_a_heading_belong_to_the_prices_under_it():
    rows = [
        ["€/t"],
        [],
        ["Sorte", "g/m²", "Rollen", None, "Bogen", None],
        [None, None, "€/t", "Lieferzeit", "€/t", "Lieferzeit"],
        ["GC1", 250, 1310, "3 Wochen", 1390, "4 Wochen"],
    ]
    found = lines(rows)
    assert {cell: line.offer.lead_days for cell, line in found.items()} == {"C5": (21, 21), "E5": (28, 28)}


@pytest.mark.parametrize("second", [1310, 1240])
def test_two_boards_of_one_grade_under_headings_are_two_offers(second):
    rows = [["€/t"], [], ["g/m²", "GC1", None, "GC2", None], [None, "€/t", "Lieferzeit", "€/t", "Lieferzeit"]]
    found = lines([*rows, [250, 1310, "3 Wochen", second, "4 Wochen"], [300, 1300, "3 Wochen", 1230, "4 Wochen"]])
    assert prices(found)["B5"] == ("accepted", "1310", "tonne")
    assert prices(found)["D5"] == ("accepted", str(second), "tonne")


def test_a_board_on_two_lines_has_the_measures_of_the_line_below_it():
    rows = [["EUR/t"], ["Pos.", "Artikel", "Preis"], [1, "GC1", 1204], [None, "250 g/m², 405 µm"], [2, "GD2", 846]]
    offers = [line.offer for line in lines([*rows, [None, "350 g/m², 465 µm"]]).values()]
    assert [(offer.grammage_gsm, offer.caliper_um) for offer in offers] == [(250, 405), (350, 465)]


def test_measures_above_every_board_stay_headings():
    rows = [["EUR/t"], ["Sorte", "Preis"], ["250 g/m², 405 µm"], ["GC1", 1204], ["350 g/m², 465 µm"], ["GD2", 846]]
    offers = [line.offer for line in lines(rows).values()]
    assert [(offer.grammage_gsm, offer.caliper_um) for offer in offers] == [(250, 405), (350, 465)]


HEAD = ["Board", "Caliper (pt)", "lb/MSF", "Price USD/ST"]
SBS, CRB = ["SBS C1S", 18, 75, 1165], ["CRB C1S", 18, 70, 900]


def test_once_written_and_merged_grades_hold_but_a_blank_among_repeats_does_not():
    once = lines([HEAD, SBS, [None, 20, 83, 1150]])
    assert once["D3"].offer.grade == "SBS"
    together = lines([HEAD, SBS, [None, 20, 83, 1150]], merged=merged((1, 0, 2, 0)))
    assert together["D3"].offer.grade == "SBS"
    repeated = lines([HEAD, SBS, ["SBS C1S", 20, 83, 1150], [None, 24, 98, 1140]])
    assert codes(repeated["D4"]) == {"grade-unknown"}


def test_a_sub_heading_gives_the_grade_until_the_next():
    found = lines([["Caliper (pt)", "lb/MSF", "USD/ST"], ["SBS C1S"], [18, 75, 1165], ["CRB"], [18, 70, 900]])
    assert [(line.offer.grade, line.offer.coated_sides) for line in found.values()] == [("SBS", 1), ("CRB", None)]


@pytest.mark.parametrize("heading", ["Flächengewicht 250 g/m²", "Basis weight: 250 g/m²", "250 g/m²"])
def test_a_sub_heading_gives_the_weight_of_the_rows_below_it(heading):
    rows = [["EUR/t"], ["Sorte", "Dicke µm", "EUR/t"], [heading], ["GC1", 405, 1290], ["GC2", 430, 1240]]
    found = [line.offer for line in lines(rows).values()]
    assert [(offer.grammage_gsm, str(offer.grammage_from)) for offer in found] == [(250, "quoted")] * 2


def starred(first, second):
    head = ["Item", "Description", "Cal in", "lb/MSF", "USD per MSF"]
    rows = [
        [first],
        ["100-14", "TW bright 14 RL", 0.014, 60, 62.8],
        [second],
        ["200-18", "TW carrier", 0.018, 75, 39.4],
    ]
    return [line.offer.grade for line in lines([["FOB mill"], head, *rows]).values()]


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("** CLASS 10 SBS C1S **", "** CLASS 20 CUK C1S **"), ("*SBS*", "*CUK*"), ("* SBS C1S", "* CUK C1S"),
        ("*** SBS", "*** CUK"), ("† SBS", "† CUK"),
    ],
)  # fmt: skip
def test_headings_set_off_by_signs_of_footnotes_head_their_boards(first, second):
    assert starred(first, second) == ["SBS", "CUK"]


def test_a_note_behind_a_sign_heads_nothing():
    assert starred("SBS C1S", "* CUK from another mill") == ["SBS", "SBS"]
