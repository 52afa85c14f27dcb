"""What keys explain, and to which table: of two tables with a key each, each hears its own."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from functools import cached_property
from itertools import pairwise
from typing import NamedTuple

from tracker.intake.tables.table import HeadedColumn, SheetTables, Table, Words
from tracker.intake.values.notes.key_entries import key_entries, keys_apart
from tracker.intake.words.fold import fold


class Told(NamedTuple):
    """One entry of a key: code, folded, and what it stands for. `label`: the head, folded, whose column has the codes;
    '' for any. `far`: how far the text stands from the table, its own first. `whole`: the text says nothing else."""

    code: str
    said: str
    source: Words
    label: str = ""
    far: int = 0
    whole: bool = False


class Keys:
    """All that a sheet's texts explain. `elsewhere`: what sheets of words alone say."""

    def __init__(self, found: SheetTables, elsewhere: Sequence[Words] = ()) -> None:
        self._tables = found.tables
        self._view = found.view
        own = {words: table for table in found.tables for words in (*table.titles, *table.notes)}
        self._own = {words: id(table) for words, table in own.items()}
        self._said = [*entries(around(found)), *(one._replace(far=_ELSEWHERE) for one in entries(elsewhere))]
        heads = {label for table in found.tables for column in table.columns for label in heads_of(column)}
        self._said = [one if one.label in heads else one._replace(label="") for one in self._said]

    def __bool__(self) -> bool:
        return bool(self._said)

    @property
    def labelled(self) -> bool:
        """Whether any of them is of the codes of one column."""
        return any(one.label for one in self._said)

    def of_table(self, table: Table) -> list[Told]:
        """The entries in the order of their texts, each with how far it is from this table."""
        if len(self._tables) < _SEVERAL:
            return self._said
        return [one if one.far else one._replace(far=self._far(one.source, table)) for one in self._said]

    def _far(self, words: Words, table: Table) -> int:
        owner = self._own.get(words) or self._owners[words]
        return _OWN if owner == id(table) else _NOBODYS if owner is None else _ANOTHERS

    @cached_property
    def _owners(self) -> dict[Words, int | None]:
        """The table that each text outside the tables stands next to. Where as many empty rows part it from the one
        above as from the one below, the first key of the sheet, or its last, tells whether keys stand above or below
        their tables; None where that leaves it open."""
        loose = list(dict.fromkeys(one.source for one in self._said if not one.far))
        first = min(table.first_row for table in self._tables)
        last = max(table.last_row for table in self._tables)
        leads, follows = any(words.row < first for words in loose), any(words.row > last for words in loose)
        return {words: self._owner(words, leads=leads, follows=follows) for words in loose}

    def _owner(self, words: Words, *, leads: bool, follows: bool) -> int | None:
        beside = [table for table in self._tables if table.first_row <= words.row <= table.last_row]
        end = max((table.last_row for table in self._tables if table.last_row < words.row), default=None)
        start = min((table.first_row for table in self._tables if table.first_row > words.row), default=None)
        above = [table for table in self._tables if table.last_row == end]
        below = [table for table in self._tables if table.first_row == start]
        nearest = beside or above or below
        if not beside and end is not None and start is not None:
            gap, other = self._empty_rows(end, words.row), self._empty_rows(words.row, start)
            if gap == other and leads == follows:
                return None
            nearest = above if gap < other or (gap == other and follows) else below
        return id(_in_line(nearest, words.cell.column))

    def _empty_rows(self, upper: int, lower: int) -> int:
        """How many rows between two hold nothing."""
        return sum(row not in self._view.rows for row in range(upper + 1, lower))


_OWN, _NOBODYS, _ANOTHERS, _ELSEWHERE = 0, 1, 3, 2
"""How far a text is: a sheet of words is nearer than what stands at another table."""
_SEVERAL = 2


def _in_line(tables: Sequence[Table], column: int) -> Table:
    """Of tables side by side the one that begins last before a column, or else the first."""
    starts = [(min((one.index for one in table.columns), default=0), place) for place, table in enumerate(tables)]
    before = [start for start in starts if start[0] <= column]
    return tables[max(before)[1] if before else min(starts)[1]]


def heads_of(column: HeadedColumn) -> frozenset[str]:
    """What a key may call a column by, folded."""
    named = (column.called, column.heads[-1].text) if column.heads else ()
    return frozenset(fold(text).strip(" .") for text in named)


def for_column(told: Iterable[Told], column: HeadedColumn) -> list[Told]:
    """The entries that may be of a column's codes: without a label, or with its head."""
    heads = heads_of(column)
    return [one for one in told if not one.label or one.label in heads]


def key_of(told: Iterable[Told]) -> dict[str, str]:
    """Code, folded -> what it stands for; one explained two ways is left out."""
    return {code: said[0] for code, said in _nearest(told).items() if len(said) == 1}


def explained_two_ways(told: Iterable[Told]) -> dict[str, tuple[str, ...]]:
    """The codes, folded, that texts as near as each other explain differently."""
    return {code: said for code, said in _nearest(told).items() if len(said) > 1}


def _nearest(told: Iterable[Told]) -> Mapping[str, tuple[str, ...]]:
    """Each code with all that the nearest texts say of it. A text farther away that contradicts one of these is a key
    of other tables, and none of it holds here."""
    told = list(told)
    found: dict[str, tuple[str, ...]] = {}
    for far in sorted({one.far for one in told}):
        level = [one for one in told if one.far == far]
        foreign = {one.source for one in level if one.code in found and one.said not in found[one.code]}
        here: dict[str, tuple[str, ...]] = {}
        for one in level:
            if one.source not in foreign and one.code not in found:
                said = here.get(one.code, ())
                here[one.code] = said if one.said in said else (*said, one.said)
        found |= here
    return found


def entries(texts: Iterable[Words]) -> Iterator[Told]:
    """What texts explain, one after the other; also in two cells side by side."""
    texts = list(texts)
    for words in texts:
        for entry in key_entries(words.text):
            yield Told(entry.code, entry.said, words, entry.label, whole=entry.whole)
    for name, said in pairwise(texts):
        beside = name.sheet == said.sheet and name.row == said.row and name.cell.column + 1 == said.cell.column
        if beside:
            yield Told(fold(name.text).strip(" :="), said.text, said)


def around(found: SheetTables) -> list[Words]:
    """All texts of a sheet, its tables' own among them, from the top."""
    own = (words for table in found.tables for words in (*table.titles, *table.notes))
    return sorted({*found.texts, *own}, key=lambda words: (words.row, words.cell.column))


def with_keys_apart(found: SheetTables) -> SheetTables:
    """The sheet with a text for each head that a text explains the codes of."""
    if not any(len(keys_apart(words.text)) > 1 for words in around(found)):
        return found
    tables = (replace(one, titles=texts_apart(one.titles), notes=texts_apart(one.notes)) for one in found.tables)
    return replace(found, tables=tuple(tables), texts=texts_apart(found.texts))


def texts_apart(texts: Iterable[Words]) -> tuple[Words, ...]:
    return tuple(replace(words, text=part) for words in texts for part in keys_apart(words.text))
