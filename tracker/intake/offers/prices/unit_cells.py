"""The cells of a row that say in what money its price is and per what: 'EUR' | '1000' | 'KG'."""

from decimal import Decimal

from tracker.intake.columns.column import Column, Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.said import at
from tracker.intake.offers.prices.money import bases_of
from tracker.intake.offers.prices.settle import Claim, Settled
from tracker.intake.offers.rows.rows import WholeRow
from tracker.intake.values.figures.numbers import number_readings, settled
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.basis import basis_text
from tracker.intake.values.prices.money import unit_of_text
from tracker.intake.values.prices.ton_kinds import ton_under
from tracker.intake.words.fold import fold

_UNITS = (Role.BASIS, Role.PER_QUANTITY, Role.CURRENCY)


def unit_cells(whole: WholeRow, columns: Columns, facts: FileFacts) -> list[Cell]:
    """The row's unit and currency cells; how many units and which ('100' | 'kg') are one unit, beside any currency."""
    cells = _cells(whole, columns, facts)
    if not cells:
        return []
    counts = _several(cells, facts)
    named = [cell for cell in cells if not _counts(cell, facts)]
    units = [cell for cell in named if not _only_currency(cell)]
    if len(counts) != 1 or len(units) != 1:
        return named
    together = f"{_number(counts[0], facts)} {units[0].text.strip()}"
    return [units[0]._replace(value=together, text=together), *(cell for cell in named if cell is not units[0])]


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
    words = f"{settled.by.words} / {count.text.strip()}"
    return Settled(other | {settled.value}, Claim(other | {settled.value}, at(count), words))


def _cells(whole: WholeRow, columns: Columns, facts: FileFacts) -> list[Cell]:
    wanted = columns.of(*_UNITS)
    return [_decoded(whole.cells[column.index], column, facts) for column in wanted if column.index in whole.cells]


def _several(cells: list[Cell], facts: FileFacts) -> list[Cell]:
    """The cells that count more than one unit."""
    return [cell for cell in cells if _counts(cell, facts) not in ((), (1,))]


def _number(count: Cell, facts: FileFacts) -> str:
    return " or ".join(f"{number:f}" for number in _counts(count, facts))


def _decoded(cell: Cell, column: Column, facts: FileFacts) -> Cell:
    """The cell with the unit that its code stands for, where the file has a legend of such codes; 'long' under 'Ton'
    is a long ton."""
    entry = facts.unit_codes.get(fold(cell.text).strip()) if facts.unit_codes else None
    unit = ton_under(column.text, cell.text) if entry is None else entry.unit
    return cell if unit is None else cell._replace(value=unit, text=unit)


def _counts(cell: Cell, facts: FileFacts) -> tuple[Decimal, ...]:
    """How many units a price is for, as a cell has it: '1.000' is two numbers unless the file settles its signs."""
    if isinstance(cell.value, Decimal):
        return (cell.value.normalize(),)
    readings = settled(number_readings(cell.text), facts.decimal_sign)
    return tuple(dict.fromkeys(reading.value.normalize() for reading in readings))


def _only_currency(cell: Cell) -> bool:
    unit = unit_of_text(cell.text)
    return unit is not None and unit.basis is None
