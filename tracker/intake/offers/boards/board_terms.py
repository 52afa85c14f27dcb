"""The lead time and the smallest order of one row's board: those of its grade, those that the row names beside its
price, and what holds instead of a column's."""

from collections.abc import Mapping

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.boards.boards_held import holds_for
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.fill import fill_lead_of_grade, fill_minimum_of_grade
from tracker.intake.offers.notes.said import at
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.offers.orders.order_terms import own_least
from tracker.intake.offers.terms.terms import not_counted
from tracker.intake.values.boards.boards_meant import boards_meant
from tracker.intake.values.changes.corrections import holds_now, may_hold_now, overrides
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_remarked import lead_remarked
from tracker.intake.values.times.lead_sentences import find_lead
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.trade.offer import Evidence, Note, NoteCode


def fill_lead_of_board(draft: Draft, cells: Mapping[int, Cell], columns: Columns, scope: Scope) -> None:
    """What is said of its grade, and what the row's own words say; where a column says how long it takes, only what
    holds instead."""
    if _told(cells, columns, Role.LEAD_TIME):
        _take_instead(draft, scope)
    else:
        fill_lead_of_grade(draft, scope)
        _take_named(draft, cells, columns)


def _take_named(draft: Draft, cells: Mapping[int, Cell], columns: Columns) -> None:
    """'… - $1,228.00 per short ton, 4 weeks' without a head, 'GC1, Lieferzeit 6 Wochen' under one."""
    for column in columns.of(Role.PRODUCT):
        cell = cells.get(column.index)
        said = None if cell is None else _named(cell.text) if column.heads else lead_remarked(cell.text)
        if cell is not None and said is not None:
            _take(draft, cell, said)


def _take_instead(draft: Draft, scope: Scope) -> None:
    """'CUK: the lead time is now 9 weeks'; 'now 5 weeks for new customers' is told beside what the column says."""
    for unread in scope.all_of(LeadUnread):
        if may_hold_now(unread.value.words) and holds_for(boards_meant(unread.value.words), draft):
            draft.note(
                NoteCode.LEAD_TIME_UNREAD, unread.where, f"“{unread.value.words}” may hold for this offer instead."
            )
    every = scope.all_of(LeadTime)
    if not every:
        return
    of_its_board = {said for level in scope.levels if level.of_row for said in level.all_of(LeadTime)}
    for said in every:
        clause = next((clause for clause in clauses(said.words) if said.value.words in clause), said.value.words)
        meant = boards_meant(clause)
        if said.value.grades and draft.grade not in said.value.grades:
            continue
        if overrides(clause) or (holds_now(clause, of_its_board=said in of_its_board) and holds_for(meant, draft)):
            draft.lead_days = said.value.days
            draft.evidence.append(said.evidence("lead_days"))
            return
        if may_hold_now(clause) and holds_for(meant, draft):
            draft.note(NoteCode.LEAD_TIME_UNREAD, said.where, f"“{clause}” may hold for this offer instead.")


def fill_minimum_of_board(
    draft: Draft, cells: Mapping[int, Cell], columns: Columns, scope: Scope, facts: FileFacts
) -> None:
    """What is said of its grade, and '… - $42.15/cwt, 40,000 lb min': the smallest order of a line that says all of its
    board itself; nothing where a column says it."""
    if _told(cells, columns, Role.MINIMUM):
        return
    fill_minimum_of_grade(draft, scope, facts)
    for column in columns.of(Role.PRODUCT):
        cell = cells.get(column.index)
        least = own_least(cell, facts) if cell is not None and not column.heads else None
        if isinstance(least, Note):
            draft.minimum_kg = None
            draft.notes.append(least)
        elif least is not None:
            draft.minimum_kg, said = least
            draft.evidence.append(said)


def _told(cells: Mapping[int, Cell], columns: Columns, role: Role) -> bool:
    return any(column.index in cells for column in columns.of(role))


def _named(text: str) -> LeadTime | LeadUnread | None:
    """A board's name states a time with words that lead to it, and in the lines below its first one by itself."""
    first, *below = text.split("\n")
    said = (said for line in below if (said := lead_remarked(line)) is not None)
    return find_lead(first) or next(said, None) or find_lead(text)


def _take(draft: Draft, cell: Cell, said: LeadTime | LeadUnread) -> None:
    if isinstance(said, LeadTime):
        draft.lead_days = said.days
        draft.evidence.append(Evidence("lead_days", at(cell), cell.text))
    else:
        draft.lead_days = None
        draft.note(NoteCode.LEAD_TIME_UNREAD, at(cell), not_counted(said.words))
