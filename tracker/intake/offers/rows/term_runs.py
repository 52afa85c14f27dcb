"""Rows of terms among a table's boards, as 'Lead time | 3 weeks | 4 weeks': in one place of all boards, else of those
that they stand by."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field

from tracker.intake.grid import Cell
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.notes.scope import Level
from tracker.intake.offers.rows.runs import Run, Runs
from tracker.intake.tables.table import Headings, Words
from tracker.intake.values.heads.columns_meant import Piece
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.statements import Statement
from tracker.intake.values.orders.minimum import LeastUnread
from tracker.intake.values.times.lead import LeadUnit
from tracker.intake.values.times.lead_unread import LeadUnread

Leads = Mapping[int, tuple[Cell, LeadUnit | None]]
"""The lead time of each price column, with the unit that the row's label names."""


@dataclass(frozen=True, slots=True)
class TermRow:
    """What one row says: its words, and what these give each price column, or the lead times that it gives them."""

    words: Words
    pieces: tuple[Piece, ...] = ()
    leads: Leads | None = None


@dataclass
class Terms:
    """What such rows state: of all boards; of those of a row, near to it, and the lead times of its columns. `of_all`:
    the lead times of all rows."""

    stated: list[Words] = field(default_factory=list)
    stated_of: dict[Words, tuple[Piece, ...]] = field(default_factory=dict)
    by_row: dict[int, tuple[Level, ...]] = field(default_factory=dict)
    leads: dict[int, Leads] = field(default_factory=dict)
    of_all: Leads = field(default_factory=dict)

    def lead_at(self, row: int, column: int) -> tuple[Cell, LeadUnit | None] | None:
        """The lead time of one price by such a row."""
        return self.leads.get(row, self.of_all).get(column)

    def rows(self) -> frozenset[int]:
        """Those for which something holds that does not for all."""
        return frozenset((*self.by_row, *self.leads))

    def of_table(self, charges: Sequence[Said[Statement]]) -> tuple[Level, ...]:
        """What all rows are told, with the charges that other rows tell."""
        level = Level("table rows", tuple(self.stated), beside=tuple(charges))
        return (level,) if level.texts or level.beside else ()

    def beside(self, levels: Iterable[Level]) -> Iterator[Level]:
        """The levels that are near to some rows alone, and those around all."""
        yield from (level for near in self.by_row.values() for level in near)
        yield from levels


class TermRuns:
    """Takes a table's rows in order and tells whose terms those of each kind are."""

    def __init__(self) -> None:
        self._boards: list[int] = []
        # Of a long list only where they change is kept.
        self._below: list[tuple[int, Headings | None]] = []
        self._runs: dict[Role | None, Runs[TermRow]] = {}

    def take_board(self, row: int, headings: Headings | None) -> None:
        """A row that offers a board."""
        if not self._below or self._below[-1][1] is not headings:
            self._below.append((len(self._boards), headings))
        self._boards.append(row)
        for runs in self._runs.values():
            runs.take_board(row, headings)

    def take(self, role: Role | None, row: TermRow, headings: Headings | None) -> None:
        """A row of terms."""
        if role not in self._runs:
            self._runs[role] = Runs()
            ends = [*(start for start, _ in self._below[1:]), len(self._boards)]
            for (start, above), end in zip(self._below, ends, strict=False):
                for board in self._boards[start:end]:
                    self._runs[role].take_board(board, above)
        self._runs[role].take(row, headings)

    def told(self) -> Terms:
        """What all of them state."""
        terms = Terms()
        for role, runs in self._runs.items():
            alone = len(runs.found) == 1 and runs.is_of_all(runs.found[0])
            for run in runs.found if alone else _by_place(runs):
                for row in run.rows:
                    # One above all groups is told of those that have none of their own.
                    if alone or not run.boards:
                        _state_of_all(terms, row)
                    else:
                        _state(terms, row, run, role)
        return terms


def _state_of_all(terms: Terms, row: TermRow) -> None:
    if row.leads is not None:
        terms.of_all = row.leads
        return
    terms.stated.append(row.words)
    if row.pieces:
        terms.stated_of[row.words] = row.pieces


def _state(terms: Terms, row: TermRow, run: Run[TermRow], role: Role | None) -> None:
    """What a row says of the boards of its run alone, or that it says something which may be of them."""
    if run.certain and row.leads is not None:
        terms.leads.update((board, row.leads) for board in run.boards)
        return
    if run.certain and row.pieces:
        terms.stated_of[row.words] = row.pieces
    words = row.words
    unread = _UNREAD[role](words.text) if role in _UNREAD else None
    open_ = (Said(unread, at(words.cell), words.text),) if unread is not None else ()
    level = Level("own lines", (words,) if run.certain else (), beside=() if run.certain else open_, of_row=True)
    for board in run.boards:
        terms.by_row[board] = (*terms.by_row.get(board, ()), level)


_UNREAD: Mapping[Role | None, type[LeadUnread | LeastUnread]] = {
    Role.LEAD_TIME: LeadUnread,
    Role.MINIMUM: LeastUnread,
}


def _by_place(runs: Runs[TermRow]) -> list[Run[TermRow]]:
    """The rows with the boards that they stand by. Where the first stands above all boards, each heads those below it;
    where boards stand above the first and below the last, it is open of which each is."""
    if any(run.leads for run in runs.found):
        return runs.found
    above = not runs.found[0].boards
    if above and runs.trailing:
        starts = [runs.every.index(run.boards[-1]) + 1 if run.boards else 0 for run in runs.found]
        below = zip(runs.found, starts, [*starts[1:], len(runs.every)], strict=True)
        return [Run(runs.every[start:end], certain=True, rows=run.rows) for run, start, end in below]
    if above or runs.trailing:
        return [Run(runs.every, certain=False, rows=run.rows) for run in runs.found]
    return runs.found
