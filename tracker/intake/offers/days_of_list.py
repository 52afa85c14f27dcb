"""When a list was made, from which day its prices hold, and of which year it is, by all that its texts say of that."""

from collections.abc import Iterable, Sequence
from datetime import date
from typing import NamedTuple

from tracker.intake.values.notes.dated import SaysDate
from tracker.intake.values.notes.first_days import first_days
from tracker.intake.values.notes.statements import Remark, says, statements
from tracker.intake.values.times.dates import DateOrder, ordered
from tracker.intake.values.times.validity import Validity


class DaysOfList(NamedTuple):
    """Each None where the texts tell none, or several."""

    made: date | None
    holds_from: date | None
    year: int | None


def days_of_list(texts: Sequence[str], order: DateOrder | None) -> DaysOfList:
    """The days of a file. Its year is that of the first of them that is told: made, first, last."""
    # 'SUPERSEDED - price list of 1 November 2025' over an old sheet dates that one.
    said = [one for text in texts if Remark.SUPERSEDED not in says(text) for one in statements(text)]
    made = _one_day(ordered(one.date, order) for one in said if isinstance(one, SaysDate))
    first = {days for text in texts for days in first_days(text, order)}
    last = {one.possible_days for one in said if isinstance(one, Validity)}
    year = made.year if made is not None else _one_year(first) or _one_year(last)
    return DaysOfList(made, _one_day(first), year)


def _one_day(told: Iterable[tuple[date, ...]]) -> date | None:
    found = set(told)
    certain = {days[0] for days in found if len(days) == 1}
    return certain.pop() if len(certain) == 1 and len(found) == 1 else None


def _one_year(told: Iterable[tuple[date, ...]]) -> int | None:
    """Whatever the order of day and month."""
    years = {day.year for days in told for day in days}
    return years.pop() if len(years) == 1 else None
