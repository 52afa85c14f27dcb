"""Readings as typed and pasted, and claims held against them."""

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tracker.trade.claims import Verdict, check_claim
from tracker.trade.methods import measured, properties
from tracker.trade.readings import pasted, reading, spread_of, unit_meant

CALIPER = properties()["caliper"]
GRAMMAGE = properties()["grammage"]


def test_every_property_names_a_standard_and_a_tolerance() -> None:
    for found in properties().values():
        assert found.methods
        low, high = found.tolerance.around(Fraction(100))
        assert low < 100 < high


@pytest.mark.parametrize(("words", "key"), [("caliper", "caliper"), ("Basis weight", "grammage"), ("cobb60", "cobb60")])
def test_a_property_is_found_by_key_or_name(words: str, key: str) -> None:
    found = measured(words)
    assert found is not None
    assert found.key == key
    assert measured("colour of the sky") is None


@pytest.mark.parametrize(
    ("words", "unit", "value"),
    [("18", "pt", "457.2"), ("0.018 in", "", "457.2"), ("457", "", "457"), (".46", "mm", "460"), ("0,46", "mm", "460")],
)
def test_readings_become_micrometres(words: str, unit: str, value: str) -> None:
    assert reading(words, CALIPER, unit) == Decimal(value)


@pytest.mark.parametrize("words", ["eighteen", "18-19", "1,234", "-4", "0", "18 lb", ""])
def test_what_is_no_reading_is_told_in_a_sentence(words: str) -> None:
    found = reading(words, CALIPER, "pt")
    assert isinstance(found, str)
    assert found.endswith(".")


def test_an_inch_among_points_is_pointed_at_and_nothing_is_lost() -> None:
    found = pasted("18.1\n17.9\n0.018\nx\n18.0", CALIPER, "pt")
    assert len(found.values) == 4
    assert len(found.problems) == 2
    assert "'x'" in found.problems[0]
    assert "another unit" in found.problems[1]


@given(st.lists(st.decimals("0.5", "999", places=2), min_size=1, max_size=30))
def test_a_pasted_column_reads_back_exactly(values: list[Decimal]) -> None:
    assert pasted("\n".join(map(str, values)), GRAMMAGE).values == tuple(values)


@given(st.decimals("1", "999", places=3))
def test_pounds_per_thousand_square_feet_convert_exactly(value: Decimal) -> None:
    found = reading(str(value), GRAMMAGE, "lb/MSF")
    assert isinstance(found, Decimal)
    assert abs(Fraction(found) - Fraction(value) * Fraction(45359237, 9290304)) < Fraction(1, 10**7)


def test_one_reading_has_no_interval() -> None:
    assert spread_of([18.0]).low is None
    with pytest.raises(ValueError, match="no readings"):
        spread_of([])


TEN = [17.8, 18.1, 17.9, 18.2, 18.0, 17.7, 18.1, 18.0, 17.9, 18.3]


def points(values: list[float]) -> list[float]:
    return [25.4 * value for value in values]


def test_a_claim_within_tolerance_agrees_though_the_mean_differs_from_it() -> None:
    """18.2 pt lies outside the mean's interval but well inside 5 %: a difference is not a fault."""
    found = check_claim(CALIPER, Decimal("462.28"), points(TEN))
    assert found.verdict is Verdict.AGREES
    assert found.spread is not None
    assert found.spread.high is not None
    assert found.spread.high < 462.28


def test_a_board_far_below_its_claim_is_off_by_so_much() -> None:
    found = check_claim(CALIPER, Decimal("508"), points(TEN))
    assert found.verdict is Verdict.OFF
    assert found.difference_percent == pytest.approx(-10.0, abs=0.01)
    assert "10.0 % below" in found.sentence


def test_near_the_edge_more_readings_are_asked_for() -> None:
    found = check_claim(CALIPER, Decimal("480.5"), points(TEN))  # the edge is 456.475, the mean 457.2
    assert found.verdict is Verdict.OPEN
    assert found.more is not None
    assert found.more > 10


def test_no_verdict_below_five_readings() -> None:
    found = check_claim(CALIPER, Decimal("457.2"), points(TEN[:4]))
    assert found.verdict is Verdict.OPEN
    assert found.more == 1
    assert check_claim(CALIPER, Decimal("457.2"), []).more == 5
    assert "Take 4 more" in check_claim(CALIPER, Decimal("457.2"), [457.0]).sentence


def test_the_number_asked_for_really_settles_it() -> None:
    found = check_claim(CALIPER, Decimal("478"), points(TEN[:6]))
    assert found.verdict is Verdict.OPEN
    assert found.spread is not None
    assert found.more is not None
    n = found.spread.n + found.more
    deviation, mean = found.spread.deviation or 0.0, found.spread.mean
    same_scatter = [mean + deviation * (1 - 1 / n) ** 0.5 * (1 if k % 2 else -1) for k in range(n + n % 2)]
    assert check_claim(CALIPER, Decimal("478"), same_scatter).verdict is not Verdict.OPEN


@pytest.mark.parametrize(
    ("figure", "unit"), [("15.5", "pt"), ("0.018", "in"), ("0.46", "mm"), ("457", ""), ("3000", None), ("5", None)]
)
def test_a_bare_caliper_is_in_the_only_unit_a_board_can_have(figure: str, unit: str | None) -> None:
    assert unit_meant([Decimal(figure)], CALIPER) == unit


def test_a_bare_weight_that_fits_two_units_is_left_open() -> None:
    assert unit_meant([Decimal(350)], GRAMMAGE) == ""
    assert unit_meant([Decimal(78)], GRAMMAGE) is None


@pytest.mark.parametrize(
    ("text", "points"),
    [
        ("19.1 19.0 19.2", ["19.1", "19", "19.2"]),
        ("19,1 19,0", ["19.1", "19"]),
        ("19,1", ["19.1"]),
        ("19.1, 19.0", ["19.1", "19"]),
        ("19.1 pt 19.0 pt", ["19.1", "19"]),
        (".018 in .019in", ["18", "19"]),
        ("19.1;19.0\n19.2\t19", ["19.1", "19", "19.2", "19"]),
    ],
)
def test_readings_apart_by_spaces_commas_semicolons_or_lines(text: str, points: list[str]) -> None:
    caliper = properties()["caliper"]
    found = pasted(text, caliper, "pt")
    assert found.problems == ()
    assert [value / Decimal("25.4") for value in found.values] == [Decimal(each) for each in points]
