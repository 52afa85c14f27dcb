"""When a list or a quotation was made: 'Date: 12 March', 'Stand 01.03.2026', 'Quotation 5521 / 3 March 2026'."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.times.dates import DateReading, find_dates
from tracker.intake.values.times.validity import validity
from tracker.intake.words.lists import phrases


@dataclass(frozen=True, slots=True)
class SaysDate:
    """When the list or quotation was made."""

    date: DateReading
    words: str


_SMALL_WORD = 2
"""Letters of 'no', 'of', 'du': what may stand between a paper's name, its number and its date."""


def dates_of_the_list(text: str) -> Iterator[SaysDate]:
    """The one date of a clause that is not the last day of validity, behind 'Date:', 'Stand', 'Quotation 5521 /' …"""
    for clause in clauses(text):
        until = validity(clause)
        if phrases("replaces").find(clause) or (until is not None and until.until is None):
            continue
        last_day = until.until if until is not None else None
        found = [day for day in find_dates(clause) if day != last_day]
        if len(found) == 1 and _dates_the_list(clause[: found[0].start]) and not _begins_a_charge(clause, found[0]):
            yield SaysDate(found[0], clause)


def _begins_a_charge(clause: str, day: DateReading) -> bool:
    """'Energitillägg från den 1 november 2026': the day from which a charge is charged."""
    before = clause[: day.start].rstrip()
    return any(match.end == len(before) for match in phrases("since").find(before)) and bool(charges_named(clause))


def _dates_the_list(before: str) -> bool:
    """Nothing, a word for a date, or what the paper is called, its number at the most between it and the date."""
    named = phrases("list_names").find(before)
    between = re.findall(r"[^\W_]+", before[named[-1].end :]) if named else []
    numbered = bool(named) and all(len(word) <= _SMALL_WORD or any(map(str.isdigit, word)) for word in between)
    return not before.strip() or bool(phrases("dated").find(before)) or (numbered and not phrases("since").find(before))
