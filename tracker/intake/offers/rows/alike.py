"""Rows of a long list that say the same of board and terms: only the first of them is worked out.

A list of 20,000 rows has some hundred boards and a handful of terms. What their cells come to depends on the cells'
contents alone, so it is kept by contents, and each further row gets it with its own cells' places in the evidence.
"""

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import NamedTuple

from tracker.intake.columns.column import Columns, PriceColumn
from tracker.intake.grid import Cell, letters
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.notes.said import at
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.offers.rows.rows import WholeRow
from tracker.intake.tables.view import View
from tracker.intake.values.heads.roles import Role
from tracker.trade.offer import Evidence, LineEvidence, Note, RowEvidence

Cells = dict[int, Cell]

_TRIED = 4000
"""After so many rows with few alike among them, the rest are not looked up."""


@dataclass(frozen=True, slots=True)
class Part:
    """One part of a row's description.

    `roles`: the columns whose cells tell it; `describe` is handed these cells and no others, so that nothing kept can
    depend on a cell it is not kept by. `describe` fills a fresh draft, `take` copies what it filled into another, but
    for evidence, notes and questions.
    """

    roles: tuple[Role, ...]
    describe: Callable[[Draft, Cells, PriceColumn, Scope], None]
    take: Callable[[Draft, Draft], None]


class Told(NamedTuple):
    """The cells of one row that tell of a part; `contents` is None where the row must be read by itself.

    `in_row`: all stand in the row itself, under their own columns' letters. A tuple, because every row makes two.
    """

    cells: Cells
    contents: tuple[object, ...] | None
    in_row: bool = False


@dataclass(frozen=True, slots=True)
class _Known:
    """A description, its evidence and notes each with the column whose cell said it (None: no cell of the row).

    `in_row`: the same evidence for rows whose cells all stand in one row of the sheet, as nearly all do.
    """

    draft: Draft
    evidence: tuple[tuple[Evidence, int | None], ...]
    in_row: tuple[tuple[Evidence, bool], ...]
    notes: tuple[tuple[Note, int | None], ...]


class AlikeRows:
    """Describes one part of a table's rows, once for all that are alike."""

    def __init__(self, columns: Columns, view: View, part: Part) -> None:
        self._told = tuple(column.index for column in columns.of(*part.roles))
        self._view, self._part = view, part
        self._known: dict[tuple[object, ...], _Known | None] = {}
        self._tried = 0

    def told(self, whole: WholeRow) -> Told:
        """What of a row tells of this part: asked once a row, however many prices it has."""
        row, every = whole.row.index, whole.cells
        cells: Cells = {}
        contents: list[object] = []
        # In a table on its side, and in a letter whose lines are one cell that says board and price, they are not.
        in_row = True
        for index in self._told:
            cell = every.get(index)
            if cell is not None:
                cells[index] = cell
                contents.append(cell[2:])
                in_row = in_row and cell.column == index and cell.row == row
        all_different = self._tried >= _TRIED and 2 * len(self._known) > self._tried
        filled = len(whole.cells) > len(whole.own)
        # A merged block is one cell in two columns, and which of the two spoke can't be told from its place.
        if all_different or (filled and self._view.spread):
            return Told(cells, None)
        self._tried += 1
        return Told(cells, (tuple(cells), *contents), in_row)

    def fill(self, draft: Draft, told: Told, price: PriceColumn, scope: Scope) -> None:
        """Fills this part of a draft."""
        known = self._alike(draft, told, price, scope) if told.contents is not None else None
        if known is None:
            self._part.describe(draft, told.cells, price, scope)
            return
        self._part.take(draft, known.draft)
        draft.asked.extend(known.draft.asked)
        if known.evidence or known.notes:
            _say(draft, known, told, price)

    def _alike(self, draft: Draft, told: Told, price: PriceColumn, scope: Scope) -> _Known | None:
        key = (price.index, id(scope), told.contents)
        known = self._known.get(key, _UNSEEN)
        if not isinstance(known, _Unseen):
            return known
        blank = Draft(draft.sheet, draft.cell._replace(value=None, text="", comment=""))
        self._part.describe(blank, told.cells, price, scope)
        places = {at(cell): index for index, cell in told.cells.items()}
        self._known[key] = _kept(blank, {**places, draft.where: price.index})
        return self._known[key]


class _Unseen:
    """Stands for a row like none before."""


_UNSEEN = _Unseen()


def _kept(draft: Draft, columns: dict[str, int]) -> _Known | None:
    """None where a text names a place of the row itself: it would be wrong for every other row."""
    texts = [note.text for note in draft.notes]
    texts += [text for asked in draft.asked for text in (asked.key, asked.text)]
    if any(place in text for place in columns for text in texts):
        return None
    evidence = tuple((told, columns.get(told.said_by)) for told in LineEvidence(tuple(draft.evidence)))
    in_row = tuple((told, False) if column is None else (_in_column(told, column), True) for told, column in evidence)
    return _Known(draft, evidence, in_row, tuple((note, columns.get(note.cell)) for note in draft.notes))


def _in_column(told: Evidence, column: int) -> Evidence:
    return replace(told, said_by=letters(column))


def _say(draft: Draft, known: _Known, told: Told, price: PriceColumn) -> None:
    """The evidence and notes of a description, said by this row's own cells."""
    if told.in_row and draft.cell.column == price.index:
        draft.evidence.append(RowEvidence(known.in_row, draft.cell.row + 1))
    else:
        cells = {**told.cells, price.index: draft.cell}
        draft.evidence.extend(
            said if column is None else replace(said, said_by=at(cells[column])) for said, column in known.evidence
        )
    for note, column in known.notes:
        cell = draft.cell if column == price.index else told.cells[column] if column is not None else None
        draft.notes.append(note if cell is None else replace(note, cell=at(cell)))
