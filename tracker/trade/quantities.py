"""Mass, area, caliper and basis weight: exact in, exact out.

Every function takes Decimal, int or Fraction and gives a Fraction, so that a value converted there and back is the
value that was written.
"""

from decimal import Decimal
from enum import StrEnum
from fractions import Fraction

from tracker.trade.exact import (
    GSM_PER_LB_3000FT2,
    GSM_PER_LB_MSF,
    KG_PER_CWT,
    KG_PER_LB,
    KG_PER_LONG_TON,
    KG_PER_SHORT_TON,
    KG_PER_TONNE,
    MM_PER_INCH,
    UM_PER_POINT,
)

Exact = Decimal | Fraction | int


class CaliperUnit(StrEnum):
    POINT = "pt"
    INCH = "in"
    MILLIMETRE = "mm"
    MICROMETRE = "um"
    TENTH_MILLIMETRE = "mm/10"
    HUNDREDTH_MILLIMETRE = "mm/100"


class WeightUnit(StrEnum):
    """How a basis weight is stated: mass on an area."""

    LB_MSF = "lb/MSF"
    LB_3000FT2 = "lb/3000ft2"
    GSM = "g/m2"
    KG_M2 = "kg/m2"


class MassUnit(StrEnum):
    LB = "lb"
    THOUSAND_LB = "1000lb"
    KG = "kg"
    CWT = "cwt"
    SHORT_TON = "short_ton"
    LONG_TON = "long_ton"
    TONNE = "tonne"


_UM_PER: dict[CaliperUnit, Fraction] = {
    CaliperUnit.POINT: UM_PER_POINT,
    CaliperUnit.INCH: 1000 * MM_PER_INCH,
    CaliperUnit.MILLIMETRE: Fraction(1000),
    CaliperUnit.MICROMETRE: Fraction(1),
    CaliperUnit.TENTH_MILLIMETRE: Fraction(100),
    CaliperUnit.HUNDREDTH_MILLIMETRE: Fraction(10),
}
_GSM_PER: dict[WeightUnit, Fraction] = {
    WeightUnit.LB_MSF: GSM_PER_LB_MSF,
    WeightUnit.LB_3000FT2: GSM_PER_LB_3000FT2,
    WeightUnit.GSM: Fraction(1),
    WeightUnit.KG_M2: Fraction(1000),
}
_KG_PER: dict[MassUnit, Fraction] = {
    MassUnit.LB: KG_PER_LB,
    MassUnit.THOUSAND_LB: 1000 * KG_PER_LB,
    MassUnit.KG: Fraction(1),
    MassUnit.CWT: KG_PER_CWT,
    MassUnit.SHORT_TON: KG_PER_SHORT_TON,
    MassUnit.LONG_TON: KG_PER_LONG_TON,
    MassUnit.TONNE: Fraction(KG_PER_TONNE),
}


def micrometres(value: Exact, unit: CaliperUnit) -> Fraction:
    """A caliper in micrometres: micrometres(18, POINT) is 457.2."""
    return Fraction(value) * _UM_PER[unit]


def caliper_in(caliper_um: Exact, unit: CaliperUnit) -> Fraction:
    """A caliper given in micrometres, in another unit."""
    return Fraction(caliper_um) / _UM_PER[unit]


def grammage(value: Exact, unit: WeightUnit) -> Fraction:
    """A basis weight in g/m²: grammage(78, LB_MSF) is 380.829…"""
    return Fraction(value) * _GSM_PER[unit]


def weight_in(grammage_gsm: Exact, unit: WeightUnit) -> Fraction:
    """A grammage given in g/m², in another unit of basis weight."""
    return Fraction(grammage_gsm) / _GSM_PER[unit]


def kilograms(value: Exact, unit: MassUnit) -> Fraction:
    """A mass in kg: kilograms(1, CWT) is 45.359237 (the US hundredweight of 100 lb)."""
    return Fraction(value) * _KG_PER[unit]


def density(grammage_gsm: Exact, caliper_um: Exact) -> Fraction:
    """Apparent density in g/cm³ from g/m² and µm. ZeroDivisionError for a caliper of nothing."""
    return Fraction(grammage_gsm) / Fraction(caliper_um)
