"""Units against their definitions and against printed tables.

Definitions: the international pound and yard of 1959 (0.45359237 kg, 0.9144 m; 907.18474 kg and 45.359237 kg follow),
as encyclopaedias print them; NIST SP 811 and Handbook 44, appendix C, were not seen. Printed pairs: the
paper specification standards of the US Government Printing Office and Joint Committee on Printing. Their grammages are
nominal (rounded, often to 5), hence the tolerance.
"""

from decimal import Decimal
from fractions import Fraction

import pytest

from tracker.trade.basis import Basis, sheet_area
from tracker.trade.exact import (
    GSM_PER_LB_3000FT2,
    GSM_PER_LB_MSF,
    KG_PER_CWT,
    KG_PER_LB,
    KG_PER_LONG_TON,
    KG_PER_SHORT_TON,
    M2_PER_MSF,
    M2_PER_SQUARE_FOOT,
    M_PER_FOOT,
    MM_PER_INCH,
)
from tracker.trade.quantities import (
    CaliperUnit,
    MassUnit,
    WeightUnit,
    caliper_in,
    density,
    grammage,
    kilograms,
    micrometres,
)

NOMINAL = 0.015


@pytest.mark.parametrize(
    ("ours", "defined"),
    [
        (KG_PER_LB, "0.45359237"),
        (M_PER_FOOT, "0.3048"),
        (MM_PER_INCH, "25.4"),
        (M2_PER_SQUARE_FOOT, "0.09290304"),
        (M2_PER_MSF, "92.90304"),
        (KG_PER_CWT, "45.359237"),
        (KG_PER_SHORT_TON, "907.18474"),
        (KG_PER_LONG_TON, "1016.0469088"),
        (GSM_PER_LB_MSF, "45359237/9290304"),
        (GSM_PER_LB_3000FT2, "45359237/27870912"),
    ],
)
def test_factors_are_the_exact_ones(ours, defined):
    assert ours == Fraction(defined)


@pytest.mark.parametrize(
    ("ours", "printed"),
    [
        # Factors to ten digits, computed from the definitions and checked against two unit libraries.
        (grammage(1, WeightUnit.LB_MSF), 4.8824276364),
        (1 / grammage(1, WeightUnit.LB_MSF), 0.20481614362),
        (grammage(1, WeightUnit.LB_3000FT2), 1.6274758788),
        (1 / grammage(1, WeightUnit.LB_3000FT2), 0.61444843087),
        (1000 / kilograms(1, MassUnit.SHORT_TON), 1.1023113109),
        (1000 / kilograms(1, MassUnit.LONG_TON), 0.98420652761),
        (1000 / M2_PER_MSF, 10.763910417),
        (density(grammage(1, WeightUnit.LB_MSF), micrometres(1, CaliperUnit.POINT)), 0.19222156049),
        (density(grammage(1, WeightUnit.LB_3000FT2), micrometres(1, CaliperUnit.POINT)), 0.064073853496),
    ],
)
def test_derived_factors_to_ten_digits(ours, printed):
    assert float(ours) == pytest.approx(printed, rel=5e-11)


def ream_grammage(pounds, width_in, length_in):
    """Grammage of paper whose 500 sheets of the given size weigh so many pounds."""
    area = 500 * sheet_area((width_in * MM_PER_INCH, length_in * MM_PER_INCH))
    return kilograms(pounds, MassUnit.LB) * 1000 / area


@pytest.mark.parametrize(
    ("specification", "pounds", "size", "printed_gsm"),
    [
        ("JCP P20", 105, (24, 36), 170),
        ("JCP P20", 150, (24, 36), 245),
        ("JCP P20", 165, (24, 36), 270),
        ("JCP P20", 250, (24, 36), 405),
        ("JCP Q80", 160, (24, 36), 260),
        ("JCP A91", 70, (25, 38), 105),
        ("JCP A91", 80, (25, 38), 120),
        ("JCP A91", 100, (25, 38), 150),
        ("JCP Q50", 100, (Fraction("22.5"), Fraction("28.5")), 220),
        ("JCP D10", 12, (17, 22), 45),
        ("JCP D10", 16, (17, 22), 60),
        ("JCP D10", 18, (17, 22), 68),
        ("JCP D10", 20, (17, 22), 75),
        ("trade catalogue standards, chapter 16", 50, (25, 38), 74),
    ],
)
def test_printed_pairs_of_ream_weight_and_grammage(specification, pounds, size, printed_gsm):
    assert float(ream_grammage(pounds, *size)) == pytest.approx(printed_gsm, rel=NOMINAL), specification


@pytest.mark.parametrize("pounds", [105, 150, 165, 250, 160])
def test_a_ream_of_24_by_36_inches_is_3000_square_feet(pounds):
    assert ream_grammage(pounds, 24, 36) == grammage(pounds, WeightUnit.LB_3000FT2)


@pytest.mark.parametrize(
    ("specification", "inches", "printed_mm"),
    [
        ("JCP Q20", "0.0180", 0.45),
        ("JCP Q20", "0.0300", 0.76),
        ("JCP Q20", "0.0480", 1.22),
        ("JCP P20", "0.008", 0.20),
        ("JCP P20", "0.011", 0.28),
        ("JCP P20", "0.014", 0.35),
        ("JCP P20", "0.018", 0.45),
    ],
)
def test_printed_calipers(specification, inches, printed_mm):
    """Thicknesses in inches and, shortened to a hundredth, in millimetres."""
    ours = caliper_in(micrometres(Decimal(inches), CaliperUnit.INCH), CaliperUnit.MILLIMETRE)
    assert abs(float(ours) - printed_mm) < 0.01, specification


def test_205_gsm_is_close_to_42_pounds():
    """Industry paper 'Paper 101: Basis Weight': 205 g/m² beside 42 lb per 1,000 ft²."""
    assert float(grammage(42, WeightUnit.LB_MSF)) == pytest.approx(205, rel=0.001)


@pytest.mark.parametrize("wrong", [4.831, 4.8])
def test_factors_that_are_wrong_in_print_are_not_ours(wrong):
    """A printers' encyclopedia prints 4.831 g/m² per lb/MSF, and a quick rule divides by 4.8: both over 1 % away."""
    assert abs(float(GSM_PER_LB_MSF) / wrong - 1) > 0.01


def test_every_mass_unit_but_those_of_order_sizes_alone_has_a_basis_of_the_same_name():
    assert {unit.value for unit in MassUnit} - {basis.value for basis in Basis} == {"long_ton", "1000lb"}
