"""'te', as British list-makers write the tonne."""

import pytest

from tests.intake.sheets import lines


@pytest.mark.parametrize("head", ["£/te", "£/te del'd", "Price £ per te"])
def test_te_behind_money_is_a_tonne(head):
    (line,) = lines([["Grade", "gsm", "mic", head], ["GC1 FBB", 230, 355, 1175]]).values()
    assert (line.state, line.offer.basis, line.offer.currency) == ("accepted", "tonne", "GBP")


def test_te_among_words_is_none():
    (line,) = lines(
        [["Te ofrecemos cartoncillo, EUR/kg"], ["Calidad", "g/m²", "µm", "Precio"], ["GC1", 230, 355, 1.17]]
    ).values()
    assert line.offer.basis == "kg"
