"""Weights and names in columns of each board: 'Basis wt | Price' under every grade, and names behind their measures."""

import pytest

from tests.intake.sheets import codes, lines, merged

TITLE = ["US dollars, FOB mill"]
ROWS = [[0.014, 58, 1170, 55.5, 918], [0.018, 74, 1146, 69.5, 899]]


def weights(found):
    return {cell: round(line.offer.grammage_gsm) for cell, line in found.items()}


@pytest.mark.parametrize(
    ("second", "grade"),
    [("Coated recycled (CCNB)", "CRB"), ("Recycled", None), ("Natural kraft", None)],
)  # fmt: skip
@pytest.mark.parametrize("heads", [[["lb/MSF", "$/short ton"]], [["Basis wt", "Price"], ["lb/MSF", "per short ton"]]])
def test_every_board_has_its_own_weights(second, grade, heads):
    top = ["Thickness (in)", "Bleached (SBS), coated one side", None, second, None]
    found = lines([TITLE, [], top, *([None, *two, *two] for two in heads), *ROWS])
    below = 4 + len(heads)
    first, other = f"C{below}", f"E{below}"
    assert weights(found)[first] == 283
    assert weights(found)[other] == 271
    assert found[first].offer.grade == "SBS"
    # The words over a board are no property of it, and never leave it the grade of its neighbour.
    assert found[other].offer.grade == grade
    assert (str(found[other].state) == "accepted") is (grade is not None)


@pytest.mark.parametrize(
    ("top", "low", "units"),
    [
        (["Stärke", "GC1", None, "GD2 Recycling", None], ["Flächengewicht", "Preis"], ["mm", "g/m²", "€/t"]),
        (["Épaisseur", "GC1", None, "Carton recyclé GD2", None], ["Grammage", "Prix"], ["mm", "g/m²", "€/t"]),
        (["Espesor", "GC1", None, "GD2 reciclado", None], ["Gramaje", "Precio"], ["mm", "g/m²", "€/t"]),
        (["Tjocklek", "GC1", None, "GD2 returfiber", None], ["Ytvikt", "Pris"], ["mm", "g/m²", "€/t"]),
    ],
)
def test_weights_under_boards_of_recycled_fibre(top, low, units):
    rows = [top, [None, *low, *low], [*units, *units[1:]], [0.41, 250, 1164, 300, 912], [0.5, 300, 1141, 350, 894]]
    assert weights(lines(rows)) == {"C4": 250, "E4": 300, "C5": 300, "E5": 350}


def test_what_one_board_weighs_is_nothing_of_another():
    top = ["Thickness (in)", "Bleached (SBS)", None, "Coated recycled (CCNB)"]
    rows = [TITLE, [], top, [None, "lb/MSF", "$/short ton", "$/short ton"], [0.014, 58, 1170, 918]]
    found = lines(rows, merged=merged((2, 1, 2, 2)))
    assert "weight-estimated" not in codes(found["C5"])
    assert "weight-estimated" in codes(found["D5"])


def test_a_property_over_a_unit_stays_one():
    rows = [
        ["Grade", "Caliper", "Cobb 60", "Basis wt", "Price"], [None, "pt", "g/m²", "lb/MSF", "$/short ton"],
        ["SBS", 14, 25, 58, 1170], ["SBS", 18, 26, 74, 1146],
    ]  # fmt: skip
    assert weights(lines(rows)) == {"E3": 283, "E4": 361}


@pytest.mark.parametrize("head", ["Board", "Grade", "Sorte", "Qualité", "Calidad", "Kvalitet"])
def test_names_behind_their_measures_are_written_once(head):
    rows = [
        ["g/m²", "µm", head, "EUR/t"],
        [230, 375, "GC2", 1146], [260, 430, None, 1139], [350, 450, "GD2", 762], [450, 590, None, 755],
    ]  # fmt: skip
    assert [line.offer.grade for line in lines(rows).values()] == ["FBB", "FBB", "CRB", "CRB"]


def test_names_that_are_repeated_mean_nothing_by_an_empty_cell():
    rows = [
        ["g/m²", "µm", "Board", "EUR/t"],
        [230, 375, "GC2", 1146], [260, 430, None, 1139], [350, 450, "GD2", 762], [400, 510, "GD2", 755],
    ]  # fmt: skip
    assert [line.offer.grade for line in lines(rows).values()] == ["FBB", None, "CRB", "CRB"]


def test_an_empty_grade_beside_a_name_of_its_own_is_asked():
    rows = [["Name", "g/m²", "µm", "Grade", "EUR/t"], ["Alba", 230, 375, "GC2", 1146], ["Brisa", 260, 430, None, 1139]]
    assert [line.offer.grade for line in lines(rows).values()] == ["FBB", None]


def test_a_caliper_missing_here_and_there_beside_a_weight_is_that_of_no_row_above():
    boards = [["18 pt", "76 lb", 59.4], ["20 pt", "84 lb", 58.9], ["24 pt", "98 lb", 58.1], [None, "70 lb", 59]]
    found = lines([["USD per cwt"], ["Caliper", "Weight", "Price"], ["SBS"], *boards])
    assert [line.offer.caliper_um is None for line in found.values()] == [False, False, False, True]
    assert (found["C7"].state, codes(found["C7"])) == ("question", {"weight-basis-unknown"})


def test_a_caliper_over_several_weights_is_written_once():
    boards = [["18 pt", "71 lb", 59], [None, "76 lb", 58], ["24 pt", "92 lb", 57], [None, "98 lb", 56]]
    found = lines([["USD per cwt"], ["Caliper", "Weight", "Price"], ["SBS"], *boards])
    assert [float(line.offer.caliper_um) for line in found.values()] == [457.2, 457.2, 609.6, 609.6]


def test_a_caliper_over_several_order_sizes_is_written_once_however_few_have_them():
    sizes = [["20 pt", 84, "< 5 t", 58], ["24 pt", 98, "< 5 t", 57], ["28 pt", 112, "< 5 t", 56]]
    rows = [["USD/cwt"], ["Caliper", "lb/MSF", "Order", "SBS"], *sizes, [None, None, "> 5 t", 55]]
    assert [float(line.offer.caliper_um) for line in lines(rows).values()] == [508, 609.6, 711.2, 711.2]
