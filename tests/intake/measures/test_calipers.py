"""The sign of a millionth alone beside a word for how thick board is, and other columns that carry it."""

import pytest

from tests.intake.sheets import lines

LIST = ["Cartonnerie du Vallon SA, tarif départ usine"]
ROWS = [["GD2", 260, 335, "0,842"], ["GC2", 250, 400, "1,226"]]


@pytest.mark.parametrize("head", ["Main µ", "Main (μ)", "Épaisseur µ", "Dicke µ", "Grosor µ", "Bulk µ", "Bouffant µ"])
def test_a_lone_micron_sign_is_the_unit_of_a_caliper(head):
    found = lines([LIST, ["Qualité", "Gr/m²", head, "Prix EUR/kg"], *ROWS])
    assert [(str(one.state), one.offer.caliper_um) for one in found.values()] == [("accepted", 335), ("accepted", 400)]


@pytest.mark.parametrize("head", ["Main", "Main cm³/g", "Rugosité µ", "Lissé PPS µ"])
def test_bulk_and_smoothness_are_no_caliper(head):
    found = lines([LIST, ["Qualité", "Gr/m²", head, "Prix EUR/kg"], *ROWS])
    assert [one.offer.caliper_um for one in found.values()] == [None, None]


def test_a_leading_nought_settles_the_sign_of_its_column():
    alone = lines([LIST, ["Qualité", "Gr/m²", "Main µ", "Prix EUR/kg"], ["GC2", 250, 400, "1,226"]])
    both = lines([LIST, ["Qualité", "Gr/m²", "Main µ", "Prix EUR/kg"], *ROWS])
    assert [str(one.offer.price) for one in both.values()] == ["0.842", "1.226"]
    assert alone["D3"].offer.price is None or str(alone["D3"].offer.price) == "1.226"
