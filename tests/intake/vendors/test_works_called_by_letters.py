"""Works that are told apart by letters: 'Mills A and B: FOB mill' names no firm."""

import pytest

from tests.intake.sheets import lines


def _vendors(note):
    rows = [["Board", "g/m²", "EUR/t"], ["GC1", 300, 1200], ["GD2", 350, 900], [note]]
    return {line.offer.vendor for line in lines(rows).values()}


@pytest.mark.parametrize(
    "note",
    ["Mills A and B: FOB mill. Mill C: delivered.", "Mill C: delivered.", "Werke A und B: ab Werk.",
     "Usines A et B : départ usine.", "Fábricas A y B: ex fábrica.", "Bruk A och B: fritt fabrik."],
)  # fmt: skip
def test_letters_are_no_name(note):
    assert _vendors(note) == {None}


def test_a_name_is_one():
    assert _vendors("Tarnmoor Mills: delivered.") == {"Tarnmoor Mills"}
