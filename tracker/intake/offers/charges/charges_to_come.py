"""Columns of charges that are charged from a day on that is still to come: 'Energy surcharge from January 2027'."""

from datetime import date
from functools import lru_cache

from tracker.intake.columns.column import Columns
from tracker.intake.offers.charges.relief import kind_of, label_of_column
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.tables.headers.periods import YEAR, span_of
from tracker.intake.values.freight.charge_names import ChargeKind, charges_named, label_of, same_charge
from tracker.intake.values.heads.roles import ON_TOP
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.times.dates import DateOrder, find_dates, months_named, ordered
from tracker.intake.words.lists import joined, phrases

_Named = tuple[ChargeKind, str]


def columns_to_come(columns: Columns, scope: Scope, facts: FileFacts) -> frozenset[int]:
    """The columns of charges that their head, or a note, says to begin on a day after that of the list, or perhaps."""
    charged = columns.of(*ON_TOP)
    if not charged:
        return frozenset()
    noted = _noted(scope, facts)
    return frozenset(
        column.index
        for column in charged
        if _begins_later(column.text, facts.list_date, facts.date_order)
        or any(kind is kind_of(column) and same_charge(kind, label, label_of_column(column)) for kind, label in noted)
    )


def _noted(scope: Scope, facts: FileFacts) -> tuple[_Named, ...]:
    """The charges of which the texts around say so, worked out once for all rows with these."""
    known = scope.terms.get("charges to come")
    if not isinstance(known, tuple):
        texts = dict.fromkeys(words.text for level in scope.levels for words in level.texts)
        known = tuple(
            (ChargeKind(named[0].value), label_of(clause, named))
            for text in texts
            for clause in clauses(text)
            if (named := charges_named(clause)) and _begins_later(clause, facts.list_date, facts.date_order)
        )
        scope.terms["charges to come"] = known
    return known


@lru_cache(maxsize=4096)
def _begins_later(text: str, made: date | None, order: DateOrder | None) -> bool:
    """Whether a text says from when on, and that is not for certain the day of the list or before it."""
    for match in joined("since", "since_months").find(text):
        behind = text[match.end :]
        day = next(iter(find_dates(behind)), None)
        if day is not None and not any(map(str.isalnum, behind[: day.start])):
            return made is None or not all(begins <= made for begins in ordered(day, order) or day.readings)
        if not _begins_with_a_month(behind):
            continue
        span = span_of(behind, made.year) if made is not None else None
        return span is None or not YEAR.search(behind) or not (made is not None and span[0] <= made)
    return False


def _begins_with_a_month(behind: str) -> bool:
    """'January 2027', 'Q1 2027', 'January', and '2027' alone."""
    places = [*months_named(behind), *(match.start for match in phrases("months").find(behind))]
    places += [match.start() for match in YEAR.finditer(behind)]
    return bool(places) and not any(map(str.isalnum, behind[: min(places)]))
