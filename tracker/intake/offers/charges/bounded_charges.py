"""Charges that rolls of some widths alone bear: whether a row's is one of them."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from tracker.intake.columns.column import Column, Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.charges.relief import left_to_form
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.notes.said import Said
from tracker.intake.values.boards.weighed_sheets import bounds_sizes
from tracker.intake.values.figures.lengths import measured
from tracker.intake.values.figures.sheetsize import MM_PER, LengthUnit
from tracker.intake.values.freight.charged_measures import WidthBound
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.lists import phrases

Cells = Mapping[int, Cell]


@dataclass(frozen=True)
class Bearing:
    """A row, to tell of it whether it bears what only some do. `ways`: those in which its board is sold."""

    draft: Draft
    cells: Cells
    columns: Columns
    ways: Callable[[], frozenset[str]]

    def left(self, said: Said[ChargeWords]) -> Said[ChargeWords] | None:
        """The charge, where the row bears it; None where it does not, without its amounts where that is not known."""
        words = said.value
        left = left_to_form(words, self.ways) if words.bound is None else self._left_to_width(words, words.bound)
        return None if left is None else said if left is words else replace(said, value=left)

    def _left_to_width(self, words: ChargeWords, bound: WidthBound) -> ChargeWords | None:
        if self.draft.sheet_mm is not None:
            return None if words.form == "roll" else _open(words)
        held = {bound.holds(width) for width in _widths(self.cells, self.columns)}
        if held == {False}:
            return None
        # What has a width is no sheet.
        return words if held == {True} else left_to_form(_open(words), self.ways)


def several_open(told: Sequence[Said[ChargeWords]]) -> list[Said[ChargeWords]]:
    """Of two that are bounded, 'below 600 mm 40 EUR/t' and 'below 400 mm 60 EUR/t' extra, it is not told whether one
    replaces the other, whatever they are called."""
    bounded = [said for said in told if said.value.bound is not None]
    if len(bounded) < 2:
        return list(told)
    return [replace(said, value=_open(said.value)) if said in bounded else said for said in told]


def _open(words: ChargeWords) -> ChargeWords:
    return replace(words, amounts=(), of_some=True)


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
    """Not 'Roll diameter' and 'Core', which stand in the same role, nor 'Max. width' and 'Machine width', which tell
    what can be made."""
    if bounds_sizes(column.text) or phrases("machine_widths").find(column.text):
        return False
    return column.role is Role.WIDTH or bool(phrases("web_widths").find(column.text))
