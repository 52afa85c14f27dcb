"""Prices that their own footnote, remark or comment calls off ('withdrawn', 'no longer offered'), changes ('less 3 %')
or leaves open ('less contract discount', 'incl. VAT')."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from functools import lru_cache

from tracker.intake.columns.column import Columns, PriceColumn
from tracker.intake.grid import Cell
from tracker.intake.offers.notes.corrected_codes import notes_of_codes, notes_of_row
from tracker.intake.offers.notes.footnotes import numbering_columns, signs_behind
from tracker.intake.offers.notes.of_word_keys import cells_worded
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.notes.scope import Level
from tracker.intake.offers.rows.rows import WholeRow
from tracker.intake.tables.table import Table, Words
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.changes.list_age import is_of_something_else
from tracker.intake.values.changes.price_changes import ChangesPrice, changes_of_row, price_changes
from tracker.intake.values.changes.withdrawn import no_longer_made, withdrawn
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.note_signs import as_written, sign_ahead
from tracker.intake.values.prices.tax import tax_included

_NAMING = (Role.PRODUCT, Role.STOCK)
_TELLING = (*_NAMING, Role.REMARKS, Role.LEAD_TIME)
"""Columns that may say of a board that it is sold or offered no more, beside those whose heads say nothing known: 'not
available' below 'Availability' too."""


class RowChanges:
    """The notes of a file that call prices off, by their signs, and the columns of a table whose cells may do so.

    `by_sign`: whether there are such notes, so that a sign or a code at any cell of a row may do so.
    """

    def __init__(self, table: Table, columns: Columns, levels: Iterable[Level], titles: Sequence[Words]) -> None:
        self._sheet = table.view.sheet
        around = [*(words for level in levels for words in level.texts), *titles, *table.notes]
        self._notes = {
            sign: words for words in reversed(around) if withdrawn(words.text) and (sign := sign_ahead(words.text))
        }
        self._coded = notes_of_codes(around, table, columns)
        self.by_sign = bool(self._notes or self._coded)
        self._priced = frozenset(price.index for price in columns.prices)
        self._counting = numbering_columns(table) if self._notes else frozenset()
        known = {column.index for role, held in columns.by_role.items() if role not in _TELLING for column in held}
        self._all_remarks = frozenset(column.index for column in columns.of(Role.REMARKS))
        naming = frozenset(column.index for column in columns.of(*_NAMING))
        telling = (column.index for column in table.columns if column.index not in known | self._priced)
        self._telling = [(index, _in_name if index in naming else _in_remark) for index in telling]

    def of(
        self, whole: WholeRow, price: PriceColumn, headings: Iterable[Words], columns: Columns
    ) -> Iterator[Said[ChangesPrice]]:
        """What a row's own words, signs or comment say to change its price in this column; `columns`: those of its
        group."""
        cell = whole.cells[price.index]
        if self._notes:
            carrying = (cell, *price.column.heads, *self._others(whole), *(words.cell for words in headings))
            carried = (sign for each in carrying for sign in signs_behind(each) | cells_worded([each]))
            signs = (sign for sign in carried if sign in self._notes)
            for note in (self._notes[sign] for sign in signs):
                called_off = ChangesPrice(as_written(note.text), unless_in_stock=no_longer_made(note.text))
                yield Said(called_off, self._place(note), note.text)
        for note in notes_of_row(whole.cells, columns, self._coded):
            yield Said(ChangesPrice(note.text), self._place(note), note.text)
        for commented in (cell, *price.column.heads):
            for change in _in_remark(commented.comment) if commented.comment else ():
                yield Said(change, at(commented), commented.comment)
        for words in whole.row.lines:
            for change in () if words.unsure or whole.row.unsure else _in_remark(words.text):
                yield Said(change, self._place(words), words.text)
        others = self._all_remarks and self._all_remarks - {column.index for column in columns.of(Role.REMARKS)}
        for index, read in self._telling:
            if index in others:
                # What another vendor of the row remarks.
                continue
            beside = whole.cells.get(index)
            if beside is not None and isinstance(beside.value, str):
                for change in read(beside.text):
                    yield Said(change, at(beside), beside.text)

    def _others(self, whole: WholeRow) -> Iterator[Cell]:
        """The row's cells but for its number and its prices: a sign at one of them is not about the next."""
        return (cell for index, cell in whole.cells.items() if index not in self._priced | self._counting)

    def _place(self, words: Words) -> str:
        return at(words.cell) if words.sheet == self._sheet else f"{words.sheet}!{at(words.cell)}"


@lru_cache(maxsize=4096)
def _in_name(text: str) -> tuple[ChangesPrice, ...]:
    """What stands in a board's name or stock may be part of that: only what calls its price off or open is none."""
    return _told_plainly(text) or tuple(change for change in price_changes(text) if change.of_gross)


@lru_cache(maxsize=4096)
def _in_remark(text: str) -> tuple[ChangesPrice, ...]:
    return _told_plainly(text) or changes_of_row(text)


def _told_plainly(text: str) -> tuple[ChangesPrice, ...]:
    if withdrawn(text) and not is_of_something_else(text):
        # 'alt. 17.5 pt not offered' calls off another board.
        boards = replace(boards_named(text), grade=None)
        return (ChangesPrice(text.strip(), boards, unless_in_stock=no_longer_made(text)),)
    return (ChangesPrice(text.strip(), tax=True),) if tax_included(text) else ()
