"""A column that can only hold basis weights, by its unit's mass and by what its boards would weigh, though its head is
in no list: 'lb/MPC'. Without it a weight would be shown as estimated that the vendor quotes."""

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from decimal import Decimal
from fractions import Fraction

from tracker.intake.columns.column import Column
from tracker.intake.columns.roles.cells import caliper_of
from tracker.intake.grid import Cell
from tracker.intake.tables.figures import figure_of
from tracker.intake.values.boards.weight import weight_in
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.orders.masses import find_mass_units
from tracker.trade.grades import DENSEST_BOARD, LIGHTEST_BOARD
from tracker.trade.quantities import WeightUnit

_FEWEST_ROWS = 2
_POUNDS = re.compile(r"#|\blbs?\b|\blivres?\b|\blibras?\b|\bpund\b", re.IGNORECASE)
_GRAMS = re.compile(r"\bgr?\b|\bgrams?\b|\bgramm\w*", re.IGNORECASE)


def weighed_by_figures(columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """Makes the one column of unknown meaning whose figures weigh every board as board can weigh the weight's."""
    if any(column.role in (Role.WEIGHT, Role.SHEETS_WEIGHT) for column in columns):
        return columns
    calipers = [column for column in columns if column.role is Role.CALIPER]
    if len(calipers) != 1:
        return columns
    thick = _calipers(calipers[0], samples[calipers[0].index])
    may = [
        column
        for column in columns
        if (column.role is None or _too_light_an_order(column, samples[column.index]))
        and _weighs(column, thick, samples[column.index])
    ]
    return [replace(column, role=Role.WEIGHT) if [column] == may else column for column in columns]


def _calipers(column: Column, cells: Sequence[Cell]) -> dict[int, Decimal]:
    read = ((cell.row, caliper_of(cell, column.caliper_unit)) for cell in cells)
    return {row: said.readings[0].um for row, said in read if said is not None and len(said.readings) == 1}


def _weighs(column: Column, thick: Mapping[int, Decimal], cells: Sequence[Cell]) -> bool:
    units = _units(column)
    said = ((cell.row, figure_of(cell)) for cell in cells if cell.row in thick)
    figures = {row: figure for row, figure in said if figure is not None}
    if not units or len(figures) < _FEWEST_ROWS or len(set(figures.values())) < _FEWEST_ROWS:
        return False
    return any(all(_plausible(figures[row], unit, thick[row]) for row in figures) for unit in units)


def _too_light_an_order(column: Column, cells: Sequence[Cell]) -> bool:
    """'#' over 67 and 83: nobody orders so few pounds."""
    figures = [figure for cell in cells if (figure := figure_of(cell)) is not None]
    return column.role is Role.BRACKET and column.text.strip() in _SIGNS and max(figures, default=_LEAST) < _LEAST


_SIGNS = ("#", "#s", "lb", "lbs", "lb.", "lbs.")
_LEAST = Decimal(200)
"""Pounds below which no order is priced by weight; common practice, no source."""


def _units(column: Column) -> tuple[WeightUnit, ...]:
    text = column.text
    if _POUNDS.search(text) and (column.role is Role.BRACKET or not _is_plain_mass(text)):
        return (WeightUnit.LB_MSF, WeightUnit.LB_3000FT2)
    return (WeightUnit.GSM,) if _GRAMS.search(text) else ()


def _is_plain_mass(text: str) -> bool:
    """'Qty (lb)', 'lb': nothing says that so much is on an area."""
    return bool(find_mass_units(text)) and "/" not in text and " per " not in text


def _plausible(figure: Decimal, unit: WeightUnit, um: Decimal) -> bool:
    density = weight_in(figure, unit, "").gsm / Fraction(um)
    return LIGHTEST_BOARD <= density <= DENSEST_BOARD
