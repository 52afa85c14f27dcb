"""Tables that have no header: rows whose cells all say what they are, and the lines of a letter that are offers."""

from dataclasses import replace

from tracker.intake.tables.headerless.headless import described_columns, price_columns, priced_rows
from tracker.intake.tables.headerless.listed_boards import figured_rows, heading_above, sized_rows, with_boards_apart
from tracker.intake.tables.headerless.sentences import MARK, spoken_offers
from tracker.intake.tables.rows.body import body_of
from tracker.intake.tables.rows.lines_below import with_lines_below
from tracker.intake.tables.table import HeadedColumn, SheetTables, Table
from tracker.intake.tables.view import View
from tracker.intake.tables.words import words_of


def headless_tables(band: View) -> SheetTables:
    """Rows that explain themselves, as a table; else the lines of a letter that are offers."""
    priced = priced_rows(band)
    figured = figured_rows(band, priced)
    rows = sorted({*priced, *figured})
    if not rows:
        return _sized_table(band) or _spoken_table(band)
    figures = {max(band.rows[row]) for row in figured}
    columns = [replace(column, priced=column.index in figures) for column in described_columns(band, rows)]
    first = min([*heading_above(band, rows[0]), rows[0]])
    others = [row for row in band.order if row < first]
    valued = price_columns(band, rows) | figures
    below = [row for row in band.order if row >= first]
    body = with_lines_below(band, below, body_of(band, below, valued), valued)
    table = Table(band, tuple(columns), body.rows, rows[0], rows[-1])
    return SheetTables(band, (table,), tuple(words_of(band, [*others, *body.after])))


def _sized_table(band: View) -> SheetTables | None:
    """Boards over the sizes of orders for them, as a table of its own."""
    rows = sized_rows(band)
    if not rows:
        return None
    price = max(column for row in rows for column in band.rows[row])
    band = with_boards_apart(band, rows)
    columns = [replace(column, priced=column.index == price) for column in described_columns(band, rows)]
    behind = [row for row in band.order if row > rows[-1]]
    body = body_of(band, [*rows, *behind], frozenset({price}))
    table = Table(band, tuple(columns), body.rows, rows[0], rows[-1])
    others = [row for row in band.order if row < rows[0]]
    return SheetTables(band, (table,), tuple(words_of(band, [*others, *body.after])))


def _spoken_table(band: View) -> SheetTables:
    """A letter's lines that are offers, as a table; everything else it says stands around them."""
    spoken = spoken_offers(band)
    if spoken is None:
        return SheetTables(band, (), tuple(words_of(band, band.order)))
    rows = spoken.rows
    body = body_of(rows, rows.order, frozenset({1}))
    price = HeadedColumn(1) if spoken.head is None else HeadedColumn(1, (spoken.head,))
    marks = [HeadedColumn(MARK)] if any(MARK in cells for cells in rows.rows.values()) else []
    table = Table(rows, (HeadedColumn(0), price, *marks), body.rows, rows.order[0], rows.order[-1])
    others = [row for row in band.order if row not in rows.rows]
    return SheetTables(band, (table,), tuple(words_of(band, others)))
