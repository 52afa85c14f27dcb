"""What the tables of a sheet say of money at their prices themselves: in heads, unit columns and number formats."""

from collections.abc import Iterable

from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.prices.money import Claimed, bases_of
from tracker.intake.offers.sheet import ReadTable
from tracker.intake.values.figures.formats import unit_of_format
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.money import unit_of_text


def claimed_at(tables: Iterable[ReadTable], facts: FileFacts) -> Claimed:
    """Currencies and bases that stand at the prices of some tables: in headers, unit columns, formats.

    A ton that the file settles counts as what it is: '€/t' does not speak of short tons.
    """
    currencies: set[str] = set()
    bases: set[str] = set()
    headed: set[str] = set()
    for read in tables:
        for price in read.columns.prices:
            currencies.update(code for reading in price.column.currencies for code in reading.codes)
            headed.update(basis for reading in price.column.bases for basis in bases_of(reading, facts))
            for cell in read.cells(price.column):
                unit = unit_of_format(cell.number_format)
                if unit is not None and unit.currency is not None:
                    currencies.update(unit.currency.codes)
        for column in read.columns.of(Role.BASIS, Role.CURRENCY):
            for text in {cell.text for cell in read.cells(column)}:
                unit = unit_of_text(text)
                if unit is not None and unit.basis is not None:
                    bases.update(bases_of(unit.basis, facts))
                if unit is not None and unit.currency is not None:
                    currencies.update(unit.currency.codes)
    return Claimed(frozenset(currencies), frozenset(bases | headed), frozenset(headed))
