"""Offers of a long list that differ in nothing but what they cost and where they stand: only the first of them is
worked out.

Dozens of rules look at every price of a table, and of nearly all they say nothing. What they say rests on what the row
says beside its prices and on what is said around it, so that a row which says the same gets the same offer, with its
own figure and its own cells' places in the evidence. An offer of which anything is asked is not kept, nor one in which
a rule had to look at the figure or at other rows (Draft.by_figure): the next is worked out like any other.
"""

from collections.abc import Iterable, Mapping
from dataclasses import replace
from decimal import Decimal
from typing import NamedTuple

from tracker.intake.columns.column import Columns, PriceColumn
from tracker.intake.grid import Cell, letters
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.fill import take_board, take_terms
from tracker.intake.offers.notes.said import at
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.offers.prices.out_of_measure import far_off_at
from tracker.intake.offers.prices.price_cell import PriceCell, Standing
from tracker.intake.offers.rows.rows import WholeRow
from tracker.intake.values.heads.roles import Role
from tracker.trade.offer import Evidence, Note, NoteCode, RowEvidence

Priced = tuple[PriceColumn, Cell, PriceCell]
"""A price column, its cell in a row, and what that says."""
Contents = tuple[object, ...]
"""All that a row says beside what its boards cost and how they are numbered."""

_WORDS_ALONE = frozenset({Role.PACKING, Role.PROPERTY})
"""Columns of which an offer's rules read words and no figures, as they do of those whose heads say nothing known."""

_TRIED = 4000
"""After so many rows of which hardly any was like another, the rest are not looked up."""
_MOST_KEPT = 8192


_OfRow = tuple[tuple[Evidence, bool], ...]
"""What the cells of a row said, as RowEvidence has it."""


class _Known(NamedTuple):
    """An offer that was worked out, what its figure was multiplied by (cents), its evidence and its notes in order.

    Of a note: its code, its column's letters (None: no cell of the row), its cell, its text.
    """

    draft: Draft
    share: Decimal
    evidence: tuple[Evidence | _OfRow, ...]
    notes: tuple[tuple[NoteCode, str | None, str, str], ...]


class AlikeOffers:
    """The offers of one table that are known. `groups`: its columns as each of its prices has them."""

    def __init__(self, columns: Columns, groups: Iterable[Columns]) -> None:
        numbers = {column.index for column in columns.of(Role.ITEM)}
        self._passed = numbers | {price.index for price in columns.prices}
        self._whole = {
            column.index
            for held in (columns, *groups)
            for role, of_role in held.by_role.items()
            if role not in _WORDS_ALONE
            for column in of_role
        }
        self._known: dict[tuple[object, ...], _Known] = {}
        self._tried = self._found = 0

    def said(self, whole: WholeRow) -> Contents | None:
        """What a row says; None where it is to be worked out by itself: for a cell that was filled in from elsewhere,
        in a table on its side, and where no row is like another."""
        if self._tried >= _TRIED and self._found * 10 < self._tried:
            return None
        self._tried += 1
        row, exact, passed = whole.row.index, self._whole, self._passed
        said: list[object] = []
        for index, cell in whole.cells.items():
            if cell[0] != row or cell[1] != index:
                return None
            if index in passed:
                continue
            said.append(index)
            # A number of no matter leaves its format, and whether it is struck through.
            said += cell[2:] if index in exact or type(cell[2]) is str else cell[4:]
        return tuple(said)

    def fill(self, draft: Draft, said: Contents, priced: Priced, scope: Scope) -> bool:
        """Fills a blank draft as the one like it was; whether there was one."""
        price, cell, read = priced
        known = self._known.get((price.index, id(scope), said, cell[4:], read[2:]))
        if known is None or len(read.amounts) != 1:
            return False
        other, amount = known.draft, read.amounts[0] * known.share
        if far_off_at(other, amount) is not None:
            return False
        draft.price, draft.currency, draft.basis = amount, other.currency, other.basis
        take_board(draft, other)
        take_terms(draft, other)
        row = cell.row + 1
        draft.evidence = [part if isinstance(part, Evidence) else RowEvidence(part, row) for part in known.evidence]
        if known.notes:
            draft.notes = [
                Note(code, where if column is None else f"{column}{row}", text)
                for code, column, where, text in known.notes
            ]
        self._found += 1
        return True

    def keep(self, draft: Draft, said: Contents, priced: Priced, whole: WholeRow, scope: Scope) -> None:
        """Keeps an offer that was worked out, where the next one like it can be filled from it."""
        price, cell, read = priced
        if draft.by_figure or draft.asked or draft.price is None or len(self._known) >= _MOST_KEPT:
            return
        if read.standing is not Standing.AMOUNT or len(read.amounts) != 1 or draft.far_off:
            return
        row = str(cell.row + 1)
        # Nearly all is said by heads and notes.
        own = draft.notes or any(isinstance(part, Evidence) and part.said_by.endswith(row) for part in draft.evidence)
        places = {at(each): letters(index) for index, each in whole.cells.items()} if own else {}
        evidence = tuple(_placed(part, places) for part in draft.evidence)
        notes = tuple((note.code, places.get(note.cell), note.cell, note.text) for note in draft.notes)
        figure, column, where = cell.text.strip(), letters(price.index), draft.where
        if any(_is_said_by(part, column, where) for part in evidence) or any(
            figure in note.text or any(place in note.text for place in places) for note in draft.notes
        ):
            # Their words have the figure in them, or the row.
            return
        share = Decimal(1) if draft.price == read.amounts[0] else draft.price / read.amounts[0]
        self._known[price.index, id(scope), said, cell[4:], read[2:]] = _Known(draft, share, evidence, notes)


def _placed(part: Evidence | RowEvidence, places: Mapping[str, str]) -> Evidence | _OfRow:
    if isinstance(part, RowEvidence):
        return part.said
    column = places.get(part.said_by)
    return part if column is None else ((replace(part, said_by=column), True),)


def _is_said_by(part: Evidence | _OfRow, column: str, where: str) -> bool:
    if isinstance(part, Evidence):
        return part.said_by == where
    return any(piece.said_by == (column if own else where) for piece, own in part)
