"""The cells of a row that say in what money its price is and per what: 'EUR' | '1000' | 'KG'."""

from decimal import Decimal
from typing import NamedTuple

from tracker.intake.columns.column import Column, Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.said import at
from tracker.intake.offers.prices.money import bases_of
from tracker.intake.offers.prices.settle import Claim, Settled
from tracker.intake.offers.rows.rows import WholeRow
from tracker.intake.tables.headers.keyed_units import UNIT
from tracker.intake.values.figures.numbers import number_readings, settled
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.basis import basis_text
from tracker.intake.values.prices.money import PriceUnit, unit_of_text
from tracker.intake.values.prices.money_ticked import money_ticked
from tracker.intake.values.prices.ton_kinds import ton_under
from tracker.intake.values.prices.tons_of_codes import ton_of
from tracker.intake.words.fold import fold
from tracker.trade.quantities import MassUnit

_UNITS = (Role.BASIS, Role.PER_QUANTITY, Role.CURRENCY)


class UnitCell(NamedTuple):
    """A unit or currency cell, a code in full, and what it says; `left_out`: a code that the file's key leaves out,
    which says nothing: the 'C' beside 'A = USD/ST, B = USD/cwt' is no cent."""

    cell: Cell
    left_out: bool = False

    @property
    def unit(self) -> PriceUnit | None:
        return None if self.left_out else unit_of_text(self.cell.text)


def unit_cells(whole: WholeRow, columns: Columns, facts: FileFacts) -> list[UnitCell]:
    """The row's unit and currency cells; how many units and which ('100' | 'kg') are one unit, beside any currency."""
    cells = _cells(whole, columns, facts)
    if not cells:
        return []
    counts = _several(cells, facts)
    named = [cell for cell in cells if not _counts(cell, facts)]
    units = [cell for cell in named if not _only_currency(cell)]
    if len(counts) != 1 or len(units) != 1:
        return named
    together = f"{_number(counts[0], facts)} {units[0].cell.text.strip()}"
    several = units[0]._replace(cell=units[0].cell._replace(value=together, text=together))
    return [several, *(cell for cell in named if cell is not units[0])]


def counted(settled: Settled[str], whole: WholeRow, columns: Columns, facts: FileFacts) -> Settled[str]:
    """'Price CZK/kg | Per Qty' over '2750 | 100': with a count and no unit in its row, the price may be per so many of
    the units that the head says."""
    cells = _cells(whole, columns, facts)
    if not cells:
        return settled
    counts = _several(cells, facts)
    named = any(not _counts(cell, facts) and not _only_currency(cell) for cell in cells)
    if settled.by is None or settled.value is None or named or not counts:
        return settled
    count, number = counts[0], _number(counts[0], facts)
    several = basis_text(f"{number} {settled.value}")
    other = bases_of(several, facts) if several is not None else frozenset({f"foreign:{number} {settled.value}"})
    words = f"{settled.by.words} / {count.cell.text.strip()}"
    return Settled(other | {settled.value}, Claim(other | {settled.value}, at(count.cell), words))


def _cells(whole: WholeRow, columns: Columns, facts: FileFacts) -> list[UnitCell]:
    wanted = columns.of(*_UNITS)
    return [_decoded(whole.cells[column.index], column, facts) for column in wanted if column.index in whole.cells]


def _several(cells: list[UnitCell], facts: FileFacts) -> list[UnitCell]:
    """The cells that count more than one unit."""
    return [cell for cell in cells if _counts(cell, facts) not in ((), (1,))]


def _number(count: UnitCell, facts: FileFacts) -> str:
    return " or ".join(f"{number:f}" for number in _counts(count, facts))


def _decoded(cell: Cell, column: Column, facts: FileFacts) -> UnitCell:
    """The cell with the unit that its code stands for, where the file has a legend of such codes; 'long' under 'Ton'
    is a long ton, an 'X' under 'US$' that currency."""
    entry = facts.unit_codes.get(fold(cell.text).strip()) if facts.unit_codes else None
    if entry is None and _left_out(cell.text.strip(), column, facts):
        return UnitCell(cell, left_out=True)
    named = ton_under(column.text, cell.text) or money_ticked(column.text, cell.text)
    unit = named if entry is None else entry.unit
    return UnitCell(cell if unit is None else cell._replace(value=unit, text=unit))


def _left_out(code: str, column: Column, facts: FileFacts) -> bool:
    """Under a head of codes whatever the key does not explain; elsewhere a letter beside several that it does."""
    if not facts.unit_codes or not code:
        return False
    under_codes = bool(column.heads) and column.heads[-1].text == UNIT
    letters = sum(len(known) == 1 and known.isalpha() for known in facts.unit_codes)
    return under_codes or (letters >= _SEVERAL and len(code) == 1 and code.isalpha())


_SEVERAL = 2


def _counts(one: UnitCell, facts: FileFacts) -> tuple[Decimal, ...]:
    """How many units a price is for, as a cell has it: '1.000' is two numbers unless the file settles its signs."""
    if one.left_out:
        return ()
    if isinstance(one.cell.value, Decimal):
        return (one.cell.value.normalize(),)
    readings = settled(number_readings(one.cell.text), facts.decimal_sign)
    return tuple(dict.fromkeys(reading.value.normalize() for reading in readings))


def _only_currency(one: UnitCell) -> bool:
    return one.unit is not None and one.unit.basis is None


def ton_of_row(whole: WholeRow, columns: Columns, facts: FileFacts) -> MassUnit | None:
    """'Ton in items that begin with DOM is the short ton': the one of the row's item, where the file tells it so."""
    named = columns.of(Role.ITEM, Role.PRODUCT, Role.GRADE) if facts.tons_of_codes else ()
    return ton_of((whole.cells[one.index].text for one in named if one.index in whole.cells), facts.tons_of_codes)
