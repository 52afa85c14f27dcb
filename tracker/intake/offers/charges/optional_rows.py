"""Rows of what a buyer may do without, below a line that says so: 'Sheeting | 65' under 'Extras per ton as needed'."""

from tracker.intake.tables.table import Headings
from tracker.intake.values.freight.optional_lines import heads_extras


def below_optional(headings: Headings | None) -> str:
    """The line right above some rows that calls them extras, charged if ordered; '' where none does. One further up
    heads no boards of the group below it."""
    nearest = headings.own[-1].text.strip() if headings is not None and headings.own else ""
    return nearest if nearest and heads_extras(nearest) else ""
