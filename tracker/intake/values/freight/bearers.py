"""What alone bears the charge of a clause: a form of board, rolls of some widths, or a size that is not read."""

from functools import lru_cache
from typing import NamedTuple

from tracker.intake.values.freight.charged_forms import charged_form, without_freed
from tracker.intake.values.freight.charged_measures import WidthBound, charged_measure


class Bearers(NamedTuple):
    """A clause without the words for what alone bears its charge: `form` '' and `bound` None of any.

    `unsure`: some bear it, and which is not read. `never_none`: that it charges something is certain all the same.
    """

    said: str
    form: str = ""
    bound: WidthBound | None = None
    unsure: bool = False
    never_none: bool = False


@lru_cache(maxsize=4096)
def bearers(clause: str) -> Bearers:
    """What bears the charge of a clause: all, where it says nothing of that."""
    clause = without_freed(clause)
    sized = charged_measure(clause)
    if sized is not None:
        return Bearers(sized.said, sized.form, sized.bound, sized.bound is None, sized.charges)
    of_form = charged_form(clause)
    return Bearers(of_form.said, of_form.form, unsure=of_form.unsure)
