"""Rows of what a buyer may do without, below a line that says so: 'Sheeting | 65' under 'Extras per ton as needed'."""

from functools import lru_cache

from tracker.intake.tables.table import Headings
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.freight.charge_parts import is_optional
from tracker.intake.words.lists import phrases


def below_optional(headings: Headings | None) -> str:
    """The line right above some rows that calls them extras, charged if ordered; '' where none does. One further up
    heads no boards of the group below it."""
    nearest = headings.own[-1].text.strip() if headings is not None and headings.own else ""
    return nearest if nearest and heads_extras(nearest) else ""


@lru_cache(maxsize=4096)
def heads_extras(heading: str) -> bool:
    """'Tillägg per ton vid behov', 'Optional extras'; 'GC1 on request' and 'Zuschläge' are none."""
    named = charges_named(heading) or phrases("extras").find(heading)
    return bool(named) and is_optional(heading) and find_grade(heading) is None
