"""Charges that rolls of some widths alone bear: whether a row's is one of them."""

from collections.abc import Iterable, Mapping
from dataclasses import replace
from decimal import Decimal

from tracker.intake.columns.column import Column, Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.notes.said import Said
from tracker.intake.values.figures.lengths import measured
from tracker.intake.values.figures.sheetsize import MM_PER, LengthUnit
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.lists import phrases

Cells = Mapping[int, Cell]


def borne_by_size(
    told: Iterable[Said[ChargeWords]], draft: Draft, cells: Cells, columns: Columns
) -> list[Said[ChargeWords]]:
    """What a row bears of them: those of its width, and without their amounts those of which that is not known.

    Of two that are bounded, 'below 600 mm 40 EUR/t' and 'below 400 mm 60 EUR/t', it is not told whether one replaces
    the other.
    """
    left = [_left(said, draft, cells, columns) for said in told]
    kept = [said for said in left if said is not None]
    bounded = [said for said in kept if said.value.bound is not None]
    return [_open(said) if len(bounded) > 1 and said in bounded else said for said in kept]


def _left(said: Said[ChargeWords], draft: Draft, cells: Cells, columns: Columns) -> Said[ChargeWords] | None:
    bound = said.value.bound
    if bound is None:
        return said
    if draft.sheet_mm is not None:
        return None if said.value.form == "roll" else _open(said)
    widths = _widths(cells, columns)
    held = {bound.holds(width) for width in widths}
    if held == {False}:
        return None
    # What has a width is no sheet.
    return replace(said, value=replace(said.value, form="")) if held == {True} else _open(said)


def _open(said: Said[ChargeWords]) -> Said[ChargeWords]:
    return replace(said, value=replace(said.value, amounts=()))


def _widths(cells: Cells, columns: Columns) -> list[Decimal]:
    """The readings of a row's roll width in mm; none where no column holds it, or its unit is not told."""
    named = [column for column in columns.of(Role.ROLL_WIDTH, Role.WIDTH) if _is_of_widths(column)]
    cell = cells.get(named[0].index) if len(named) == 1 else None
    if cell is None:
        return []
    found = measured(cell.text, "length_units")
    unit = named[0].length_unit
    units = [LengthUnit(one.unit) if one.unit else unit for one in found]
    if None in units:
        return []
    told = ((amount, of) for one, of in zip(found, units, strict=True) if of is not None for amount in one.amounts)
    return [amount.value * MM_PER[of] for amount, of in told]


def _is_of_widths(column: Column) -> bool:
    """Not 'Roll diameter' and 'Core', which stand in the same role."""
    return column.role is Role.WIDTH or bool(phrases("web_widths").find(column.text))
