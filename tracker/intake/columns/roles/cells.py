"""Reading a cell as one kind of value. A true number has one reading; a text may have several."""

from dataclasses import replace
from decimal import Decimal
from fractions import Fraction
from functools import lru_cache

from tracker.intake.columns.column import Column
from tracker.intake.grid import Cell
from tracker.intake.values.boards.caliper import (
    CaliperText,
    bare_caliper,
    caliper_text,
    caliper_unit,
    in_unit,
    possible_for_board,
)
from tracker.intake.values.boards.reams import Ream
from tracker.intake.values.boards.weight import WeightReading, WeightText, weight_in, weight_text, weight_units
from tracker.intake.values.figures.formats import format_words
from tracker.intake.values.figures.numbers import NumberReading
from tracker.intake.values.orders.masses import Mass, mass_text
from tracker.intake.values.times.lead import LeadTime, LeadUnit, calendar_days, lead_text, lead_unit
from tracker.trade.exact import GSM_PER_LB_MSF
from tracker.trade.quantities import CaliperUnit, MassUnit, WeightUnit


def caliper_of(cell: Cell, unit: CaliperUnit | None) -> CaliperText | None:
    """A caliper cell; the number format's words ('0 "pt"') count as the cell's own."""
    if isinstance(cell.value, Decimal):
        own = caliper_unit(format_words(cell.number_format)) if cell.number_format not in ("", "General") else None
        return _caliper_number(cell.value, own or unit)
    return caliper_text(cell.text, unit) if isinstance(cell.value, str) else None


@lru_cache(maxsize=16384)
def _caliper_number(value: Decimal, unit: CaliperUnit | None) -> CaliperText | None:
    bare = bare_caliper(value)
    if unit is None:
        return CaliperText((bare,), words=str(value)) if bare is not None else None
    under = in_unit(value, unit, str(value))
    if possible_for_board(under.um) or bare is None:
        return CaliperText((under,), words=str(value))
    return CaliperText((under, bare), words=str(value))


def weight_of(cell: Cell, units: tuple[WeightUnit, ...]) -> WeightText | None:
    """A basis-weight cell."""
    if isinstance(cell.value, Decimal):
        own = weight_units(format_words(cell.number_format)) if cell.number_format not in ("", "General") else ()
        return _weight_number(cell.value, own or units)
    return weight_text(cell.text, units) if isinstance(cell.value, str) else None


def weight_on(cell: Cell, ream: Ream) -> WeightText | None:
    """Pounds on this ream, with or without their unit; None where its area is not known or a figure reads two ways."""
    words = cell.text.strip()
    pounds = None if isinstance(cell.value, Decimal) else weight_text(words, (WeightUnit.LB_MSF,))
    value = cell.value if isinstance(cell.value, Decimal) else pounds.readings[0].value if pounds is not None else None
    if ream.msf is None or value is None or value <= 0 or (pounds is not None and len(pounds.readings) != 1):
        return None
    return WeightText((WeightReading(value, None, Fraction(value) * GSM_PER_LB_MSF / ream.msf, words),), words)


@lru_cache(maxsize=16384)
def _weight_number(value: Decimal, units: tuple[WeightUnit, ...]) -> WeightText | None:
    if not units or value <= 0:
        return None
    readings = tuple(weight_in(value, unit, str(value)) for unit in units)
    pounds = WeightUnit.LB_MSF in units and WeightUnit.LB_3000FT2 in units
    return WeightText(readings, str(value), lb_without_area=pounds)


def order_weight(cell: Cell, column: Column, *, nought: bool = False) -> Mass | None:
    """A weight of an order below the head that may name its unit, and say 't' for it. `nought`: 0 is one as well."""
    mass = mass_of(cell, column.mass_units, nought=nought)
    return replace(mass, metric_hint=True) if mass is not None and column.lone_t else mass


def mass_of(cell: Cell, units: tuple[MassUnit, ...], *, nought: bool = False) -> Mass | None:
    """A weight of an order; the number format's words ('0 "t"') count as the cell's own. `nought`: 0 is one as well."""
    if isinstance(cell.value, Decimal):
        own = mass_text(f"1 {format_words(cell.number_format)}") if cell.number_format not in ("", "General") else None
        weighs = cell.value.is_finite() and (cell.value > 0 or (nought and cell.value == 0))
        if not weighs or not (own or units):
            return None
        return replace(own or Mass((), units), amounts=(NumberReading(cell.value),), words=str(cell.value))
    return mass_text(cell.text, units) if isinstance(cell.value, str) else None


def lead_of(cell: Cell, unit: LeadUnit | None) -> LeadTime | None:
    """A lead-time cell; a bare number needs its header's unit."""
    if isinstance(cell.value, Decimal):
        own = lead_unit(format_words(cell.number_format)) or unit
        if own is None or cell.value < 0 or cell.value > 400:
            return None
        days = calendar_days(cell.value, own)
        return LeadTime(days, days, str(cell.value))
    return lead_text(cell.text, unit) if isinstance(cell.value, str) else None
