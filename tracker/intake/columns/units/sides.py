"""The two sides of sheets in two columns whose heads are cut too short to name them: 'W_MM | L_MM', 'LAI_MM | LNG_MM'.

Which is which changes nothing that a sheet costs.
"""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from decimal import Decimal
from itertools import pairwise

from tracker.intake.columns.column import Column, basis_in_head
from tracker.intake.grid import Cell
from tracker.intake.tables.figures import sure_figure
from tracker.intake.tables.table import Table
from tracker.intake.values.figures.sheetsize import LengthUnit, sheet_text
from tracker.intake.values.heads.header import header
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.basis import basis_text
from tracker.intake.words.lists import phrases
from tracker.trade.basis import Basis

_SIDES = (Role.WIDTH, Role.LENGTH)
_UNSURE = (None, Role.CALIPER, Role.ROLL_WIDTH, *_SIDES)
_OF_SHEETS = {
    LengthUnit.MILLIMETRE: (Decimal(200), Decimal(2600)),
    LengthUnit.CENTIMETRE: (Decimal(20), Decimal(260)),
    LengthUnit.INCH: (Decimal(8), Decimal(103)),
}
"""What a side of a sheet of board measures; common practice, no source."""
_PER_SHEETS = frozenset({Basis.SHEET, Basis.THOUSAND_SHEETS})


def with_sides(columns: list[Column], samples: Mapping[int, Sequence[Cell]], table: Table) -> list[Column]:
    """Of the first such pair the one is the width and the other the length, where a row says that it is of sheets; so
    does a column of both sides, '25 x 38', under a word for the width of rolls."""
    columns = [_size_under_a_width(column, samples, table) for column in columns]
    if {column.role for column in columns} >= set(_SIDES):
        return columns
    for first, second in pairwise(columns):
        if _are_sides(first, second, samples) and _of_sheets(first, second, table):
            sides = {first.index: Role.WIDTH, second.index: Role.LENGTH}
            return [
                replace(column, role=sides[column.index]) if column.index in sides else column for column in columns
            ]
    return columns


def _size_under_a_width(column: Column, samples: Mapping[int, Sequence[Cell]], table: Table) -> Column:
    cells = samples[column.index] if column.role is Role.ROLL_WIDTH else ()
    both = all(isinstance(cell.value, str) and sheet_text(cell.text, column.length_unit) for cell in cells)
    return replace(column, role=Role.SHEET_SIZE) if cells and both and _of_sheets(column, column, table) else column


def _are_sides(first: Column, second: Column, samples: Mapping[int, Sequence[Cell]]) -> bool:
    """Both in one unit of length, as long as sheets, and their heads name nothing else."""
    unit = first.length_unit
    span = _OF_SHEETS.get(unit) if unit is not None else None
    if span is None or second.length_unit is not unit or not (_may_be_a_side(first) and _may_be_a_side(second)):
        return False
    figures = [sure_figure(cell) for column in (first, second) for cell in samples[column.index]]
    return bool(figures) and all(one is not None and span[0] <= one <= span[1] for one in figures)


def _may_be_a_side(column: Column) -> bool:
    """'LNG_MM', 'W (mm)' and the 'Laize mm' beside a length; 'Dia mm' and 'Max mm' measure something else."""
    if column.role not in _UNSURE:
        return False
    if column.role in _SIDES:
        return True
    others = any(phrases(section).find(column.text) for section in ("price_range", "minimum"))
    words = [word for word in column.text.replace("_", " ").replace("(", " ").split() if word[:1].isalpha()]
    side = bool(words) and phrases("short_sides").whole(words[0].rstrip(".")) is not None
    return side and not others and not phrases("roll_measures").find(" ".join(words[1:]))


def _of_sheets(first: Column, second: Column, table: Table) -> bool:
    """The two are filled in the same rows, one of which is priced by the sheet and none of which comes in rolls."""
    rows = [table.view.rows[row.index] for row in table.rows]
    filled = [cells for cells in rows if first.index in cells or second.index in cells]
    if not filled or not all(first.index in cells and second.index in cells for cells in filled):
        return False
    texts = [[cell.text for cell in cells.values() if isinstance(cell.value, str)] for cells in filled]
    heads = [column.text for column in table.columns]
    around = [*(words.text for words in table.titles), *heads]
    priced = any(_by_sheets(text) for row in texts for text in row) or any(map(_names_sheets, around))
    return (priced or any(map(_priced_by_sheets, heads))) and not any(_in_rolls(row) for row in texts)


def _by_sheets(text: str) -> bool:
    unit = basis_text(text)
    return unit is not None and bool(unit.bases) and unit.bases <= _PER_SHEETS


def _priced_by_sheets(head: str) -> bool:
    """'€ le mille', 'Ask/M': money by the thousand beside the sides of sheets."""
    basis = basis_in_head(header(head))
    return basis is not None and bool(basis.bases) and basis.bases <= _PER_SHEETS


def _names_sheets(text: str) -> bool:
    return any(match.value in ("sheet", "1000sheets") for match in phrases("basis").find(text))


def _in_rolls(texts: Sequence[str]) -> bool:
    forms = {match.value for text in texts for match in phrases("forms").find(text)}
    return "roll" in forms and "sheet" not in forms
