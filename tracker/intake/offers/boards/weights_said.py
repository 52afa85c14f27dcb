"""In what the figures of a column of weights are: by a sub-heading over some rows, by its heads and their footnotes, by
the nearest title or note, or by the rest of the file."""

from collections.abc import Iterable

from tracker.intake.columns.column import Column
from tracker.intake.offers.boards.weights_noted import POUNDS, weights_below
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.values.boards.weights_by_board import of_grades
from tracker.intake.values.boards.weights_told import UNTOLD, WeightBasis
from tracker.intake.words.lists import phrases


def weights_in(column: Column, scope: Scope, facts: FileFacts, grades: Iterable[str]) -> WeightBasis:
    """What holds for a board of these grades.

    'From here down the weight is lb per 1,000 sheets' holds for the rows below it, whatever the heads say.
    """
    below = _of_rows(scope)
    if below is not None:
        return of_grades(below, grades)
    if column.weight_units or column.ream is not None:
        return _excepted(column, facts, grades) or WeightBasis(column.weight_units, column.ream)
    noted = facts.weights_noted.get(column.index)
    if noted is not None:
        return WeightBasis((noted,))
    # Whatever a title says, what a head calls basis weights are no weights of sheets.
    told = of_grades(facts.weights, grades)
    return UNTOLD if told.of_sheets and phrases("basis_weights").find(column.text) else told


def _excepted(column: Column, facts: FileFacts, grades: Iterable[str]) -> WeightBasis | None:
    """What is told of this grade's pounds alone, below a head that says in which pounds all are."""
    own = of_grades(facts.weights, grades) if {grade for grade, _ in facts.weights.by_grade} & {*grades} else None
    pounds = column.ream is not None or POUNDS.issuperset(column.weight_units)
    return own if own is not None and pounds and POUNDS.issuperset(own.units) and not own.of_sheets else None


def _of_rows(scope: Scope) -> WeightBasis | None:
    headings = (weights_below(level) for level in scope.levels if level.name == "heading")
    return next((told for told in headings if told is not None), None)
