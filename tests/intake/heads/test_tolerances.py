"""A column of tolerances in per cent is no second weight; a weight whose head tells its tolerance stays one."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.heads.header import header
from tracker.intake.values.heads.roles import Role


@pytest.mark.parametrize("head", ["Tolerance g/m² %", "Toleranz g/m² %", "Tolérance g/m² (%)", "Tolerans g/m² %"])
def test_a_tolerance_weighs_nothing(head):
    rows = [["EUR/t"], ["Grade", "g/m²", "µm", "Price", head], ["GC1", 250, 410, 1251, 4]]
    (line,) = lines(rows).values()
    assert (str(line.state), line.offer.grammage_gsm) == ("accepted", 250)


@pytest.mark.parametrize("head", ["g/m² (tolerance ±4 %)", "Basis weight lb/MSF, tolerance 5 %", "g/m²"])
def test_a_weight_with_its_tolerance_is_a_weight(head):
    assert header(head).role is Role.WEIGHT
