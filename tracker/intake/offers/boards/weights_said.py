"""In what the figures of a column of weights are: by a sub-heading over some rows, by its heads and their footnotes, by
the nearest title or note, or by the rest of the file."""

from tracker.intake.columns.column import Column
from tracker.intake.offers.boards.weights_noted import weights_below
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.values.boards.weights_told import UNTOLD, WeightBasis
from tracker.intake.words.lists import phrases


def weights_in(column: Column, scope: Scope, facts: FileFacts) -> WeightBasis:
    """'From here down the weight is lb per 1,000 sheets' holds for the rows below it, whatever the heads say."""
    below = _of_rows(scope)
    if below is not None:
        return below
    if column.weight_units or column.ream is not None:
        return WeightBasis(column.weight_units, column.ream)
    noted = facts.weights_noted.get(column.index)
    if noted is not None:
        return WeightBasis((noted,))
    # Whatever a title says, what a head calls basis weights are no weights of sheets.
    return UNTOLD if facts.weights.of_sheets and phrases("basis_weights").find(column.text) else facts.weights


def _of_rows(scope: Scope) -> WeightBasis | None:
    headings = (weights_below(level) for level in scope.levels if level.name == "heading")
    return next((told for told in headings if told is not None), None)
