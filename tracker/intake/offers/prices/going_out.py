"""Boards that will be made no more, by a remark or a heading: their prices count as yet, and a person is told."""

from collections.abc import Iterable, Iterator

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.tables.table import Words
from tracker.intake.values.changes.withdrawn import will_go
from tracker.intake.values.heads.roles import Role
from tracker.trade.offer import NoteCode


class GoingOut:
    """The columns of a table whose words may say so: the numbers of a long list are each another text, and say
    nothing."""

    def __init__(self, columns: Columns) -> None:
        self._passed = {price.index for price in columns.prices} | {one.index for one in columns.of(Role.ITEM)}

    def note(self, draft: Draft, cells: dict[int, Cell], headings: Iterable[Words]) -> None:
        """One note with the words that say so; the day in them is the board's last, and not that of its price."""
        said = next(self._said(draft, cells, headings), None)
        if said is None:
            return
        words = " ".join(said.value.split())
        text = f"“{words}” in {said.where}: this board will go: ask the vendor how long it can be had at this price."
        draft.note(NoteCode.VALIDITY_UNREAD, said.where, text)

    def _said(self, draft: Draft, cells: dict[int, Cell], headings: Iterable[Words]) -> Iterator[Said[str]]:
        if draft.cell.comment and will_go(draft.cell.comment):
            yield Said(draft.cell.comment, draft.where, draft.cell.comment)
        for index, cell in cells.items():
            if index not in self._passed and isinstance(cell.value, str) and will_go(cell.text):
                yield Said(cell.text, at(cell), cell.text)
        for words in headings:
            if will_go(words.text):
                yield Said(words.text, at(words.cell), words.text)
