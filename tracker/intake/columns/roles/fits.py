"""How well a column's cells fit a role: what settles 'Weight', 'Delivery' and other words of two meanings."""

import re
from collections.abc import Callable, Sequence
from datetime import date
from decimal import Decimal

from tracker.intake.columns.column import Column
from tracker.intake.columns.roles.cells import caliper_of, lead_of, mass_of, weight_of
from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import looks_priced
from tracker.intake.values.boards.grade import coated_count, find_grade
from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.figures.sheetsize import find_sheet_sizes, sheet_text
from tracker.intake.values.firms.company import may_call_a_vendor
from tracker.intake.values.freight.delivery import terms_under
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.orders.brackets import bracket_text
from tracker.intake.values.orders.minimum import begins_at
from tracker.intake.values.prices.basis import basis_text
from tracker.intake.values.prices.currency import currency_text
from tracker.intake.values.prices.money import price_text, price_unit
from tracker.intake.values.times.validity_cell import validity_text

_MEASURE = re.compile(r"[\d.,\s'-]+[^\W\d]{0,6}\.?")
_HEAVIEST = 10_000
"""g/m²: far beyond any board; 21,600 lb is a weight of order. Common practice, no source."""
_SEVERAL = re.compile(r"\s*\d[\d.,]*(?:\s*[/;|]\s*\d[\d.,]*)+\s*")
"""'1190 / 1260': figures for several things, of which none is the one price that would be accepted."""
_Fit = Callable[[Cell, Column], bool]


def fit(role: Role, column: Column, cells: Sequence[Cell]) -> float:
    """The share of a column's filled cells that can be read as the role says, 0 to 1; 1 for roles with any content."""
    test = _FITS.get(role)
    if test is None or not cells:
        return 0.5
    return sum(test(cell, column) for cell in cells) / len(cells)


def _caliper(cell: Cell, column: Column) -> bool:
    read = caliper_of(cell, column.caliper_unit)
    return read is not None and bool(read.readings)


def _weight(cell: Cell, column: Column) -> bool:
    if not column.weight_units:
        numbers = [cell.value] if isinstance(cell.value, Decimal) else [one.value for one in number_readings(cell.text)]
        if any(20 <= number <= 2000 for number in numbers):
            return True
    read = weight_of(cell, column.weight_units)
    return read is not None and (not read.readings or any(one.gsm <= _HEAVIEST for one in read.readings))


def _price(cell: Cell, column: Column) -> bool:
    if any(head.strength(Role.CHANGE) for head in column.said) and cell.text.lstrip().startswith("+"):
        return False
    return looks_priced(cell) or _SEVERAL.fullmatch(cell.text) is not None


def _percent_or_price(cell: Cell, _: Column) -> bool:
    return looks_priced(cell) or "%" in cell.text


def _change(cell: Cell, column: Column) -> bool:
    return _percent_or_price(cell, column) or cell.text.lstrip().startswith(("+", "-", "−"))


def _lead(cell: Cell, column: Column) -> bool:
    return lead_of(cell, column.lead_unit) is not None or _counts_a_time(cell, column)


def _counts_a_time(cell: Cell, column: Column) -> bool:
    """'4' under 'LT', whose unit is told elsewhere or nowhere; 'Vorlauf Fracht' is freight."""
    lowest = column.said[-1] if column.said else None
    if lowest is None or lowest.currency is not None or lowest.strength(Role.LEAD_TIME) < _PLAINLY:
        return False
    alone = all(reading.role in (Role.LEAD_TIME, Role.BASIS) for reading in lowest.roles)
    return alone and isinstance(cell.value, Decimal) and cell.value == cell.value.to_integral() <= _LONGEST_TIME


_PLAINLY = 0.9
_LONGEST_TIME = 90
"""Days or weeks; what board costs is a greater number by most units. Common practice, no source."""


def _terms(cell: Cell, column: Column) -> bool:
    words = isinstance(cell.value, str) and not number_readings(cell.text)
    return words and terms_under(cell.text, column.text) is not None


def _basis(cell: Cell, _: Column) -> bool:
    if not isinstance(cell.value, str):
        return False
    unit = price_unit(cell.text)
    return basis_text(cell.text) is not None or (unit is not None and unit.basis is not None)


def _currency(cell: Cell, _: Column) -> bool:
    return isinstance(cell.value, str) and currency_text(cell.text) is not None


def _size(cell: Cell, column: Column) -> bool:
    return isinstance(cell.value, str) and bool(
        sheet_text(cell.text, column.length_unit) or find_sheet_sizes(cell.text)
    )


def _bracket(cell: Cell, column: Column) -> bool:
    if isinstance(cell.value, Decimal):
        return bool(column.mass_units)
    return isinstance(cell.value, str) and bracket_text(cell.text, column.mass_units) is not None


def _mass(cell: Cell, column: Column) -> bool:
    return mass_of(cell, column.mass_units) is not None


def _least(cell: Cell, column: Column) -> bool:
    """A weight, alone or behind the words for the least of it: 'min. 5 t', 'from 500 kg'."""
    return _mass(cell, column) or (isinstance(cell.value, str) and begins_at(cell.text) is not None)


def _valid(cell: Cell, _: Column) -> bool:
    if isinstance(cell.value, date):
        return True
    said = validity_text(cell.text) if isinstance(cell.value, str) else None
    return said is not None and not said.unread


def _words(cell: Cell, _: Column) -> bool:
    """Words, not a figure with a unit behind it such as '29 pal'."""
    return (
        isinstance(cell.value, str) and any(sign.isalpha() for sign in cell.text) and not _MEASURE.fullmatch(cell.text)
    )


def _firm(cell: Cell, column: Column) -> bool:
    """A firm's name, and not the 'no bid' of one whose figures stand around it."""
    withheld = price_text(cell.text) if isinstance(cell.value, str) else None
    return _words(cell, column) and may_call_a_vendor(cell.text) and (withheld is None or not withheld.no_price)


def _grade(cell: Cell, _: Column) -> bool:
    if not isinstance(cell.value, str):
        return False
    read = find_grade(cell.text)
    return read is not None and bool(read.grades or read.words)


def _coating(cell: Cell, _: Column) -> bool:
    if coated_count(cell.text) is not None:
        return True
    read = find_grade(cell.text) if isinstance(cell.value, str) else None
    return read is not None and (read.coated_sides is not None or read.coated is not None)


_FITS: dict[Role, _Fit] = {
    Role.CALIPER: _caliper,
    Role.WEIGHT: _weight,
    Role.PRICE: _price,
    Role.LIST_PRICE: _price,
    Role.NET_PRICE: _price,
    Role.PREVIOUS_PRICE: _price,
    Role.ALL_IN: _price,
    Role.TOTAL: _price,
    Role.FREIGHT: _percent_or_price,
    Role.ENERGY: _percent_or_price,
    Role.SHEETING: _percent_or_price,
    Role.CHARGE: _percent_or_price,
    Role.DISCOUNT: _percent_or_price,
    Role.CHANGE: _change,
    Role.LEAD_TIME: _lead,
    Role.DELIVERY_TERMS: _terms,
    Role.BASIS: _basis,
    Role.CURRENCY: _currency,
    Role.SHEET_SIZE: _size,
    Role.BRACKET: _bracket,
    Role.FROM_QUANTITY: _mass,
    Role.BELOW_QUANTITY: _mass,
    Role.MINIMUM: _least,
    Role.VALIDITY: _valid,
    Role.PRODUCT: _words,
    Role.FORM: _words,
    Role.GRADE: _grade,
    Role.COATING: _coating,
    Role.VENDOR: _firm,
    Role.DESTINATION: _words,
}
