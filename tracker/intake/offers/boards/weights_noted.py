"""In what unit basis weights are by the footnote of their head: '(2) lb per 1,000 sq ft' to 'Weight (2)'."""

from collections.abc import Iterable, Iterator

from tracker.intake.offers.notes.footnotes import signs_in_heads
from tracker.intake.offers.sheet import ReadSheet
from tracker.intake.values.boards.weight import weight_units
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.note_signs import sign_ahead, without_sign
from tracker.trade.quantities import WeightUnit


def unit_noted(sheets: Iterable[ReadSheet]) -> WeightUnit | None:
    """The one unit that such footnotes name; None where there is none, or several."""
    units = {unit for sheet in sheets for unit in _units(sheet)}
    return units.pop() if len(units) == 1 else None


def _units(sheet: ReadSheet) -> Iterator[WeightUnit]:
    weights = (column for read in sheet.tables for column in read.columns.of(Role.WEIGHT))
    signs = {sign for column in weights for sign in signs_in_heads(column.heads)}
    noted = (without_sign(text) for text in sheet.all_texts() if sign_ahead(text) in signs) if signs else ()
    for note in noted:
        yield from weight_units(note)
