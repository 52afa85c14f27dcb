"""Two independent converters, pint and scipy.constants, on random input.

Both carry the international pound, foot and inch of their own; neither shares code with the tracker.
"""

from functools import cache

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.trade.quantities_for_tests import decimals, grammages, prices
from tracker.trade.basis import Basis, BoardMeasure, per_msf, per_tonne
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

PINT_MASS = {
    MassUnit.LB: "pound",
    MassUnit.THOUSAND_LB: "kilopound",
    MassUnit.KG: "kilogram",
    MassUnit.CWT: "US_hundredweight",
    MassUnit.SHORT_TON: "US_ton",
    MassUnit.LONG_TON: "UK_ton",
    MassUnit.TONNE: "metric_ton",
}
PINT_LENGTH = {
    CaliperUnit.POINT: "thou",
    CaliperUnit.INCH: "inch",
    CaliperUnit.MILLIMETRE: "millimeter",
    CaliperUnit.MICROMETRE: "micrometer",
    CaliperUnit.TENTH_MILLIMETRE: "tenth_millimeter",
    CaliperUnit.HUNDREDTH_MILLIMETRE: "hundredth_millimeter",
}
PINT_WEIGHT = {
    WeightUnit.LB_MSF: "pound / (1000 * foot ** 2)",
    WeightUnit.LB_3000FT2: "pound / (3000 * foot ** 2)",
    WeightUnit.GSM: "gram / meter ** 2",
    WeightUnit.KG_M2: "kilogram / meter ** 2",
}
PINT_BASIS = {
    Basis.SHORT_TON: "US_ton",
    Basis.TONNE: "metric_ton",
    Basis.CWT: "US_hundredweight",
    Basis.LB: "pound",
    Basis.KG: "kilogram",
    Basis.MSF: "1000 * foot ** 2",
    Basis.M2: "meter ** 2",
    Basis.THOUSAND_M2: "1000 * meter ** 2",
}
values = decimals("0.001", "100000")


@cache
def pint_registry():
    import pint

    units = pint.UnitRegistry()
    # They have no name there: its prefixes stand on metres only.
    units.define("tenth_millimeter = millimeter / 10")
    units.define("hundredth_millimeter = millimeter / 100")
    return units


def by_pint(value, start, end):
    units = pint_registry()
    return (float(value) * units.parse_expression(start)).to(units.parse_units(end)).magnitude


@given(values, st.sampled_from(MassUnit))
def test_mass_by_pint(value, unit):
    assert float(kilograms(value, unit)) == pytest.approx(by_pint(value, PINT_MASS[unit], "kilogram"), rel=1e-12)


@given(values, st.sampled_from(CaliperUnit), st.sampled_from(CaliperUnit))
def test_caliper_by_pint(value, start, end):
    ours = float(caliper_in(micrometres(value, start), end))
    assert ours == pytest.approx(by_pint(value, PINT_LENGTH[start], PINT_LENGTH[end]), rel=1e-12)


@given(values, st.sampled_from(WeightUnit))
def test_basis_weight_by_pint(value, unit):
    assert float(grammage(value, unit)) == pytest.approx(
        by_pint(value, PINT_WEIGHT[unit], "gram / meter ** 2"), rel=1e-12
    )


@given(values, decimals("1", "100"))
def test_density_by_pint(pounds, points):
    units = pint_registry()
    weight = float(pounds) * units.parse_expression("pound / (1000 * foot ** 2)")
    theirs = (weight / (float(points) * units.thou)).to("gram / centimeter ** 3").magnitude
    ours = density(grammage(pounds, WeightUnit.LB_MSF), micrometres(points, CaliperUnit.POINT))
    assert float(ours) == pytest.approx(theirs, rel=1e-12)


@given(prices, st.sampled_from(sorted(PINT_BASIS)), grammages)
def test_price_per_tonne_and_per_msf_by_pint(price, basis, gsm):
    units = pint_registry()
    board = float(gsm) * units.gram / units.meter**2
    quantity = units.parse_expression(PINT_BASIS[basis]) * 1.0
    by_area = quantity.check("[area]")
    mass = (quantity * board if by_area else quantity).to("metric_ton").magnitude
    area = (quantity if by_area else quantity / board).to("foot ** 2").magnitude / 1000
    ours = BoardMeasure(gsm)
    assert float(per_tonne(price, basis, ours)) == pytest.approx(float(price) / mass, rel=1e-11)
    assert float(per_msf(price, basis, ours)) == pytest.approx(float(price) / area, rel=1e-11)


@given(prices, grammages, decimals("300", "2000", 1), decimals("300", "2000", 1))
def test_price_per_thousand_sheets_by_pint(price, gsm, width, length):
    units = pint_registry()
    area = 1000 * float(width) * float(length) * units.millimeter**2
    tonnes = (area * float(gsm) * units.gram / units.meter**2).to("metric_ton").magnitude
    ours = per_tonne(price, Basis.THOUSAND_SHEETS, BoardMeasure(gsm, (width, length)))
    assert float(ours) == pytest.approx(float(price) / tonnes, rel=1e-11)


@given(values)
def test_by_the_constants_of_scipy(value):
    from scipy import constants

    short_ton, long_ton = constants.short_ton, constants.long_ton
    number = float(value)
    assert float(kilograms(value, MassUnit.LB)) == pytest.approx(number * constants.pound, rel=1e-12)
    assert float(kilograms(value, MassUnit.SHORT_TON)) == pytest.approx(number * short_ton, rel=1e-12)
    assert float(kilograms(value, MassUnit.LONG_TON)) == pytest.approx(number * long_ton, rel=1e-12)
    assert float(micrometres(value, CaliperUnit.POINT)) == pytest.approx(number * constants.mil * 1e6, rel=1e-12)
    lb_msf = constants.pound * 1000 / (1000 * constants.foot**2)
    assert float(grammage(value, WeightUnit.LB_MSF)) == pytest.approx(number * lb_msf, rel=1e-12)
    assert float(weight_in(value, WeightUnit.LB_3000FT2)) == pytest.approx(number / (lb_msf / 3), rel=1e-12)
