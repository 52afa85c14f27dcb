"""Sampling counts and the unit relations of stiffness, as standards have them."""

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tracker.trade.methods import properties
from tracker.trade.readings import reading
from tracker.trade.sampling import units_to_take

STANDARD_GRAVITY = Fraction("9.80665")
"""m/s², exact (3rd General Conference on Weights and Measures, 1901)."""


@pytest.mark.parametrize(
    ("units", "take"), [(1, 1), (5, 5), (6, 6), (21, 6), (22, 7), (101, 10), (399, 25), (400, 25), (10_000, 25)]
)
def test_units_taken_from_a_lot(units: int, take: int) -> None:
    """ISO 186, TAPPI T 400 (from memory): all of up to 5, (n + 99) / 20 of 6 to 399, 25 of 400 and more."""
    assert units_to_take(units) == take


@given(st.integers(1, 2000))
def test_more_is_never_taken_of_a_smaller_lot(units: int) -> None:
    assert units_to_take(units) <= units_to_take(units + 1)
    assert units_to_take(units) <= units


@pytest.mark.parametrize("direction", ["md", "cd"])
def test_a_taber_unit_is_a_gram_force_centimetre(direction: str) -> None:
    """1 Taber stiffness unit = 1 gf·cm = 0.0980665 mN·m by the defined standard gravity; 100 units are 9.80665 mN·m
    (an NBS/TAPPI report prints 98.07 µN·m a unit)."""
    found = properties()[f"bending_moment_{direction}"]
    newtons_of_a_gram = Fraction(1, 1000) * STANDARD_GRAVITY
    millinewton_metres = newtons_of_a_gram * Fraction(1, 100) * 1000
    assert found.factor("gf·cm") == found.factor("taber") == millinewton_metres
    assert reading("100", found, "taber") == Decimal("9.80665")
    assert round(float(millinewton_metres) * 1000, 2) == 98.07


@pytest.mark.parametrize("direction", ["md", "cd"])
def test_a_moment_is_never_taken_for_a_force(direction: str) -> None:
    """The two are linked only by a test length (geometry says 50 mm, the trade 48.3), so neither is converted here."""
    moment, force = properties()[f"bending_moment_{direction}"], properties()[f"bending_resistance_{direction}"]
    assert force.factor("gf·cm") is None
    assert moment.factor("mN") is None
    assert force.factor("N") == 1000


def test_burst_in_pounds_per_square_inch() -> None:
    """1 psi = 4.4482216152605 N / 0.0254² m² (NIST SP 811: 6.894757 kPa)."""
    found = properties()["burst"]
    assert float(found.factor("psi") or 0) == pytest.approx(6.894757, abs=5e-7)
    assert found.factor("psi") == Fraction("4.4482216152605") / Fraction("0.0254") ** 2 / 1000
