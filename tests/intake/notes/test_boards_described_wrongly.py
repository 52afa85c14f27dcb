"""Notes that a list has a board's caliper, weight or coating wrongly: its row is asked about, others are not."""

import pytest

from tests.intake.sheets import lines

ROWS = [
    ["Grade", "Caliper", "Weight g/m²", "USD/ST"],
    ["SBS C1S", "18 pt", 300, 1200],
    ["CUK", "20 pt", 350, 1000],
    ["CUK", "24 pt", 400, 990],
    [],
]


def asked(note):
    return [str(line.state) == "question" for line in lines([*ROWS, [note]]).values()]


@pytest.mark.parametrize(
    "note",
    [
        "CUK is 24 pt, not 20 pt.", "CUK is 22 pt, not 20.", "CUK is not 20 pt but 22 pt.",

              "CUK: 24 pt instead of 20 pt",
        "CUK 20 pt should read 22 pt", "CUK is 24 pt, not 20 pt, lead time 4 weeks.",
        "CUK weighs 380 g/m², not 350 g/m².",
        "CUK ist 24 pt, nicht 20 pt.", "CUK: 24 pt statt 20 pt", "CUK 20 pt muss heißen 22 pt",
        "Le CUK fait 24 pt, et non 20 pt.", "CUK : 24 pt au lieu de 20 pt",
        "El CUK es de 24 pt, no de 20 pt.", "CUK: 24 pt en lugar de 20 pt",
        "CUK är 24 pt, inte 20 pt.", "CUK: 24 pt i stället för 20 pt",
    ],
)  # fmt: skip
def test_a_board_that_the_list_measures_wrongly_is_asked_about(note):
    assert asked(note) == [False, True, False]


def test_so_is_one_of_which_it_has_the_wrong_sides_coated():
    assert asked("SBS is C2S, not C1S.") == [True, False, False]
    assert asked("SBS is C1S, not C2S.") == [False] * 3


@pytest.mark.parametrize(
    "note",

      [
        "CUK is 20 pt, not 22 pt.", "CUK not below 18 pt.", "CUK in 24 pt ships in 5 weeks, not 4.",
        "Minimum order for CUK 24 pt is 5 t, not 4 t.", "CUK ist 20 pt, nicht 22 pt.",
        "Le CUK fait 20 pt, et non 22 pt.",
        "El CUK es de 20 pt, no de 22 pt.", "CUK är 20 pt, inte 22 pt.",
    ],
)  # fmt: skip
def test_one_that_the_list_has_right_already_is_not(note):
    assert asked(note) == [False] * 3
