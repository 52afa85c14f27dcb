"""Heads that are letters, and a key that says what each of them is: 'S | F | D | P' under 'S = Sorte, F = g/m², D = µm,
P = EUR/t'. Without the key nothing of such a row looks like heads."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

from tracker.intake.grid import Cell
from tracker.intake.tables.find import find_tables
from tracker.intake.tables.headers.heads import Head, head_of
from tracker.intake.tables.headers.keys import entries, key_of
from tracker.intake.tables.parts.side_by_side import with_own_titles
from tracker.intake.tables.table import SheetTables, Words
from tracker.intake.tables.view import View
from tracker.intake.values.heads.header import header
from tracker.intake.words.fold import fold

_LOOKED_AT = 60
_FEWEST_CELLS = 3
_LONGEST_CODE = 6


def with_lettered_heads(found: SheetTables, elsewhere: Sequence[Words] = ()) -> SheetTables:
    """The sheet's tables once such a row has its heads in words. `elsewhere`: what sheets of words alone say.

    Only where the key and the words of the row itself name all of it, a board and its price among them.
    """
    view = found.view
    rows = [] if view.passing else [row for row in view.order[:_LOOKED_AT] if _may_be_letters(view, row)]
    if not rows:
        return found
    key = key_of(entries([*_said(view, rows), *elsewhere]))
    for row in rows:
        whole = _in_words(view.rows[row], key)
        if whole is not None:
            cells = {each: whole if each == row else view.rows[each] for each in view.rows}
            return with_own_titles(find_tables(replace(view, rows=cells)))
    return found


def _may_be_letters(view: View, row: int) -> bool:
    """A few short words over figures, two of which at least are no heads that anybody knows."""
    cells, below = view.rows[row], view.rows.get(row + 1, {})
    if len(cells) < _FEWEST_CELLS or not any(not isinstance(cell.value, str) or cell.text for cell in below.values()):
        return False
    if any(not isinstance(cell.value, str) or cell.text.isdigit() for cell in cells.values()):
        return False
    unknown = [cell for cell in cells.values() if not _named(head_of(cell))]
    return len(unknown) > 1 and all(len(cell.text.strip()) <= _LONGEST_CODE for cell in unknown)


def _said(view: View, letters: Sequence[int]) -> Iterator[Words]:
    for row in view.order:
        for _, cell in sorted(view.rows[row].items()):
            if isinstance(cell.value, str) and row not in letters:
                yield Words(view.sheet, row, cell, cell.text)


def _in_words(cells: Mapping[int, Cell], key: Mapping[str, str]) -> dict[int, Cell] | None:
    """The row with what the key says in place of its letters; None where that leaves one unexplained."""
    whole = dict(cells)
    explained: list[Head] = []
    heads: list[Head] = []
    for column, cell in cells.items():
        # 'D' and 'G' are days and grams to others.
        said = key.get(fold(cell.text).strip())
        if said is not None:
            whole[column] = cell._replace(value=said, text=said)
        head = head_of(whole[column])
        if head is None or not _named(head):
            return None
        heads.append(head)
        explained += [head] if said is not None else []
    priced = any(head.price for head in heads) or any(_in_money(cell.text) for cell in whole.values())
    return whole if priced and any(head.board for head in explained) else None


def _named(head: Head | None) -> bool:
    return head is not None and (head.named or head.unit)


def _in_money(said: str) -> bool:
    """'EUR/t ab Werk', which is no word for a price."""
    told = header(said)
    return told.currency is not None and told.basis is not None
