from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.trade.quantities_for_tests import decimals
from tracker.trade.quantities import (
    CaliperUnit,
    MassUnit,
    WeightUnit,
    caliper_in,
    density,
    grammage,
    kilograms,
    micrometres,
    weight_in,
)

anything = decimals("0", "100000000", 6)


@given(anything, st.sampled_from(CaliperUnit))
def test_a_caliper_comes_back_as_written(value, unit):
    assert caliper_in(micrometres(value, unit), unit) == Fraction(value)


@given(anything, st.sampled_from(WeightUnit))
def test_a_basis_weight_comes_back_as_written(value, unit):
    assert weight_in(grammage(value, unit), unit) == Fraction(value)


@given(anything, st.sampled_from(MassUnit))
def test_a_mass_is_so_many_times_its_unit(value, unit):
    assert kilograms(value, unit) == Fraction(value) * kilograms(1, unit)


@given(anything, st.sampled_from(CaliperUnit), st.sampled_from(CaliperUnit), st.sampled_from(CaliperUnit))
def test_going_by_a_third_unit_changes_nothing(value, start, by, end):
    directly = caliper_in(micrometres(value, start), end)
    in_two_steps = caliper_in(micrometres(caliper_in(micrometres(value, start), by), by), end)
    assert directly == in_two_steps


def test_a_density_is_exact_and_no_caliper_has_none():
    assert density(Fraction("351.5"), Fraction("457.2")) == Fraction(3515, 4572)
    with pytest.raises(ZeroDivisionError):
        density(300, 0)


def test_the_units_of_one_quantity_stand_in_their_known_order():
    assert micrometres(1, CaliperUnit.POINT) == Fraction("25.4")
    assert micrometres(1, CaliperUnit.INCH) == 1000 * micrometres(1, CaliperUnit.POINT)
    assert grammage(3, WeightUnit.LB_3000FT2) == grammage(1, WeightUnit.LB_MSF)
    assert kilograms(20, MassUnit.CWT) == kilograms(1, MassUnit.SHORT_TON)
    assert kilograms(1, MassUnit.SHORT_TON) < kilograms(1, MassUnit.TONNE) < kilograms(1, MassUnit.LONG_TON)
