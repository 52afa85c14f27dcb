"""The sayings of the trade that grades and bands rest on. Common practice, no source, unless a test says otherwise.

Percentages in them are read as per weight of board: an assumption.
"""

from fractions import Fraction

import pytest

from tracker.trade.bands import ratio, ratios
from tracker.trade.grades import estimate_grammage, grade, grades, usual_density
from tracker.trade.quantities import CaliperUnit, MassUnit, WeightUnit, grammage, kilograms, micrometres


def pt(points):
    return micrometres(points, CaliperUnit.POINT)


def said(facts):
    return " ".join(str(fact) for fact in facts).casefold()


def middle(code):
    return (ratio(code).low + ratio(code).high) / 2


def test_bleached_board_is_the_dearest():
    assert all(middle(code) < middle("SBS") for code in ratios() if code != "SBS")
    assert "dearest" in said(grade("SBS").weaknesses)


def test_uncoated_recycled_board_is_the_cheapest():
    assert all(middle("URB") < middle(code) for code in ratios() if code != "URB")
    assert "cheapest" in said(grade("URB").strengths)


def test_coated_unbleached_kraft_costs_less_than_bleached_board():
    assert ratio("CUK").high == 1


def test_uncoated_unbleached_kraft_is_30_to_40_percent_below_bleached_board():
    assert (ratio("UUK").low, ratio("UUK").high) == (Fraction("0.60"), Fraction("0.70"))
    assert "assumed" not in ratio("UUK").source


def test_folding_boxboard_runs_from_level_down_to_35_percent_less():
    assert (ratio("FBB").low, ratio("FBB").high) == (Fraction("0.65"), 1)
    assert "assumed" not in ratio("FBB").source


def test_prices_differ_by_up_to_half_across_grades():
    assert min(ratio(code).low for code in ratios()) == Fraction("0.5")
    assert 1400 * ratio("URB").low == 700


def test_which_grades_are_coated_and_on_how_many_sides():
    assert {code: described.coated_sides for code, described in grades().items()} == {
        "SBS": 1, "CUK": 1, "UUK": 0, "CRB": 1, "URB": 0, "FBB": 1,
    }  # fmt: skip


@pytest.mark.parametrize(
    ("code", "front", "back"),
    [("SBS", "white", "white"), ("CUK", "white", "brown"), ("UUK", "brown", "brown"), ("CRB", "white", "grey")],
)
def test_colours_of_both_sides(code, front, back):
    assert front in str(grade(code).colour_front).casefold()
    assert str(grade(code).colour_back).casefold().startswith(back)


@pytest.mark.parametrize("code", ["CRB", "URB"])
def test_recycled_board_is_not_for_direct_food_contact(code):
    assert "not for direct food contact" in said(grade(code).cautions)


def test_what_each_virgin_grade_is_good_for():
    assert "the strongest of the six" in said(grade("CUK").strengths)
    assert "heavy bottles" in said(grade("CUK").uses)
    assert "frozen" in said(grade("SBS").uses)
    assert "folds and re-opens well" in said(grade("FBB").strengths)
    assert "crisp print" in said(grade("UUK").weaknesses)


def test_a_grade_has_no_name_of_another():
    names = [(str(name).casefold(), code) for code, each in grades().items() for name in each.other_names]
    assert len({name for name, _ in names}) == len(names)


@pytest.mark.parametrize(
    ("points", "lb_3000ft2"),
    [(10, 121.7), (12, 141.4), (14, 159.7), (16, 176.7), (18, 192.5), (20, 206.9), (24, 231.8)],
)
def test_usual_bleached_board_is_no_lighter_than_the_patent_calls_light(points, lb_3000ft2):
    """US patent 7,749,583: light coated bleached board is below 3.79 + 13.43 X − 0.1638 X² lb/3,000 ft² at X points."""
    light = 3.79 + 13.43 * points - 0.1638 * points**2
    assert light == pytest.approx(lb_3000ft2, abs=0.06)
    usual = estimate_grammage("SBS", pt(points)).grammage_gsm
    assert usual > grammage(Fraction(light), WeightUnit.LB_3000FT2)


@pytest.mark.parametrize(
    ("points", "gsm"),
    [(12, 250), (14, 275), (16, 300), (18, 350), (24, 400), (16, 342), (18, 361), (20, 381), (22, 420), (24, 454)],
)
def test_weights_that_two_merchants_list_lie_in_the_usual_range(points, gsm):
    """Two merchants' lists for bleached board; they differ by up to 14 % at one caliper. Common practice."""
    low, high = usual_density("SBS", pt(points))
    slack = Fraction(1, 200)
    assert low - slack <= Fraction(gsm) / pt(points) <= high + slack


def test_chipboard_of_25_points_at_85_pounds_lies_in_the_usual_range():
    """A trade page: 25 pt at 85 lb/MSF, 0.654 g/cm³. Common practice."""
    low, high = usual_density("URB", pt(25))
    assert low <= grammage(85, WeightUnit.LB_MSF) / pt(25) <= high


@pytest.mark.parametrize("gsm", [235, 255, 270, 315, 340])
def test_folding_boxboards_of_a_research_set_have_a_caliper_we_list(gsm):
    """TAPPI Journal, February 2020: five commercial folding boxboards, 235 to 340 g/m²."""
    lightest = estimate_grammage("FBB", pt(min(grade("FBB").calipers_pt))).grammage_gsm
    heaviest = estimate_grammage("FBB", pt(max(grade("FBB").calipers_pt))).grammage_gsm
    assert lightest < gsm < heaviest


def test_a_hundredweight_is_a_twentieth_of_a_short_ton():
    assert 20 * kilograms(1, MassUnit.CWT) == kilograms(1, MassUnit.SHORT_TON)
