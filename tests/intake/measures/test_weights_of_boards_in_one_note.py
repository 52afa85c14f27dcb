"""A note that gives several boards their weights: each has its own, where its name or its caliper tells which."""

import pytest

from tests.intake.sheets import lines

_DE = [["Moosbrunner Karton GmbH"], ["Sorte", "Dicke µm", "EUR/t"], ["GC1", 400, 1200], ["GD2", 400, 900], []]
_EN = [["Fairhaven Board Co."], ["Grade", "Caliper (pt)", "USD/short ton"], ["SBS", 18, 1200], ["CUK", 20, 900], []]


def _read(note, table=_DE):
    found = lines([*table, [note]]).values()
    return [(str(line.state), str(line.offer.grammage_from), round(line.offer.grammage_gsm or 0)) for line in found]


@pytest.mark.parametrize(
    "note",
    [
        "GC1: 250 g/m²; GD2: 300 g/m²",
        "Grammatur GC1 250 g/m², GD2 300 g/m²",
        "GC1 400 µm = 250 g/m²; GD2 400 µm = 300 g/m²",
        "GC1 250 g/m² und GD2 300 g/m²",
        "Basis weight: GC1 250 g/m² and GD2 300 g/m²",
        "Grammages : GC1 250 g/m² et GD2 300 g/m²",
        "GC1 250 g/m² y GD2 300 g/m²",
        "GC1 250 g/m² och GD2 300 g/m²",
    ],
)
def test_each_board_has_its_own(note):
    assert _read(note) == [("accepted", "quoted", 250), ("accepted", "quoted", 300)]


@pytest.mark.parametrize(
    ("note", "second"),
    [
        ("SBS 18 pt = 214 lb, CUK 20 pt = 226 lb", 368),
        ("Basis weight: SBS 18 pt 214 lb/3000 ft², CUK 20 pt 77 lb/MSF", 376),
    ],
)
def test_pounds_are_settled_by_the_area_or_by_the_caliper(note, second):
    assert _read(note, _EN) == [("accepted", "quoted", 348), ("accepted", "quoted", second)]


def test_boards_of_one_grade_are_told_apart_by_name_or_caliper():
    names = [["Moosbrunner Karton GmbH"], ["Sorte", "Dicke µm", "EUR/t"], ["GC1", 400, 1200], ["GC2", 400, 900], []]
    assert [weight for _, _, weight in _read("GC1: 250 g/m²; GC2: 240 g/m²", names)] == [250, 240]
    sizes = [["Fairhaven Board Co."], ["Grade", "Caliper (pt)", "USD/short ton"], ["SBS", 18, 1200], ["SBS", 24, 900]]
    assert [weight for _, _, weight in _read("SBS 18 pt = 214 lb, SBS 24 pt = 270 lb", [*sizes, []])] == [348, 439]


def test_boards_that_nothing_tells_apart_are_asked_about():
    sizes = [["Fairhaven Board Co."], ["Grade", "Caliper (pt)", "USD/short ton"], ["SBS", 18, 1200], ["SBS", 24, 900]]
    found = _read("SBS 214 lb/3000 ft², SBS 270 lb/3000 ft²", [*sizes, []])
    assert {state for state, _, _ in found} == {"question"}


@pytest.mark.parametrize(
    "note", ["GC1: 250, 300 g/m²; GD2: 300 g/m²", "GC1 250-270 g/m², GD2 300 g/m²", "GD2 300 g/m², GC2 240 g/m²"]
)
def test_a_board_takes_no_other_boards_weight(note):
    first, second = _read(note)
    assert first[1] == "estimated"
    assert second == ("accepted", "quoted", 300)


def test_boards_named_together_share_a_weight():
    assert _read("GC1 und GD2 300 g/m²") == [("accepted", "quoted", 300), ("accepted", "quoted", 300)]
