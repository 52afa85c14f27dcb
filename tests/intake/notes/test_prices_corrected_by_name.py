"""A note that corrects the price of a board has that price asked about, whatever the order of its words."""

import pytest

from tests.intake.sheets import lines

ROWS = [["Grade", "g/m²", "Price EUR/t"], ["GC1", 250, 1200], ["GD2", 300, 900], ["SBS", 280, 1300]]


def _states(note):
    return [line.state for line in lines([*ROWS, [note]]).values()]


@pytest.mark.parametrize(
    "note",
    [
        "Instead of 1200 read 1210 for GC1", "Correction: GC1 €1,210", "Corrected price GC1 1,210",
        "GC1 1,210 (corrected)", "Statt 1200 lies 1210 für GC1", "Berichtigung: GC1 1.210 EUR/t", "Korrektur: GC1 1210",
        "Au lieu de 1200 lire 1210 pour GC1", "Correction : GC1 1 210 €/t", "En lugar de 1200 léase 1210 para GC1",
        "Corrección: GC1 1.210 EUR/t", "I stället för 1200 läs 1210 för GC1", "Rättelse: GC1 1 210 EUR/t",
    ],
)  # fmt: skip
def test_a_price_corrected_for_a_board_is_asked_about(note):
    assert _states(note) == ["question", "accepted", "accepted"]


@pytest.mark.parametrize(
    "note",
    [
        "Instead of 4 weeks read 5 weeks for GC1", "Correction for moisture 2 %",
        "Correction: minimum order GC1 5000 kg",
        "Correction: GC1 sheets 700 x 1000 mm", "Errors and corrections reserved",
    ],
)  # fmt: skip
def test_a_correction_of_something_else_leaves_prices_as_they_are(note):
    assert _states(note) == ["accepted"] * 3
