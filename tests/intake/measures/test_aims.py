"""Calipers and weights with their tolerance in columns beside them: the aim is what is offered."""

import pytest

from tests.intake.sheets import codes, lines

BOUNDS = [
    ("min", "aim", "max"), ("low", "target", "high"), ("min.", "nominal", "max."), ("min", "Soll", "max"),
    ("mind.", "Zielwert", "maximal"), ("mini", "visé", "maxi"), ("min", "cible", "max"), ("mín", "objetivo", "máx"),
    ("mínimo", "nominal", "máximo"), ("min", "riktvärde", "max"), ("lägst", "mål", "högst"),
]  # fmt: skip


def of_caliper(heads, *figures):
    rows = [["EUR/t"], ["Grade", "g/m²", "Caliper µm", *[None] * (len(heads) - 1), "Price"], [None, None, *heads, None]]
    return list(lines([*rows, ["GC1", 230, *figures, 1086], ["GC1", 240, *figures, 1060]]).values())


@pytest.mark.parametrize("heads", BOUNDS)
def test_the_aim_between_its_bounds_is_the_caliper(heads):
    found = of_caliper(heads, 350, 370, 390)
    assert [(str(line.state), line.offer.caliper_um) for line in found] == [("accepted", 370)] * 2


@pytest.mark.parametrize("heads", BOUNDS)
def test_the_aim_between_its_bounds_is_the_weight(heads):
    rows = [["EUR/t"], ["Grade", "µm", "g/m²", None, None, "Price"], [None, None, *heads, None]]
    found = lines([*rows, ["GC1", 370, 220, 230, 240, 1086], ["GC1", 400, 240, 250, 260, 1079]])
    assert [line.offer.grammage_gsm for line in found.values()] == [230, 250]
    assert {str(line.state) for line in found.values()} == {"accepted"}


@pytest.mark.parametrize("heads", BOUNDS)
def test_bounds_alone_are_asked_about(heads):
    assert all("caliper-unknown" in codes(line) for line in of_caliper((heads[0], heads[2]), 350, 390))


@pytest.mark.parametrize("figures", [(350, 340, 390), (350, 400, 390)])
def test_an_aim_out_of_its_bounds_is_asked_about(figures):
    assert all("caliper-unknown" in codes(line) for line in of_caliper(("min", "aim", "max"), *figures))


def test_prices_below_a_least_and_a_most_are_no_measures():
    rows = [["EUR/t"], ["Grade", "g/m²", "µm", "Target price"], ["GC1", 230, 370, 1086], ["GC1", 250, 400, 1079]]
    assert [line.offer.caliper_um for line in lines(rows).values()] == [370, 400]
