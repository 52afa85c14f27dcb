"""Rows of words between tables, and over tables beside each other: whose they are."""

from collections.abc import Iterator, Sequence

from tracker.intake.tables.rows.closing_words import Sides, sides_of, tells_sides
from tracker.intake.tables.table import Table, Words
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
    return {row: sides_of(said) for row, said in by_row.items() if any(parts_by_side(words.text) for words in said)}


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
