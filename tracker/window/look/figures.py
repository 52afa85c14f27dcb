"""Numbers as a person reads them: in the user's units and locale, the unit never missing."""

from datetime import date
from decimal import Decimal
from enum import StrEnum
from math import isfinite, isnan

from PySide6.QtCore import QLocale

from tracker.trade.days import day_text
from tracker.trade.exact import KG_PER_LB, KG_PER_SHORT_TON, half_up
from tracker.trade.quantities import CaliperUnit, WeightUnit, caliper_in, weight_in

NONE = "–"
_UM_PER_POINT = float(1 / caliper_in(1, CaliperUnit.POINT))
_KG_PER_LB, _KG_PER_SHORT_TON = float(KG_PER_LB), float(KG_PER_SHORT_TON)
_GSM_PER_LB_MSF = float(1 / weight_in(1, WeightUnit.LB_MSF))


class Units(StrEnum):
    """What a user measures board in. Prices keep to the footing, whichever units are chosen."""

    US = "US"
    METRIC = "metric"


def other_units(units: Units) -> Units:
    return Units.METRIC if units is Units.US else Units.US


def figure(value: float, places: int) -> str:
    """A number with the locale's separators; a dash where it is not known."""
    return NONE if not isfinite(value) else QLocale().toString(float(half_up(float(value), places)), "f", places)


def percent(ratio: float) -> str:
    """1.31 as '131 %'."""
    return NONE if isnan(ratio) else f"{figure(100 * ratio, 0)} %"


def signed_percent(ratio: float) -> str:
    """1.62 as '+62 %', 0.95 as '−5 %': how far something is from the going price."""
    if isnan(ratio):
        return NONE
    off = int(half_up(100 * (ratio - 1), 0))
    return f"{'+' if off > 0 else '−' if off < 0 else ''}{figure(abs(off), 0)} %"


def beside(ratio: float) -> str:
    """The same in words: '62 % above', '5 % below', 'level with'."""
    off = signed_percent(ratio)
    if off == NONE or off == "0 %":
        return NONE if off == NONE else "level with"
    return f"{off[1:]} {'above' if off[0] == '+' else 'below'}"


def caliper_value(caliper_um: float, units: Units) -> float:
    """µm as points or, in metric units, as they are."""
    return caliper_um / _UM_PER_POINT if units is Units.US else caliper_um


def caliper_um_of(value: float, units: Units) -> float:
    """What a user typed, in µm."""
    return value * _UM_PER_POINT if units is Units.US else value


def caliper_unit(units: Units) -> str:
    return "pt" if units is Units.US else "µm"


def caliper(caliper_um: float | Decimal | None, units: Units) -> str:
    """'18 pt' or '457 µm'; half points are kept."""
    if caliper_um is None or isnan(caliper_um):
        return NONE
    value = caliper_value(float(caliper_um), units)
    if units is Units.METRIC:
        return f"{figure(value, 0)} µm"
    rounded = round(value, 1)
    return f"{figure(rounded, 0 if rounded == int(rounded) else 1)} pt"


def weight_value(grammage_gsm: float, units: Units) -> float:
    """g/m² as lb/1,000 ft² or, in metric units, as it is."""
    return grammage_gsm / _GSM_PER_LB_MSF if units is Units.US else grammage_gsm


def weight_unit(units: Units) -> str:
    return "lb/MSF" if units is Units.US else "g/m²"


def weight(grammage_gsm: float, units: Units, *, estimated: bool = False) -> str:
    """'74.0' or '361', marked with a star where it is an estimate: the unit stands in the heading."""
    text = figure(weight_value(grammage_gsm, units), 1 if units is Units.US else 0)
    return f"{text}*" if estimated and text != NONE else text


def mass(mass_kg: float, units: Units) -> str:
    """An order size: '20 t', or in US units '22 ST' (short tons); small ones in kg or lb."""
    if isnan(mass_kg):
        return NONE
    large, small = ("ST", "lb") if units is Units.US else ("t", "kg")
    in_large = mass_kg / kg_per_ton(units)
    if in_large < 1:
        return f"{figure(mass_kg / _KG_PER_LB if units is Units.US else mass_kg, 0)} {small}"
    rounded = round(in_large, 1)
    return f"{figure(rounded, 0 if rounded == int(rounded) else 1)} {large}"


def order_size(low_kg: float, high_kg: float, minimum_kg: float, units: Units) -> str:
    """'from 20 ST', '5–20 ST', 'min. 10 ST' or 'any': NaN is open, the lower bound inclusive, the upper exclusive."""
    if isnan(low_kg) and isnan(high_kg):
        return "any" if isnan(minimum_kg) else f"min. {mass(minimum_kg, units)}"
    if isnan(high_kg):
        return f"from {mass(low_kg, units)}"
    if isnan(low_kg) or low_kg == 0:
        return f"below {mass(high_kg, units)}"
    low, _, unit = mass(low_kg, units).rpartition(" ")
    high = mass(high_kg, units)
    # '500 lb–5 ST' keeps both: without its own unit the lower bound would be a thousand times too high.
    return f"{low}–{high}" if high.endswith(f" {unit}") else f"{low} {unit}–{high}"


def kg_per_ton(units: Units) -> float:
    """The ton that orders are spoken of in: the short ton in US units, else the tonne."""
    return _KG_PER_SHORT_TON if units is Units.US else 1000.0


def lead_time(low: float, high: float) -> str:
    """Calendar days as weeks where they are whole ones: '4 wk', '5–6 wk', '10 days', 'stock'."""
    if isnan(low) and isnan(high):
        return NONE
    low, high = (high, high) if isnan(low) else (low, low) if isnan(high) else (low, high)
    if high == 0:
        return "stock"
    if low % 7 == 0 and high % 7 == 0:
        return f"{_span(low / 7, high / 7)} wk"
    return f"{_span(low, high)} days"


def _span(low: float, high: float) -> str:
    return f"{low:.0f}" if low == high else f"{low:.0f}–{high:.0f}"


def day(ordinal: int) -> str:
    """A proleptic ordinal as '31 Dec 2026'; a dash for -1."""
    return NONE if ordinal < 1 else date_text(date.fromordinal(int(ordinal)))


def date_text(value: date | None) -> str:
    """'31 Dec 2026': month as a word, because 03/04 is read two ways."""
    return NONE if value is None else day_text(value)


def counted(number: int, one: str, many: str = "") -> str:
    """'1 offer', '42 offers', '1,204 offers'."""
    return f"{QLocale().toString(number)} {one if number == 1 else many or one + 's'}"
