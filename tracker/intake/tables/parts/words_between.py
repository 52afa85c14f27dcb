"""Rows of words between tables, and over tables beside each other: whose they are."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from tracker.intake.tables.parts.terms_told import terms_told
from tracker.intake.tables.rows.closing_words import Sides, sides_of, tells_sides
from tracker.intake.tables.rows.group_levels import GroupLevels, Reach
from tracker.intake.tables.rows.terms_between import TermsOfGroups, closing_kinds, sides_told, terms_ahead
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


@dataclass(frozen=True, slots=True)
class Headed:
    """The tables below one header, which begins in row `top`, and the rows of words `after` them."""

    top: int
    tables: Sequence[Table]
    after: Sequence[int]

    @property
    def last_row(self) -> int:
        return max((table.last_row for table in self.tables), default=-1)


def shared_words(view: View, parts: Sequence[Headed], above: Sequence[int]) -> list[Words]:
    """Gives the words between the tables of each header and the next to these tables, and returns what holds for the
    sheet. `above`: the rows right above the first header."""
    texts: list[Words] = []
    closed = False
    between = closing_kinds(words_of(view, parts[-1].after), parts[-1].last_row)
    between.above_the_first(words_of(view, above))
    groups, terms = GroupLevels(), TermsOfGroups()
    groups.begins(words_of(view, above), 0)
    for place, part in enumerate(parts):
        following = parts[place + 1] if place + 1 < len(parts) else None
        rest, below = taken_by_tables(view, part.tables, part.after) if following or closed else (part.after, ())
        closed = closed or rest != part.after
        if following is None:
            said = words_of(view, rest)
            own = said[: between.below_the_last(said, part.last_row)]
            _end(parts[: place + 1], terms, own, groups.last)
            texts += said[len(own) :]
            continue
        titles, rows = parted(rest, following.top)
        told = between.sides(tuple(words_of(view, titles)), part.last_row, following.top)
        ended = words_of(view, rows)
        own = ended[: between.ended(ended, part.last_row)]
        texts += ended[len(own) :]
        if told.above or own:
            _end(parts[: place + 1], terms, [*own, *told.above], groups.ended_by(told.below))
        groups.begins(told.below, place + 1)
        for table in following.tables:
            table.titles = (*below, *told.below, *table.titles)
    return texts


def _end(parts: Sequence[Headed], terms: TermsOfGroups, said: Sequence[Words], reach: Reach) -> None:
    for meant, words in terms.shared(said, reach, len(parts)) if said else ():
        for table in (table for part in parts[meant.start : meant.stop] for table in part.tables):
            table.notes += words


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
