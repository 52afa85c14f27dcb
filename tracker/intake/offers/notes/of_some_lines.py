"""Notes about some of a table's lines only: kept from the others, and put first for those that they are about."""

import re
from collections.abc import Collection, Iterable, Mapping, Sequence, Set
from dataclasses import replace

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.boards.boards_held import holds_for, surely_holds_for
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.notes.corrections_headed import under_their_heads
from tracker.intake.offers.notes.doubted import left_open
from tracker.intake.offers.notes.of_codes import CodeMeant, CodesNamed
from tracker.intake.offers.notes.of_unseen_marks import may_be_of_any
from tracker.intake.offers.notes.said import Said
from tracker.intake.offers.notes.scope import Level, Scope
from tracker.intake.offers.rows.rows import WholeRow
from tracker.intake.offers.sheet import ReadTable
from tracker.intake.tables.table import Table, Words
from tracker.intake.values.changes.price_changes import ChangesPrice
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.held_for_all import held_for_all
from tracker.intake.values.notes.lettered_lines import number_of_mark
from tracker.intake.values.notes.lines_apart import lines_apart
from tracker.intake.values.notes.lines_meant import LinesMeant, lines_meant
from tracker.intake.values.notes.note_signs import without_sign
from tracker.intake.values.notes.statements import Statement, statements
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_remarked import lead_of_some
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.intake.words.fold import fold

_NUMBER = re.compile(r"\D{0,5}?0*(\d{1,4})\.?0*\)?")
_NAMES = (Role.PRODUCT, Role.GRADE, Role.ITEM)


class OfSomeLines:
    """The texts of a table's levels that are about some of its lines, and which lines those are: of those marked in a
    way that is not seen perhaps any.

    A name that no line of the table has says nothing of which are meant: such a text holds for all. One about numbers
    that none has holds for none; the 'items 2 and 3' of lines from 11 on may be the second and the third, and where no
    table has numbers, any line may be meant.
    """

    def __init__(self, table: Table, columns: Columns, levels: Iterable[Level]) -> None:
        codes = CodesNamed(table, columns)
        self.levels = tuple(map(codes.apart, levels))
        self._counting = tuple(column.index for column in columns.of(Role.ITEM))
        self._naming = tuple(column.index for column in columns.of(*_NAMES))
        self._scopes: dict[tuple[int, frozenset[Words], frozenset[Words]], tuple[Scope, Scope]] = {}
        told = {words: meant for level in self.levels for words in level.texts if (meant := _meant(words, level))}
        rows = [table.view.rows[row.index] for row in table.rows] if told else []
        numbers = {number for cells in rows for number in _numbers(cells[i].text for i in self._counting if i in cells)}
        names = {fold(cells[i].text.strip()) for cells in rows for i in self._naming if i in cells}
        known = {
            # Where no line has a number, none is known to be one of the others.
            words: meant if numbers or not meant.numbers else replace(meant, others="")
            for words, meant in told.items()
            if meant.boards is not None
            or meant.numbers & numbers
            or (meant.numbers and _may_be_none(meant, numbers))
            or fold(meant.name) in names
            or may_be_of_any(words)
        }
        every = (words for level in self.levels for words in level.texts if words not in known)
        self._of_codes = {words: coded for words in every if (coded := codes.meant(words))}
        self._of_boards = {words: meant for words, meant in known.items() if meant.boards is not None}
        self._of_rows = {words: meant for words, meant in known.items() if meant.boards is None}
        self._unsure = frozenset(words for words in self._of_rows if words.unsure)
        counted = [row.index for row in table.rows if self._numbers_of(table.view.rows[row.index])] if told else []
        self._places = {index: place for place, index in enumerate(counted, start=1)}
        self._of_rows |= {words: LinesMeant(meant.rest) for words, meant in self._of_codes.items()}

    def of_row(self, whole: WholeRow) -> frozenset[Words]:
        """The texts about this row by its number or name."""
        if not self._of_rows:
            return frozenset()
        cells = whole.cells
        numbers = self._numbers_of(cells)
        names = {fold(cells[index].text.strip()) for index in self._naming if index in cells}
        perhaps = (words for words in self._unsure if self._is_at_its_place(whole, self._of_rows[words]))
        return frozenset(perhaps) | frozenset(
            words
            for words, meant in self._of_rows.items()
            if (_holds_code(cells, self._of_codes[words]) if words in self._of_codes else meant.numbers & numbers
                or (meant.name and fold(meant.name) in names))
        )  # fmt: skip

    def _numbers_of(self, cells: Mapping[int, Cell]) -> set[int]:
        return set(_numbers(cells[index].text for index in self._counting if index in cells))

    def _is_at_its_place(self, whole: WholeRow, meant: LinesMeant) -> bool:
        """Whether a row may be one of lines that none is numbered as: by its place, or any where none has a number."""
        return not self._places or self._places.get(whole.row.index) in meant.numbers

    def left_to_row(self, levels: tuple[Level, ...], own: frozenset[Words]) -> tuple[Level, ...]:
        """The levels of a row without what is said of other rows; what is said of its own comes first."""
        return _put_first(levels, own, self._of_rows, self._unsure) if self._of_rows else levels

    def left_to_board(self, scope: Scope, draft: Draft) -> Scope:
        """The scope of a row whose board is known, likewise."""
        if not self._of_boards:
            return scope
        own = frozenset(words for words, meant in self._of_boards.items() if _may_hold(meant, draft))
        unsure = frozenset(words for words in own if not _surely_holds(self._of_boards[words], draft))
        key = (id(scope), own, unsure)
        if key not in self._scopes:
            # The scope itself is kept as well, so that no other gets its place in memory.
            levels = _put_first(scope.levels, own, self._of_boards, unsure)
            self._scopes[key] = (scope, replace(scope, levels=levels))
        return self._scopes[key][1]


def _may_be_none(meant: LinesMeant, numbers: Collection[int]) -> bool:
    """Whether a text about lines with other numbers than these is about none of these lines. A correction of 'line 7'
    may be of any where lines have no numbers of their own; one of 'article 7' of a contract as well."""
    if meant.corrects:
        return meant.of_contract or min(numbers, default=_ARTICLE) < _ARTICLE
    return not meant.of_contract


_ARTICLE = 100
"""From this number on, numbers may be those of a vendor's articles, and his lines be counted besides."""


def _surely_holds(meant: LinesMeant, draft: Draft) -> bool:
    return meant.boards is None or (not meant.unsure and surely_holds_for(meant.boards, draft))


def _holds_code(cells: Mapping[int, Cell], meant: CodeMeant) -> bool:
    return meant.column in cells and fold(cells[meant.column].text.strip()) in meant.codes


def _may_hold(meant: LinesMeant, draft: Draft) -> bool:
    return meant.boards is None or draft.grade is None or holds_for(meant.boards, draft, unsure=True)


def _meant(words: Words, level: Level) -> LinesMeant | None:
    if may_be_of_any(words):
        return LinesMeant(words.text)
    note = level.last_row is not None and words.row > level.last_row
    return lines_meant(without_sign(words.text), note=note)


def with_lines_apart(level: Level) -> Level:
    """The level with what a text says of some lines and of the others as texts of their own, each with its sign."""
    texts = tuple(part for words in under_their_heads(level.texts) for part in _apart(words))
    return level if texts == level.texts else replace(level, texts=texts)


def of_own_lines(level: Level, read: ReadTable, tables: Sequence[ReadTable]) -> Level:
    """The level without notes about lines of another table that are numbered alike: 'Item 1' below the second table
    is that table's. Of lines that no table counts it is not known which are meant."""
    if level.foreign:
        return level
    counted = frozenset[int]().union(*map(_counted, tables))
    longest = max(len(_counted(each)) for each in tables) if counted else _ARTICLE
    texts = tuple(
        replace(words, unsure=True) if _counts_otherwise(words, level, counted, longest) else words
        for words in level.texts
        if len(tables) < 2 or not counted or not _of_another(words, level, read, tables)
    )
    return level if texts == level.texts else replace(level, texts=texts)


def _counts_otherwise(words: Words, level: Level, counted: Set[int], longest: int) -> bool:
    """Whether it may count lines by their place, that none is numbered as: not by the numbers of articles, which may
    stand anywhere, nor by those of a contract's."""
    meant = _meant(words, level)
    if meant is None or not meant.numbers or meant.of_contract or meant.numbers & counted:
        return False
    return max(meant.numbers) < _ARTICLE and (not counted or (max(meant.numbers) <= longest))


def _of_another(words: Words, level: Level, read: ReadTable, tables: Sequence[ReadTable]) -> bool:
    meant = _meant(words, level)
    if meant is None or not meant.numbers or meant.others:
        return False
    above = [other for other in tables if other.table.first_row < words.row and meant.numbers & _counted(other)]
    nearest = max(above, key=lambda other: other.table.first_row, default=read)
    return nearest is not read and meant.numbers & _counted(read) <= _counted(nearest)


def _counted(read: ReadTable) -> frozenset[int]:
    return frozenset(_numbers(cell.text for column in read.columns.of(Role.ITEM) for cell in read.cells(column)))


def _apart(words: Words) -> tuple[Words, ...]:
    if may_be_of_any(words):
        return (words,)
    body = without_sign(words.text)
    parts = lines_apart(body)
    sign = words.text[: len(words.text) - len(body)]
    return (words,) if parts == (body,) else tuple(replace(words, text=f"{sign}{part}") for part in parts)


def _numbers(texts: Iterable[str]) -> Iterable[int]:
    found = (_number(text.strip()) for text in texts)
    return (number for number in found if number is not None)


def _number(text: str) -> int | None:
    counted = _NUMBER.fullmatch(text)
    return int(counted[1]) if counted is not None else number_of_mark(text)


def _put_first(
    levels: tuple[Level, ...], own: frozenset[Words], of_some: Mapping[Words, LinesMeant],
    unsure: frozenset[Words] = frozenset(),
) -> tuple[Level, ...]:  # fmt: skip
    """Level by level what is said of these lines, without the words for which they are, then what is said of all; of
    what is only perhaps said of them (`unsure`) no time and no amount is known."""
    near = []
    for level in levels:
        told = [words for words in level.texts if words in own and of_some[words].rest]
        doubted = _own_texts([words for words in told if words in unsure], of_some)
        texts = _own_texts([words for words in told if words not in unsure], of_some)
        if doubted:
            near.append(_doubted(level, doubted))
        if texts:
            near.append(of_own(level, texts))
    return (*near, *(_without(level, own, of_some) for level in levels))


def _own_texts(told: Iterable[Words], of_some: Mapping[Words, LinesMeant]) -> tuple[Words, ...]:
    """The texts without the words for whom they are; 'GD2 in USD möglich' with them, by which it is no unit for
    certain."""
    return tuple(words if _doubts_unit(words) else replace(words, text=of_some[words].rest) for words in told)


def _doubts_unit(words: Words) -> bool:
    return any(isinstance(one, SaysCurrency | SaysBasis) and bool(one.perhaps) for one in statements(words.text))


def _doubted(level: Level, texts: tuple[Words, ...]) -> Level:
    """Texts that are perhaps about a row, whose measure is not said: '24 pt and up: 6 weeks', '… 60 EUR/t more'."""
    beside = tuple[Said[Statement], ...](
        Said(one, level.place(words), words.text)
        for words in texts
        for one in left_open(words.text, statements(words.text))
        if not isinstance(one, LeadUnread | ChangesPrice)
    )
    return replace(level, texts=texts, beside=beside, of_row=True, of_some=True, unsure=True)


def of_own(level: Level, texts: tuple[Words, ...]) -> Level:
    """Texts of a level that are about some prices alone, with the lead times that they tell only as a row's own remark
    does: 'needs seven weeks'."""
    level = replace(level, texts=texts, beside=(), of_row=True, of_some=True)
    told = ((words, lead_of_some(words.text)) for words in level.texts if not _speaks_of_lead(words.text))
    leads = tuple[Said[Statement], ...](Said(lead, level.place(words), words.text) for words, lead in told if lead)
    return replace(level, beside=level.beside + leads)


def _speaks_of_lead(text: str) -> bool:
    return any(isinstance(one, LeadTime | LeadUnread) for one in statements(text))


def _without(level: Level, own: frozenset[Words], of_some: Mapping[Words, LinesMeant]) -> Level:
    """The level with what is said of all lines, and of all others where these are none of the excepted; from these it
    is kept on the subject of the exception alone."""
    held = tuple(
        Said(one, level.place(words), words.text)
        for words in level.texts
        if words in own and words in of_some and of_some[words].others
        for one in held_for_all(of_some[words])
    )
    texts = tuple(
        replace(words, text=of_some[words].others) if words in of_some else words
        for words in level.texts
        if words not in of_some or (of_some[words].others and words not in own)
    )
    return level if texts == level.texts else replace(level, texts=texts, beside=(*level.beside, *held))
