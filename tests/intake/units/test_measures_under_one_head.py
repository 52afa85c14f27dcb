"""Caliper and basis weight in one column, with both units in one pair of brackets behind both words."""

import pytest

from tests.intake.sheets import lines


def measured(head, cell):
    (line,) = lines([["Grade", head, "EUR/tonne"], ["GC2", cell, 1218]]).values()
    return [value and f"{value:f}" for value in (line.offer.grammage_gsm, line.offer.caliper_um)]


@pytest.mark.parametrize(
    ("head", "cell"),
    [
        ("Basis weight / caliper (g/m2 / microns)", "295 / 495"),
        ("Gramaje / espesor (g/m2 / micras)", "295 / 495"),
        ("Espesor / gramaje (micras / g/m2)", "495 / 295"),
        ("Grammatur/Dicke (g/m²/µm)", "295/495"),
        ("Grammage / épaisseur [g/m² / µm]", "295 / 495"),
        ("Ytvikt / tjocklek (g/m2 / µm)", "295 / 495"),
    ],
)
def test_each_word_has_the_unit_that_stands_in_its_place(head, cell):
    assert measured(head, cell) == ["295", "495"]


def test_words_and_units_that_stand_the_other_way_round_are_asked_about():
    assert measured("Gramaje / espesor (micras / g/m2)", "295 / 495") == [None, None]
