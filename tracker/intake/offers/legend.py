"""A legend that stands in two columns: 'PK1 | Faltschachtelkarton GC2' under a table whose rows are called PK1."""

from collections.abc import Iterable, Iterator
from itertools import pairwise

from tracker.intake.offers.sheet import ReadSheet
from tracker.intake.tables.table import Words
from tracker.intake.values.grade import LegendEntry, legend
from tracker.intake.values.roles import Role
from tracker.intake.words.fold import fold


def names_in_rows(sheets: Iterable[ReadSheet]) -> Iterator[LegendEntry]:
    """What the file says its own names are, name and explanation in two cells side by side.

    Only a name that stands as it is in some row of a table counts: any other pair of cells explains nothing.
    """
    sheets = tuple(sheets)
    called = frozenset(_called(sheets))
    for sheet in sheets:
        for name, explanation in pairwise(_loose(sheet)):
            beside = name.row == explanation.row and name.cell.column + 1 == explanation.cell.column
            if beside and fold(name.text).strip(" :=") in called:
                yield from legend(f"{name.text.strip(' :=')} = {explanation.text.lstrip(' :=')}")


def _loose(sheet: ReadSheet) -> list[Words]:
    said = [*sheet.found.texts, *(words for read in sheet.tables for words in (*read.table.titles, *read.table.notes))]
    return sorted(dict.fromkeys(said), key=lambda words: (words.row, words.cell.column))


def _called(sheets: Iterable[ReadSheet]) -> Iterator[str]:
    for sheet in sheets:
        for read in sheet.tables:
            for column in read.columns.of(Role.PRODUCT, Role.GRADE, Role.ITEM):
                yield from (fold(cell.text).strip() for cell in read.cells(column) if isinstance(cell.value, str))
