"""Prices that a cell, a head, a remark or a title marks as indicative: they count, and a person is told."""

from collections.abc import Iterator

from tracker.intake.columns.column import Columns, PriceColumn
from tracker.intake.grid import Cell
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.offers.prices.price_cell import PriceCell
from tracker.intake.tables.headers.periods import YEAR
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.indicative import marks_indicative
from tracker.trade.offer import NoteCode


def note_indicative(
    draft: Draft, read: PriceCell, price: PriceColumn, cells: dict[int, Cell], columns: Columns, scope: Scope
) -> None:
    """One note with the nearest words that mark the price so, if any do."""
    said = next(_beside(draft, read, price, cells, columns), None) or _around(scope, price)
    if said is None:
        return
    draft.evidence.append(said.evidence("indicative"))
    words = " ".join(said.words.split())
    text = f"“{words}” in {said.where} marks this price as indicative or not binding: ask the vendor what is charged."
    draft.note(NoteCode.NUMBER_AMBIGUOUS, said.where, text)


def _beside(
    draft: Draft, read: PriceCell, price: PriceColumn, cells: dict[int, Cell], columns: Columns
) -> Iterator[Said[str]]:
    if read.indicative:
        yield Said("indicative", draft.where, draft.cell.text)
    if draft.cell.comment and marks_indicative(draft.cell.comment):
        yield Said("indicative", draft.where, draft.cell.comment)
    remarks = (cells[column.index] for column in columns.of(Role.REMARKS) if column.index in cells)
    yield from (Said("indicative", at(cell), cell.text) for cell in remarks if marks_indicative(cell.text))
    if price.indicative:
        yield Said("indicative", at(price.column.heads[-1]), price.column.text)


def _around(scope: Scope, price: PriceColumn) -> Said[str] | None:
    years = YEAR.findall(price.column.text)
    year = years[0] if len(years) == 1 else ""
    key = f"indicative {year}"
    if key not in scope.terms:
        scope.terms[key] = _marking(scope, year)
    known = scope.terms[key]
    return known if isinstance(known, Said) else None


def _marking(scope: Scope, year: str) -> Said[str] | None:
    said = (
        Said("indicative", level.place(words), words.text)
        for level in scope.levels
        for words in level.texts
        if marks_indicative(words.text, year)
    )
    return next(said, None)
