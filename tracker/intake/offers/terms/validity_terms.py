"""Until when a row's prices hold."""

from collections.abc import Iterator, Sequence
from datetime import date, datetime

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.of_others_perhaps import of_others_perhaps
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.offers.terms.terms_said import Cells, Terms, cell_of, remarked
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.times.dates import find_dates
from tracker.intake.values.times.open_validity import end_in_doubt
from tracker.intake.values.times.remarked_until import until_in_remark
from tracker.intake.values.times.validity import Validity
from tracker.intake.values.times.validity_cell import validity_text
from tracker.intake.words.lists import phrases
from tracker.trade.offer import Evidence, Note, NoteCode


def take_validity(terms: Terms, cells: Cells, columns: Columns, scope: Scope, facts: FileFacts) -> None:
    """Until when the row's prices hold: its own cell first, then its remarks, then what stands around it."""
    cell = cell_of(cells, columns, Role.VALIDITY)
    said_beside = next(_said_beside(cells, columns), None) if cell is None else None
    if said_beside is not None:
        remark, held = said_beside
        _take(terms, held, held.last_day(facts.date_order, facts.list_date), at(remark), remark.text.strip())
        return
    if cell is None:
        said = _with_a_day(scope.nearest(Validity))
        found = {one.value.last_day(facts.date_order, facts.list_date): one for one in said}
        if len(found) == 1:
            ((day, one),) = found.items()
            _take(terms, one.value, day, one.where, one.words)
        elif said:
            text = "The sheet gives more than one date for how long its prices hold."
            terms.notes.append(Note(NoteCode.VALIDITY_UNREAD, said[0].where, text))
        return
    if isinstance(cell.value, date):
        terms.valid_until = cell.value.date() if isinstance(cell.value, datetime) else cell.value
        terms.evidence.append(Evidence("valid_until", at(cell), cell.text))
        return
    read = validity_text(cell.text)
    if read is not None:
        _take(terms, read, read.last_day(facts.date_order, facts.list_date), at(cell), cell.text.strip())


def _said_beside(cells: Cells, columns: Columns) -> Iterator[tuple[Cell, Validity]]:
    yield from remarked(cells, columns, Validity)
    for cell in columns.remarks_in(cells):
        held = until_in_remark(cell.text)
        if held is not None:
            yield cell, held


def _with_a_day(said: Sequence[Said[Validity]]) -> Sequence[Said[Validity]]:
    """Without what names no end where others do: 'the prices below apply from 4 January on, and replace …'."""
    return [one for one in said if not one.value.unread or _speaks_of_an_end(one.words)] or said


def _speaks_of_an_end(words: str) -> bool:
    doubted = any(end_in_doubt(clause, find_dates(clause)) for clause in clauses(words))
    return doubted or bool(phrases("until").find(words))


def _take(terms: Terms, read: Validity, day: date | None, where: str, words: str) -> None:
    if day is not None:
        terms.valid_until = day
        terms.evidence.append(Evidence("valid_until", where, words))
    elif read.ambiguous:
        either = read.possible_days
        terms.valid_at_latest = max(either, default=None)
        text = f"The date in “{words}” can be read as {' or '.join(map(_day_words, either))}."
        terms.notes.append(Note(NoteCode.DATE_AMBIGUOUS, where, text))
    else:
        text = of_others_perhaps(words) if read.perhaps else f"“{words}” gives no day until which the price holds."
        terms.notes.append(Note(NoteCode.VALIDITY_UNREAD, where, text))


def _day_words(day: date) -> str:
    """'3 Apr 2026', whatever the machine's language."""
    return f"{day.day} {_MONTHS[day.month - 1]} {day.year}"


_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")
