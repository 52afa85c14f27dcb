"""'Basis weight, lb per 3,000 sq ft' in the corner over 180 | 210 | 240: the area's figure is none of a board."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.offer import State

PRICES = [["SBS C1S", 1219, 1208, 1197], ["CUK C1S", 1096, 1088, 1080], ["CRB C1S", 903, 895, 888]]
TITLE = ["US$ per ton of 2,000 lb, delivered"]
ON_3000 = [
    "Basis weight, lb per 3,000 sq ft",
    "Basis weight, lb/3,000 ft²",
    "lb/3000 sq ft",
    "Grade / lb per 3,000 sq ft",
    "Flächengewicht, lb/3.000 ft²",
    "Grammage (lb / 3 000 pi²)",
    "Gramaje, lb por 3.000 pies²",
    "Ytvikt, lb/3 000 ft²",
]


def grammages(corner, weights=(180, 210, 240)):
    found = lines([TITLE, [], [corner, *weights], *PRICES])
    return found, [round(line.offer.grammage_gsm) for line in found.values() if line.offer.grammage_gsm is not None]


@pytest.mark.parametrize("corner", ON_3000)
def test_they_are_weights_on_that_area(corner):
    found, weights = grammages(corner)
    assert weights == [293, 342, 391] * 3
    assert {line.state for line in found.values()} == {State.ACCEPTED}
    assert {line.offer.basis for line in found.values()} == {"short_ton"}


@pytest.mark.parametrize("corner", ["Basis weight, lb per 1,000 sq ft", "Basis weight (lb/1000 ft²)", "lb/MSF"])
def test_so_are_those_on_the_other(corner):
    assert grammages(corner, (60, 70, 80))[1] == [293, 342, 391] * 3


@pytest.mark.parametrize("corner", ["Basis weight, lb", "Poids de base, lb", "Basis weight, lb (180 gsm max)"])
def test_without_an_area_it_is_asked(corner):
    found, _ = grammages(corner)
    assert {line.state for line in found.values()} == {State.QUESTION}


@pytest.mark.parametrize("corner", ["Price list 3,000", "Board 3000", "Order of 3,000 lb"])
def test_another_figure_in_the_corner_weighs_no_board(corner):
    found, weights = grammages(corner)
    assert not weights
    assert State.ACCEPTED not in {line.state for line in found.values()}
    assert all("outside-usual-range" not in codes(line) for line in found.values())
