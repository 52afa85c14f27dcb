"""Places under one word of a group, in the row that says the units of the other columns; and figures like prices that
nothing stands over."""

import pytest

from tests.intake.sheets import codes, lines, merged

TITLE = ["Delivered prices in US$ per short ton"]
UPPER = ["Thickness", "Weight", "Delivered to"]
LOWER = ["pt", "lb/MSF", "Fernhollow", "Marl Bay", "Pike Landing"]
BOARDS = [
    ["SBS C1S"], [14, 59, 1240, 1256, 1271], [18, 75, 1222, 1238, 1253],
    ["CRB C1S"], [18, 71, 930, 946, 961], [22, 85, 918, 934, 949],
]  # fmt: skip


@pytest.mark.parametrize("over", [(), merged((1, 2, 1, 4))])
def test_every_place_has_its_prices_and_the_measures_their_units(over):
    found = lines([TITLE, UPPER, LOWER, *BOARDS], merged=over)
    assert len(found) == 12
    assert {(str(line.state), line.offer.delivered, len(line.notes)) for line in found.values()} == {
        ("accepted", True, 0)
    }
    assert round(found["E5"].offer.grammage_gsm) == 288


@pytest.mark.parametrize(
    ("upper", "lower"),
    [
        (["Dicke", "Gewicht", "Frei Haus"], ["µm", "g/m²", "Ellerbach", "Sandau", "Moorheim"]),
        (["Épaisseur", "Grammage", "Livré à"], ["µm", "g/m²", "Vauxbrune", "Lierre", "Montclair"]),
        (["Espesor", "Gramaje", "Entregado en"], ["µm", "g/m²", "Ribalta", "Monteluz", "Olmares"]),
        (["Tjocklek", "Ytvikt", "Fritt levererat"], ["µm", "g/m²", "Brannköp", "Torsvik", "Ekmossen"]),
    ],
)
def test_in_other_languages(upper, lower):
    rows = [["GC1"], [405, 250, 1254, 1262, 1280], ["GD2"], [450, 350, 816, 824, 842]]
    found = lines([["EUR / 1000 kg"], upper, lower, *rows], merged=merged((1, 2, 1, 4)))
    assert len(found) == 6
    assert {str(line.state) for line in found.values()} == {"accepted"}


def test_words_in_the_place_of_figures_head_nothing():
    rows = [["Thickness (pt)", "Board", "$/ST"], ["pt", "lb/MSF", "ask", "later", "sold"], [14, "SBS", 1240]]
    assert set(lines(rows)) == {"C3"}


@pytest.mark.parametrize("head", ["Delivered to", "Price"])
@pytest.mark.parametrize("over", [(), merged((1, 2, 1, 3))])
def test_figures_behind_prices_that_nothing_stands_over_are_not_left_out_in_silence(head, over):
    rows = [["SBS", 75, 1222, 1271], ["CRB", 71, 930, 961]]
    found = lines([TITLE, ["Grade", "lb/MSF", head], *rows], merged=over)
    told = {*found, *(word for line in found.values() for note in line.notes for word in note.text.split())}
    assert {"D3", "D4"} <= told
    assert "question" in {str(line.state) for line in found.values()}


def test_figures_of_another_size_that_nothing_stands_over_are_no_prices():
    rows = [["SBS", 75, 1222, 44], ["CRB", 71, 930, 12]]
    found = lines([TITLE, ["Grade", "lb/MSF", "Price"], *rows])
    assert set(found) == {"C3", "C4"}
    assert not any(codes(line) for line in found.values())
