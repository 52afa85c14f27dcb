"""Rows of words between tables, and over tables beside each other: whose they are."""

from collections.abc import Iterator, Sequence

from tracker.intake.tables.rows.closing_words import is_closing
from tracker.intake.tables.table import Table, Words
from tracker.intake.tables.view import View
from tracker.intake.tables.words import words_of


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


def taken_by_tables(view: View, above: Sequence[Table], rows: Sequence[int]) -> list[int]:
    """The rows of words below some tables without those that say 'above prices', which become notes of these alone."""
    closing = [row for row in rows if above and is_closing(view.rows[row].values())]
    for table in above:
        table.notes += tuple(words_of(view, closing))
    return [row for row in rows if row not in closing]


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
