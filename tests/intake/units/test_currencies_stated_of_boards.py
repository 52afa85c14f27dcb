"""A sentence that states the currency of one grade: 'Die Preise der Sorte GD2 verstehen sich in CHF'."""

import pytest

from tests.intake.sheets import lines

BOARDS = [["GC1", 240, 385, 1252], ["GD2", 300, 380, 798], ["GC2", 265, 445, 1214]]


def currencies(note):
    rows = [["Preise je Tonne in EUR"], [], ["Sorte", "g/m²", "µm", "Preis/t"], *BOARDS, [], [note]]
    return [line.offer.currency for line in lines(rows).values()]


@pytest.mark.parametrize(
    "note",
    [
        "The prices of the grade GD2 are stated in CHF.",
        "Die Preise der Sorte GD2 verstehen sich in CHF.",
        "Les prix de la sorte GD2 s'entendent en CHF.",
        "Los precios de la calidad GD2 se entienden en CHF.",
        "Priserna för kvalitet GD2 anges i CHF.",
    ],
)
def test_it_is_that_of_the_grade_alone(note):
    assert currencies(note) == ["EUR", "CHF", "EUR"]


@pytest.mark.parametrize(
    "note",
    ["Die Preise der Sorte GD2 werden künftig in CHF verstehen sich.", "Freight of the grade GD2 is stated in CHF."],
)
def test_what_may_be_of_a_later_day_or_of_freight_is_not(note):
    assert currencies(note)[1] != "CHF"
