"""Columns that a person named by hand, with the units the person gave: the sheet's own words still come first."""

from collections.abc import Callable, Mapping

from tracker.intake.columns.column import Column, Columns
from tracker.intake.columns.priced.prices import price_columns
from tracker.intake.grid import Cell
from tracker.intake.tables.table import HeadedColumn, Table
from tracker.intake.values.figures.sheetsize import LengthUnit
from tracker.intake.values.heads.header import Header, header
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.basis import BasisReading
from tracker.intake.values.prices.currency import CurrencyReading
from tracker.intake.values.times.lead import LeadUnit
from tracker.trade.basis import Basis
from tracker.trade.layout import Layout, MarkedColumn
from tracker.trade.quantities import CaliperUnit, MassUnit, WeightUnit

HERE, EARLIER = ", as you marked it", ", as you marked an earlier sheet"
"""How words end that the user said of this very sheet, and of one whose layout serves this one too."""
_SAMPLE = 60


def named_columns(table: Table, layout: Layout, *, here: bool) -> Columns:
    """The table's columns with the roles that they were given; `here`: in this very sheet."""
    marked = {column.index: column for column in layout.columns}
    whence = HERE if here else EARLIER
    columns = [_column(table, headed, marked[headed.index], layout, whence) for headed in table.columns]
    samples = {column.index: _sample(table, column.index) for column in columns}
    return price_columns(columns, samples)


def unmarked(words: str) -> str | None:
    """What the user said of a column, without that it was marked; None for the sheet's own words."""
    ending = next((each for each in (HERE, EARLIER) if words.endswith(each)), None)
    return None if ending is None else words.removesuffix(ending)


def _column(table: Table, headed: HeadedColumn, marked: MarkedColumn, layout: Layout, whence: str) -> Column:
    role = Role(marked.role) if marked.role else None
    said = tuple(header(cell.text.strip()) for cell in headed.heads)
    added = _added(role, marked, layout, whence)
    if added is None:
        return Column(headed.index, role, headed.heads, said)
    # On top, so that whatever the sheet's own heads say is nearer to the cells and comes first.
    cell = Cell(table.first_row, headed.index, added.text, added.text)
    return Column(headed.index, role, (cell, *headed.heads), (added, *said))


def _added(role: Role | None, marked: MarkedColumn, layout: Layout, whence: str) -> Header | None:
    """What the user says of a column beyond its role, as if a head said it; None for nothing."""
    currency = layout.currency if role is Role.PRICE else None
    if role is None or not (marked.unit or currency):
        return None
    words = " ".join(part for part in (currency, marked.words.partition(", ")[2]) if part) + whence
    said = _UNITS[role](marked.unit, words) if marked.unit and role in _UNITS else Header(words, ())
    return _with_currency(said, currency) if currency else said


def _with_currency(said: Header, code: str) -> Header:
    return Header(said.text, (), CurrencyReading((code,), said.text), said.basis)


def _caliper(unit: str, words: str) -> Header:
    return Header(words, (), caliper_unit=CaliperUnit(unit))


def _weight(unit: str, words: str) -> Header:
    return Header(words, (), weight_units=(WeightUnit(unit),))


def _price(unit: str, words: str) -> Header:
    return Header(words, (), basis=BasisReading(frozenset({Basis(unit)}), words))


def _mass(unit: str, words: str) -> Header:
    return Header(words, (), mass_units=(MassUnit(unit),))


def _lead(unit: str, words: str) -> Header:
    return Header(words, (), lead_unit=LeadUnit(unit))


def _length(unit: str, words: str) -> Header:
    return Header(words, (), length_unit=LengthUnit(unit))


_UNITS: Mapping[Role, Callable[[str, str], Header]] = {
    Role.CALIPER: _caliper,
    Role.WEIGHT: _weight,
    Role.PRICE: _price,
    Role.BRACKET: _mass,
    Role.FROM_QUANTITY: _mass,
    Role.BELOW_QUANTITY: _mass,
    Role.MINIMUM: _mass,
    Role.LEAD_TIME: _lead,
    Role.SHEET_SIZE: _length,
}


def _sample(table: Table, index: int) -> list[Cell]:
    cells = (table.view.rows[row.index].get(index) for row in table.rows[:_SAMPLE])
    return [cell for cell in cells if cell is not None]
