"""Prices that a note changes are not what is paid as they stand: a person says what to do with them."""

from tracker.intake.offers.draft import Draft
from tracker.intake.offers.said import Said
from tracker.intake.offers.scope import Scope
from tracker.intake.values.price_changes import ChangesPrice


def change_of(draft: Draft, scope: Scope) -> Said[ChangesPrice] | None:
    """The first note around a price that takes something off it, or adds something for its board."""
    said = (one for level in scope.levels for one in level.all_of(ChangesPrice))
    return next((one for one in said if _holds_for(one.value, draft)), None)


def _holds_for(change: ChangesPrice, draft: Draft) -> bool:
    grade = change.grade
    if grade is not None and grade.grades and draft.grade not in grade.grades:
        return False
    if grade is not None and grade.coated_sides is not None and draft.coated_sides != grade.coated_sides:
        return False
    return not change.calipers or any(reading.um == draft.caliper_um for reading in change.calipers)
