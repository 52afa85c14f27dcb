"""From which day prices hold: 'Effective October 1, 2026', 'Preise ab Oktober 2026', 'Tarif 2027'."""

from collections.abc import Iterator
from datetime import date

from tracker.intake.tables.headers.periods import YEAR, begins_with_a_time, span_of
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.notes.statements import Remark, says
from tracker.intake.values.times.dates import DateOrder, find_dates, ordered
from tracker.intake.words.lists import joined

_PAPERS = ("list_names", "price_words", "these_prices")
_BETWEEN = ("valid", "until", "dated", "range", "new_prices", "since", "months", "quarters")
_OTHERS = ("replaces", "lead_topic", "only_if", "exceptions", "shown_again")


def first_days(text: str, order: DateOrder | None) -> Iterator[tuple[date, ...]]:
    """The first days that a text tells of its prices, each in all ways that it can be read."""
    if Remark.SUPERSEDED in says(text):
        return
    for clause in clauses(text):
        begins = next(_begins(clause), None)
        if begins is None or joined(*_OTHERS).find(clause) or charges_named(clause) or _names_boards(clause):
            continue
        start, at = begins
        if not _of_prices(clause[:start]) or _says_more(clause[at:]):
            continue
        days = find_dates(clause[at:])
        if days and days[0].start == len(clause[at:]) - len(clause[at:].lstrip(" :")):
            yield ordered(days[0], order) or days[0].readings
        elif YEAR.search(clause[at:]) and (span := span_of(clause[at:], 0)) is not None:
            yield (span[0],)


def _begins(clause: str) -> Iterator[tuple[int, int]]:
    """Where the words that lead to a time begin, and the time: 'effective', or the name of the paper, 'Tarif 2027'."""
    for section in (("since", "since_months"), ("list_names", "price_words")):
        for match in joined(*section).find(clause):
            behind = clause[match.end :]
            day = next(iter(find_dates(behind)), None)
            dated = section[0] == "since" and day is not None and not any(map(str.isalnum, behind[: day.start]))
            if dated or begins_with_a_time(behind):
                yield (match.start if section[0] == "since" else match.end), match.end


def _of_prices(lead: str) -> bool:
    """Nothing, or what the paper or its prices are called, right before: 'Carton board price list, effective'."""
    lead = lead.rstrip()
    if not lead or lead.endswith((",", ":")):
        return True
    named = joined(*_PAPERS).find(lead)
    return bool(named) and not rest_of(lead[named[-1].end :], (), *_BETWEEN)


def _says_more(behind: str) -> bool:
    """Whether more is said behind the first day than until when: 'effective October 1, 2026 for new customers'."""
    spans = [(day.start, day.end) for day in find_dates(behind)]
    spans += [match.span() for match in YEAR.finditer(behind)]
    rest = rest_of(behind, spans, *_PAPERS, *_BETWEEN)
    return any(map(str.isalpha, rest))


def _names_boards(clause: str) -> bool:
    """'SBS prices effective October 1'; 'Carton prices effective …' are all."""
    found = find_grade(clause)
    return found is not None and (bool(found.grades) or set(found.kinds) != {"any_board"})
