"""'Statt 1200 richtig 1210': the figure that is printed, and behind it the one that is meant."""

import pytest

from tests.intake.sheets import lines

ROWS = [["Board", "g/m²", "EUR/t"], ["GC1", 250, 1200], ["GD2", 300, 900]]


def states(note):
    return "".join(str(line.state)[0] for line in lines([*ROWS, [], [note]]).values())


@pytest.mark.parametrize(
    "note",
    [
        "GC1: instead of 1,200 read 1,210",
        "GC1: statt 1200 richtig 1210",
        "GC1 : au lieu de 1200 lire 1210",
        "GC1: en lugar de 1200 debe decir 1210",
        "GC1: i stället för 1200 ska det stå 1210",
    ],
)
def test_the_board_of_a_corrected_price_is_asked(note):
    assert states(note) == "qa"


@pytest.mark.parametrize("note", ["GC1: statt 240 g/m² jetzt 250 g/m²", "GC1: Bogen statt 700 mm 720 mm"])
def test_a_corrected_measure_is_no_price(note):
    assert states(note) == "aa"
