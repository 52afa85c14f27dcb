"""The basis weight that follows from what 1,000 sheets of a stated size weigh: the 'M weight' of sheeted board."""

from fractions import Fraction

from tracker.intake.columns.column import Column, Columns
from tracker.intake.columns.roles.cells import mass_of
from tracker.intake.offers.boards.measures import Board, Cells
from tracker.intake.offers.boards.weights_said import weights_in
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.values.boards.weight import WeightReading
from tracker.intake.values.figures.sheetsize import LengthUnit, SheetSize
from tracker.intake.values.heads.roles import Role
from tracker.trade.quantities import MassUnit

_MM2_PER_M2 = 1_000_000


def take_sheets_weight(board: Board, cells: Cells, columns: Columns, scope: Scope, facts: FileFacts) -> None:
    """Fills in the weight of a board whose row gives no basis weight, but what 1,000 sheets of one size weigh: by a
    head of its own, or by words over it that say so of the weights."""
    weights = ((column, weights_in(column, scope, facts, board.grades)) for column in columns.of(Role.WEIGHT))
    told = {column: basis for column, basis in weights if basis.of_sheets}
    column = columns.first(Role.SHEETS_WEIGHT) or next(iter(told), None)
    cell = cells.get(column.index) if column is not None else None
    if column is None or cell is None or board.weights or board.weight_unread:
        return
    # 'Weight: kg per 1,000 sheets of 70 x 100 cm' is of these sheets, whatever the row's own size.
    of_size = told[column].sheet if column in told else None
    if of_size is None and len(board.sheets) != 1:
        return
    sheet = of_size or board.sheets[0]
    mass = mass_of(cell, told[column].masses if column in told and told[column].masses else _units(column, sheet))
    if mass is None or len(mass.amounts) != 1 or len(mass.units) != 1:
        return
    kg = mass.kg()
    if kg is None or kg <= 0:
        return
    # So many kg per 1,000 sheets are as many g a sheet.
    gsm = Fraction(kg) * _MM2_PER_M2 / (Fraction(sheet.width_mm) * Fraction(sheet.length_mm))
    words = f"{column.text}: {cell.text.strip()}"
    board.weights = (WeightReading(mass.amounts[0].value, None, gsm, words),)
    board.weight_said = Said(board.weights[0], at(cell), words)


def _units(column: Column, sheet: SheetSize) -> tuple[MassUnit, ...]:
    """The head's unit; an 'M weight' without one is in pounds, as are its inches."""
    if column.mass_units:
        return column.mass_units
    return (MassUnit.LB,) if sheet.unit is LengthUnit.INCH else (MassUnit.KG,)
