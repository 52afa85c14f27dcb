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


@pytest.mark.parametrize(
    ("text", "grade"),
    [
        ("GD2 lined chipboard", "CRB"), ("GT2 lined chipboard", "CRB"), ("greyboard (GD2)", "CRB"),
        ("GT 2 grey chipboard", "CRB"), ("WLC chipboard", "CRB"), ("GD2 folding boxboard", "CRB"),
        ("UD1 duplex board", "URB"), ("UT1 triplex", "URB"),
        ("Graupappe GD2", "CRB"), ("GD2 Faltschachtelkarton", "CRB"), ("UD2 Duplexkarton", "URB"),
        ("carton pliant GT2", "CRB"), ("carton pour étuis GD2", "CRB"), ("carton bois gris GD2", "CRB"),
        ("cartoncillo plegable GD2", "CRB"), ("cartón piedra GT2", "CRB"),
        ("falskartong GD2", "CRB"), ("gråpapp GT2", "CRB"), ("UD1 duplexkartong", "URB"),
        ("GD2 (chipboard)", "CRB"), ("greyboard\n(GD2)", "CRB"), ("GD2-Graupappe", "CRB"), ("GD2 C1S greyboard", "CRB"),
        ("Graupappe Qualität GD2", "CRB"), ("carton pliant de qualité GD2", "CRB"), ("gråpapp kvalitet GT2", "CRB"),
    ],
)  # fmt: skip
def test_a_standards_code_says_the_grade_beside_a_loose_name(text, grade):
    assert find_grade(text).grade == grade


@pytest.mark.parametrize(
    "text",
    ["GD2 / chipboard", "GD2, greyboard", "GD2 and chipboard", "Graupappe und GD2", "falskartong eller GD2",
     "GD2 bzw. Graupappe", "GD2 sowie Faltschachtelkarton", "Graupappe statt GD2", "GD2\nGraupappe", "GD2 | chipboard",
     "GD2 plus greyboard", "GD2 – greyboard", "GD2 vs greyboard", "GD2 to folding boxboard",
     "GD2 replaces folding boxboard", "carton pliant ou bien GD2", "cartón piedra en vez de GT2", "GD2 samt gråpapp",
     "CRB chipboard", "GC2 chipboard", "GC2 duplex", "GZ1 folding boxboard", "SBS folding boxboard",
     "GD2 URB chipboard", "GD2 UD2 duplex", "UD1 white lined chipboard", "GD2 uncoated chipboard"],
)  # fmt: skip
def test_two_boards_and_names_that_are_not_loose_stay_two(text):
    assert len(find_grade(text).grades) == 2


@pytest.mark.parametrize(
    ("text", "grades"),
    [
        ("lined chipboard", ()), ("kraft lined chipboard", ()), ("gedeckter Graukarton", ()),
        ("lined chipboard C1S", ("CRB",)), ("lined chipboard, uncoated", ("URB",)),
        ("white lined chipboard", ("CRB",)), ("weiß gedeckter Graukarton", ("CRB",)), ("chipboard", ("URB",)),
    ],
)  # fmt: skip
def test_chipboard_lined_with_nobody_says_what_is_open(text, grades):
    assert find_grade(text).grades == grades
