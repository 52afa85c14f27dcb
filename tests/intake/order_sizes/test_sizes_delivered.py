"""Heads that say an order size and how board of that size is delivered, on two lines or one."""

import pytest

from tests.intake.sheets import lines

BOARDS = [["GC1", 390, 240, 1305, 1242], ["GC2", 410, 250, 1240, 1226]]
HEADS = [
    ("under 5 t\nFOB mill", "5 t and over\ndelivered"), ("Under 5 t FOB mill", "5 t and over delivered"),
    ("unter 5 t, ab Werk", "ab 5 t, frei Haus"), ("ab Werk unter 5 t", "frei Haus ab 5 t"),
    ("moins de 5 t\ndépart usine", "5 t et plus\nfranco"), ("menos de 5 t\nEXW", "desde 5 t\nportes pagados"),
    ("under 5 t\nfritt fabrik", "från 5 t\nfritt levererat"), ("under 5 t (EXW)", "over 5 t (DAP)"),
]  # fmt: skip


@pytest.mark.parametrize("heads", HEADS)
def test_both_are_taken_from_one_head(heads):
    found = lines([["EUR per tonne"], ["Grade", "µm", "g/m²", *heads], *BOARDS])
    told = {cell: (line.offer.from_kg, line.offer.below_kg, line.offer.delivered) for cell, line in found.items()}
    assert {str(line.state) for line in found.values()} == {"accepted"}
    assert told == dict.fromkeys(("D3", "D4"), (None, 5000, False)) | dict.fromkeys(("E3", "E4"), (5000, None, True))


@pytest.mark.parametrize("said", ["5 t delivered in May", "Delivered 5 t", "Under 5 t delivered on request"])
def test_a_cell_that_says_more_or_less_is_no_such_head(said):
    found = lines([["EUR per tonne"], ["Grade", "µm", "g/m²", "EUR/t"], *(board[:4] for board in BOARDS), [said]])
    assert {cell: (line.offer.from_kg, line.offer.below_kg) for cell, line in found.items()} == {
        "D3": (None, None),
        "D4": (None, None),
    }
