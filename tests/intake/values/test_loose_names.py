"""Names that are used of several grades, widths beside calipers, and units written short."""

import pytest

from tracker.intake.values.boards.caliper import find_calipers
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.prices.money import price_unit


@pytest.mark.parametrize(
    ("text", "grades"),
    [
        ("GT2 Chromokarton", ("CRB",)),
        ("Chromokarton", ("FBB",)),
        ("GC1 Chromokarton", ("FBB",)),
        ("Carton gris-dos GD2", ("CRB",)),
        ("carton gris", ("URB",)),
        ("SBS GC1", ("SBS", "FBB")),
    ],
)
def test_a_loose_name_gives_way_to_a_grade_beside_it(text, grades):
    assert find_grade(text).grades == grades


@pytest.mark.parametrize(
    "text", ["GC1 250 g/m² 410 µm laize 860 mm", "GC1 410 µm 860 mm wide", "GD2 410µm width 900 mm"]
)
def test_the_width_behind_a_caliper_is_not_the_calipers(text):
    assert [reading.um for reading in find_calipers(text)] == [410]


def test_a_width_is_still_no_caliper():
    assert find_calipers("GC1, 1,02 mm wide") == ()


def test_a_short_metric_ton_in_french_is_a_tonne():
    assert {str(basis) for basis in price_unit("€/T métrique").basis.bases} == {"tonne"}


@pytest.mark.parametrize(("unit", "codes"), [("öre/kg", 1), ("øre/kg", 4), ("kr/kg", 4)])
def test_only_swedish_spells_its_hundredth_with_two_dots(unit, codes):
    assert len(price_unit(unit).currency.codes) == codes
