"""In what unit basis weights are: by the footnote of their head, '(2) lb per 1,000 sq ft' to 'Weight (2)', by what
stands around a table, and by the whole file."""

from collections.abc import Iterable, Iterator

from tracker.intake.columns.column import Column
from tracker.intake.offers.notes.footnotes import signs_in_heads
from tracker.intake.offers.notes.said import Said
from tracker.intake.offers.notes.scope import Level
from tracker.intake.offers.sheet import ReadSheet, ReadTable
from tracker.intake.values.boards.weight import find_weights, weight_units
from tracker.intake.values.boards.weights_by_board import together
from tracker.intake.values.boards.weights_told import UNTOLD, WeightBasis, looks_back, says_only_that
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.note_signs import sign_ahead, without_sign
from tracker.intake.values.notes.statements import SaysWeightBasis, statements
from tracker.trade.quantities import WeightUnit


def units_noted(read: ReadTable, sheet: ReadSheet) -> dict[int, WeightUnit]:
    """The one unit that such footnotes give a column of weights: the sign's note holds for that head alone."""
    found: dict[int, WeightUnit] = {}
    for column in read.columns.of(Role.WEIGHT):
        units = set(_units(column, sheet))
        if len(units) == 1:
            found[column.index] = units.pop()
    return found


def _units(column: Column, sheet: ReadSheet) -> Iterator[WeightUnit]:
    signs = signs_in_heads(column.heads)
    for note in sheet.all_texts() if signs else ():
        if sign_ahead(note) in signs:
            yield from weight_units(without_sign(note))


def weights_of_file(sheets: Iterable[ReadSheet]) -> WeightBasis:
    """What all texts of a file say of its weights in pounds; what 1,000 sheets weigh is told of some alone."""
    texts = (text for sheet in sheets for text in _without(sheet.all_texts(), _of_marked_heads(sheet)))
    said = (one for text in texts for one in statements(text) if isinstance(one, SaysWeightBasis))
    return together((one.basis, one.grades) for one in said if one.grades or _is_in_pounds(one.basis)) or UNTOLD


def _without(texts: Iterable[str], some: frozenset[str]) -> Iterator[str]:
    return (text for text in texts if text not in some)


def _is_in_pounds(told: WeightBasis) -> bool:
    return told.ream is not None or bool(POUNDS.intersection(told.units))


POUNDS = frozenset({WeightUnit.LB_MSF, WeightUnit.LB_3000FT2})


def weights_around(read: ReadTable, sheet: ReadSheet, levels: Iterable[Level]) -> WeightBasis | None:
    """What the nearest words around a table say of its weights; None where its own sheet says nothing."""
    marked = _of_marked_heads(sheet)
    counted = bool(read.columns.of(Role.SHEETS_WEIGHT))
    told: list[SaysWeightBasis] = []
    for level in levels:
        said = (one for one in _told_at(level) if one.words not in marked) if not level.foreign else ()
        told += (one.value for one in said if not one.value.basis.of_sheets or _may_be_all(one.value, counted))
        if not all(one.grades for one in told):
            # What is said of some boards alone leaves the others to what stands farther off.
            break
    return together((one.basis, one.grades) for one in told)


def _may_be_all(said: SaysWeightBasis, counted: bool) -> bool:
    """What 1,000 sheets weigh stands in a column of its own where there is one."""
    return not counted and says_only_that(said.words)


def weights_below(level: Level) -> WeightBasis | None:
    """What the last of some sub-headings says of the weights in the rows below it."""
    told = [said.value for said in _told_at(level) if not looks_back(said.value.words)]
    if not told or told[-1].grades:
        return together((one.basis, one.grades) for one in told)
    return told[-1].basis


def _told_at(level: Level) -> Iterator[Said[SaysWeightBasis]]:
    """In what its texts say that weights are; 'Grammage 300 g/m²' is what one board weighs."""
    return (said for said in level.all_of(SaysWeightBasis) if not find_weights(said.value.words))


def _of_marked_heads(sheet: ReadSheet) -> frozenset[str]:
    """The texts of a sheet that are footnotes of some of its heads of weights, and say nothing of the others."""
    weights = (column for read in sheet.tables for column in read.columns.of(Role.WEIGHT))
    signs = {sign for column in weights for sign in signs_in_heads(column.heads)}
    return frozenset(text for text in sheet.all_texts() if sign_ahead(text) in signs) if signs else frozenset()
