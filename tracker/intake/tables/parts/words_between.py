"""Rows of words between tables, and over tables beside each other: whose they are."""

from collections.abc import Iterator, Sequence

from tracker.intake.tables.parts.terms_told import terms_told
from tracker.intake.tables.rows.closing_words import Sides, sides_of, tells_sides
from tracker.intake.tables.rows.terms_between import sides_told, terms_ahead
from tracker.intake.tables.table import SheetTables, Table, Words
from tracker.intake.tables.view import View
from tracker.intake.tables.words import words_of
from tracker.intake.values.notes.above_and_below import parts_by_side


def by_table(tables: Sequence[Table], titles: Sequence[Words]) -> Iterator[tuple[Words, ...]]:
    """Titles in one row over tables beside each other: where each has its own, it is that table's alone."""
    starts = [min(column.index for column in table.columns) for table in tables]
    spans = list(zip(starts, [*starts[1:], None], strict=True))
    own = [
        tuple(said for said in titles if start <= said.cell.column and (end is None or said.cell.column < end))
        for start, end in spans
    ]
    for said in own:
        yield said if all(own) else tuple(titles)


def said_of_all(parts: Sequence[SheetTables]) -> list[Words]:
    """The texts of tables beside each other without those below them that each tell their own of one thing, 'FOB mill'
    below the one and 'delivered' below the other: these become notes of the tables that they stand below."""
    texts = [words for part in parts for words in part.texts]
    filled = [part for part in parts if part.tables]
    if len(filled) < _SEVERAL:
        return texts
    own: set[Words] = set()
    # In one row of the sheet, or each as far below its own table.
    for levelled in (True, False):
        below = [_below(part, levelled=levelled) for part in filled]
        for place in set(below[0]).intersection(*below[1:]):
            said = [[words for words in of_part[place] if words not in own] for of_part in below]
            if _tell_the_same_apart(said):
                own.update(words for of_part in said for words in of_part)
    for part in filled:
        for table in part.tables:
            table.notes += tuple(words for words in part.texts if words in own)
    return [words for words in texts if words not in own]


_SEVERAL = 2


def _below(part: SheetTables, *, levelled: bool) -> dict[int, list[Words]]:
    """The texts below all tables of a part, by their row or by how far down they are."""
    last = max(table.last_row for table in part.tables)
    rows: dict[int, list[Words]] = {}
    for words in part.texts:
        if words.row > last:
            rows.setdefault(words.row if levelled else words.row - last, []).append(words)
    return rows


def _tell_the_same_apart(said: Sequence[Sequence[Words]]) -> bool:
    """Whether all of them speak of one kind of thing. 'FOB mill | | | Net 30 days' is a line of the sheet's foot."""
    kinds = [{term for words in of_part for term in terms_told(words.text)} for of_part in said]
    return bool(set.intersection(*kinds))


def taken_by_tables(view: View, above: Sequence[Table], rows: Sequence[int]) -> tuple[list[int], tuple[Words, ...]]:
    """The rows of words below some tables without those that tell the prices above from those below, and what these say
    of those below. What they say of the ones above becomes notes of these tables alone."""
    told = _told(view, rows) if above else {}
    for table in above:
        table.notes += tuple(words for sides in told.values() for words in sides.above)
    below = tuple(words for sides in told.values() for words in sides.below)
    return [row for row in rows if row not in told], below


def _told(view: View, rows: Sequence[int]) -> dict[int, Sides]:
    """By row; an entry is read with the line above it: 'Energy 3 %' below 'Added to the prices above:'."""
    if not any(tells_sides(view.rows[row].values()) for row in rows):
        return {}
    by_row = {row: [words for words in said if words.row == row] for said in (words_of(view, rows),) for row in rows}
    told = {row: sides_of(said) for row, said in by_row.items() if any(parts_by_side(words.text) for words in said)}
    first = min(told, default=None)
    ahead = [words for row in rows if first is not None and row < first for words in by_row[row]]
    if first is None or not ahead or terms_ahead(ahead) < len(ahead):
        return told
    # 'Lead time 3 weeks' over 'All prices below are delivered' may be of the table above alone.
    return {**{words.row: Sides((), ()) for words in ahead}, **told, first: sides_told([*ahead, *by_row[first]])}


def parted(rows: Sequence[int], end: int | None) -> tuple[list[int], list[int]]:
    """Rows of words between two tables: those that touch the next table are its titles, the rest hold for the sheet."""
    if end is None:
        return [], list(rows)
    titles: list[int] = []
    for row in reversed(rows):
        if row + len(titles) + 1 != end:
            break
        titles.insert(0, row)
    return titles, [row for row in rows if row not in titles]
