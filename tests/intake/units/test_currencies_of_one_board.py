"""One board that a sentence offers in another currency than the rest."""

import pytest

from tests.intake.sheets import lines


def _currencies(note):
    rows = [["GC1", 300, 490, 1380], ["GZ", 300, 400, 1400], ["GD2", 350, 460, 860]]
    found = lines([["Tarnwell Board Ltd"], [note], ["Grade", "g/m²", "µm", "Price per tonne"], *rows])
    return [line.offer.currency for line in found.values()]


@pytest.mark.parametrize(
    "note",
    [
        "Preise in GBP pro Tonne. Einzig die Qualität GZ offerieren wir Ihnen in Euro pro Tonne.",
        "Preise in GBP pro Tonne. GZ offerieren wir in Euro pro Tonne.",
        "Prices are in GBP per tonne. GZ we offer in euro per tonne.",
        "Les prix sont en GBP la tonne. Le GZ, nous le proposons en euros la tonne.",
        "Los precios son en GBP por tonelada. El GZ lo cotizamos en euros por tonelada.",
        "Priserna är i GBP per ton (1 000 kg). GZ offererar vi i euro per ton.",
    ],
)
def test_the_board_that_is_offered_in_another(note):
    assert _currencies(note) == ["GBP", "EUR", "GBP"]


def test_of_which_boards_it_is_said_must_be_told():
    note = "Preise in GBP pro Tonne. Einzelne Sorten offerieren wir Ihnen in Euro pro Tonne."
    assert _currencies(note) != ["GBP", "EUR", "GBP"]
