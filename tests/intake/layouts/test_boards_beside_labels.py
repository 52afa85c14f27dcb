"""'GC1' left of the labels of a block that lies on its side: weights, calipers and prices in rows, sizes across."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import State

FIRST = [(230, 250, 280), (365, 400, 450), (1310, 1290, 1275)]
SECOND = [(300, 350, 400), (395, 460, 525), (899, 881, 866)]
LABELS = {
    "en": ("Basis weight (g/m²)", "Caliper (µm)", "Price EUR/t"),
    "de": ("Flächengewicht g/m²", "Dicke µm", "Preis EUR/t"),
    "fr": ("Grammage g/m²", "Épaisseur µm", "Prix EUR/t"),
    "es": ("Gramaje g/m²", "Espesor µm", "Precio EUR/t"),
    "sv": ("Ytvikt g/m²", "Tjocklek µm", "Pris EUR/t"),
    "units": ("g/m²", "µm", "EUR/t"),
}


def block(board, labels, values, at=0):
    rows = zip(labels, values, strict=True)
    return [[board if row == at else None, label, *line] for row, (label, line) in enumerate(rows)]


def read(labels, boards=("GC1", "GD2"), at=0, gap=1):
    first, second = block(boards[0], labels, FIRST, at), block(boards[1], labels, SECOND, at)
    return lines([["Ravensholt 2027"], [], *first, *([[]] * gap), *second])


@pytest.mark.parametrize("language", LABELS)
@pytest.mark.parametrize("at", [0, 1])
@pytest.mark.parametrize("gap", [0, 1, 2])
def test_each_block_is_of_the_board_beside_it(language, at, gap):
    found = read(LABELS[language], at=at, gap=gap)
    assert [line.offer.grade for line in found.values()] == ["FBB"] * 3 + ["CRB"] * 3
    assert [line.offer.caliper_um for line in found.values()] == [365, 400, 450, 395, 460, 525]
    assert {line.state for line in found.values()} == {State.ACCEPTED}


@pytest.mark.parametrize("name", ["Tamarind", "like GC1", "see GC1 above"])
def test_a_name_that_is_no_board_for_certain_is_asked_about(name):
    found = read(LABELS["units"], boards=(name, "GD2"))
    assert [line.state for line in found.values()] == [State.QUESTION] * 3 + [State.ACCEPTED] * 3


def test_no_block_has_the_name_beside_another():
    found = read(LABELS["units"], boards=("GC1", None))
    assert [line.state for line in found.values()] == [State.ACCEPTED] * 3 + [State.QUESTION] * 3
