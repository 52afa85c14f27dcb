"""Footnotes: a note that begins with a sign ('*', '¹', '2)', '(a)') holds for the rows that carry the sign, where any
does, and speaks of the money of the columns whose heads carry it."""

import re
from collections.abc import Collection, Iterable, Iterator, Mapping
from dataclasses import replace
from functools import lru_cache
from itertools import chain

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.notes.keyed_notes import (
    KeyedNotes,
    key_ahead,
    key_by_key,
    with_the_others,
    without_key,
)
from tracker.intake.offers.notes.others_than_marked import others_than_marked
from tracker.intake.offers.notes.said import Said
from tracker.intake.offers.notes.scope import Level, Scope
from tracker.intake.tables.table import Table, Words
from tracker.intake.values.changes.price_changes import changes_of_row, price_changes
from tracker.intake.values.notes.leasts_of_some import sold_from
from tracker.intake.values.notes.marks_apart import marks_apart
from tracker.intake.values.notes.note_signs import (
    KEYED,
    LETTER,
    RAISED,
    STAR,
    WITHIN,
    as_written,
    marked,
    sign_ahead,
    without_sign,
)
from tracker.intake.values.notes.statements import SaysMinimum, Statement, statements
from tracker.intake.values.orders.minimum import LeastUnread
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_remarked import lead_of_some, stock_lead
from tracker.intake.values.times.lead_unread import LeadUnread

# 'g/m²' and '1000 ft²' end with their unit; '1)' is a sign only apart from the word before it.
_BEHIND = re.compile(
    rf"({STAR}|(?<![mM])(?<!ft)[¹²³⁴⁵⁶⁷⁸⁹]+\)?|\([\da-eA-E]\)|\[[\da-e]\]|(?<!\S)[\da-e]\)|\[letter [A-Z]\])[\s,;]*$"
)
_LETTER = re.compile(r"(?:^|\s)\(?([A-Z])\)?$")
"""The L of 'GD2 L', which is a sign where a note says so: 'grades marked L'."""
_LITERAL = re.compile(r'"([^"]*)"|\\(.)')
"""What a number format shows as it stands: the star of '#,##0" *"'."""


_BEFORE = re.compile(rf"\s*({STAR})\s*(?=[^\W\d_]{{0,3}}[$€£]?\s*\d)")
"""The star of '*1,194' and '* € 1.194'."""


def signs_behind(cell: Cell) -> frozenset[str]:
    """The signs that a cell of a table ends with: '1,194 *', '868 *, ²)', or that stand before its figure: '*1,194'; a
    number may show them by its format."""
    if isinstance(cell.value, str):
        before = _BEFORE.match(cell.text)
        return _behind(cell.text) | ({before[1].translate(RAISED)} if before is not None else set())
    literals = "".join(quoted or escaped for quoted, escaped in _LITERAL.findall(cell.number_format))
    return _behind(literals) if literals else frozenset()


@lru_cache(maxsize=4096)
def _behind(text: str) -> frozenset[str]:
    found: set[str] = set()
    letter = _LETTER.search(text)
    if letter is not None:
        found.add(f"{LETTER}{letter[1]}")
    while (sign := _BEHIND.search(text)) is not None:
        found.add(sign.group(1).translate(RAISED))
        text = text[: sign.start()]
    return frozenset(found)


def numbering_columns(table: Table) -> frozenset[int]:
    """The columns in which every row has a sign of its own and no more: '1)', '2)' … count the rows."""
    if table.view.passing:
        return frozenset()
    signs: dict[int, list[str]] = {}
    for row in table.rows:
        for index, cell in table.view.rows[row.index].items():
            if isinstance(cell.value, str) and len(cell.text) <= _LONGEST_SIGN and _BEHIND.fullmatch(cell.text.strip()):
                signs.setdefault(index, []).append(cell.text.strip())
    return frozenset(index for index, found in signs.items() if len(set(found)) == len(found) == len(table.rows))


_LONGEST_SIGN = 5


def is_footnote(text: str, tables: Iterable[Table]) -> bool:
    """Whether a text begins with a sign that cells of these tables carry: it is about them, wherever it stands."""
    sign = sign_ahead(text)
    rows = (table.view.rows[row.index] for table in tables for row in table.rows) if sign else ()
    return any(sign in signs_behind(cell) for cells in rows for cell in cells.values())


def with_footnotes(level: Level, tables: Collection[Table]) -> Level:
    """The level with each footnote that stands within a text as a text of its own; one on letters only where lines or
    heads of these tables carry any of them, as else they are marked in a way that is not seen."""
    parted = tuple(part for words in with_the_others(level.texts) for part in _parted(words, tables))
    texts = others_than_marked(parted, lambda: _carried_by(tables))
    return level if texts == level.texts else replace(level, texts=texts)


def _carried_by(tables: Iterable[Table]) -> frozenset[str]:
    rows = (table.view.rows[row.index] for table in tables if not table.view.passing for row in table.rows)
    return frozenset(sign for cells in rows for sign in _carried(cells.values()))


def _are_unseen(letters: frozenset[str], tables: Collection[Table]) -> bool:
    rows = (table.view.rows[row.index].values() for table in tables for row in table.rows)
    heads = (column.heads for table in tables for column in table.columns)
    return bool(letters) and not any(letters & _carried(cells) for cells in chain(heads, rows))


def _parted(words: Words, tables: Collection[Table]) -> tuple[Words, ...]:
    apart = marks_apart(words.text) or key_by_key(words.text, tables)
    letters = (sign for text in apart for sign in (marked(sign_ahead(text)) or (sign_ahead(text),)))
    if not apart or _are_unseen(frozenset(sign for sign in letters if sign.startswith(LETTER)), tables):
        return (words,)
    return tuple(replace(words, text=text) for text in apart)


def signs_in_heads(heads: Iterable[Cell]) -> frozenset[str]:
    """The signs that a column's heads carry, also within: the star of 'Price* below 10 t'."""
    heads = tuple(heads)
    within = (sign.translate(RAISED) for cell in heads for sign in WITHIN.findall(cell.text))
    return frozenset(within) | _carried(heads)


def _carried(cells: Iterable[Cell]) -> frozenset[str]:
    return frozenset(sign for cell in cells for sign in signs_behind(cell))


class Footnotes:
    """The signs of some levels' notes that cells of a table's rows carry; its heads (by column) carry theirs for every
    row."""

    def __init__(self, levels: Iterable[Level], table: Table, columns: Columns) -> None:
        texts = [words.text for level in levels for words in level.texts]
        signs = frozenset().union(*map(_signs, texts))
        self._keyed = KeyedNotes({sign: text for text in texts for sign in _signs(text)}, table, columns)
        own = self._keyed.over_columns
        heads = {column.index: column.heads for column in table.columns if column.index not in own}
        noted = {sign for sign in signs if not sign.startswith(KEYED)}
        self._headed = {index: noted & signs_in_heads(above) for index, above in heads.items()} if noted else {}
        priced = frozenset(price.index for price in columns.prices)
        self._mark_the_others(noted, priced)
        self._of_heads = frozenset().union(*self._headed.values())
        of_measures = (signs for index, signs in self._headed.items() if index not in priced)
        self._of_prices = self._of_heads.difference(*of_measures)
        noted -= self._of_heads
        self._counting = numbering_columns(table) if noted else frozenset()
        rows = (table.view.rows[row.index] for row in table.rows) if noted else ()
        cells = (cell for row in rows for index, cell in row.items() if index not in self._counting)
        carried = _carried(cells)
        carried |= self._keyed.keys
        self._unmarked = {sign for sign in noted if marked(sign) & carried}
        self._scopes: dict[tuple[int, int], tuple[Scope, Scope]] = {}
        # A letter that no line carries is marked in a way that is not seen.
        carried |= {sign for sign in noted if sign.startswith(LETTER)}
        self.signs = frozenset(noted & carried) | self._keyed.keys | self._unmarked

    def _mark_the_others(self, noted: set[str], priced: frozenset[int]) -> None:
        """Gives the prices whose heads do not carry a sign that others do what is said of those without it."""
        for sign in noted:
            without = {index for index, signs in self._headed.items() if not marked(sign) & signs}
            for index in priced & without if len(without) < len(self._headed) else ():
                self._headed[index] |= {sign}

    def of_row(self, cells: Mapping[int, Cell]) -> frozenset[str]:
        """The signs that a row carries."""
        if not self.signs:
            return frozenset()
        carried = _carried(cell for index, cell in cells.items() if index not in self._counting)
        carried |= self._keyed.of_row(cells)
        return self.signs & (carried | {sign for sign in self._unmarked if not marked(sign) & carried})

    def left(self, levels: tuple[Level, ...], carried: frozenset[str]) -> tuple[Level, ...]:
        """The levels without the notes whose sign other rows carry, and this one does not; its own come first."""
        if not self.signs:
            return levels
        own = tuple(near for level in levels if (near := _of_signs(level, carried)).texts)
        return own + tuple(_without(level, self.signs) for level in levels)

    def left_to_column(self, levels: tuple[Level, ...], column: int) -> tuple[Level, ...]:
        """The levels without the notes whose sign the heads of other columns carry, and this one's do not."""
        other = self._of_heads - self._headed.get(column, set())
        return tuple(_without(level, other) for level in levels) if other else levels

    def put_first(self, scope: Scope, column: int) -> Scope:
        """What holds for the prices of a column: what is said of some rows, the notes whose sign its head carries, and
        then those of all; as it is where no price's head carries one, or heads of measures carry the same."""
        if not self._of_prices:
            return scope
        key = (id(scope), column)
        if key not in self._scopes:
            carried = self._of_prices & self._headed.get(column, frozenset())
            own = tuple(near for level in scope.levels if (near := _of_signs(level, carried)).texts)
            left = tuple(_without(level, self._of_prices) for level in scope.levels)
            of_rows = tuple(level for level in left if level.of_some)
            levels = of_rows + own + tuple(level for level in left if not level.of_some)
            # The scope itself is kept as well, so that no other gets its place in memory.
            self._scopes[key] = (scope, replace(scope, levels=levels))
        return self._scopes[key][1]


def _signs(text: str) -> frozenset[str]:
    """The sign that a note begins with, or the key that it explains."""
    return frozenset(filter(None, (sign_ahead(text), key_ahead(text))))


def _without(level: Level, signs: frozenset[str]) -> Level:
    texts = tuple(words for words in level.texts if not _signs(words.text) & signs)
    return level if texts == level.texts else replace(level, texts=texts)


def _of_signs(level: Level, signs: frozenset[str]) -> Level:
    texts = tuple(
        words if sign_ahead(words.text) else replace(words, text=without_key(words.text))
        for words in level.texts
        if _signs(words.text) & signs
    )
    return _with_bare_terms(replace(level, texts=texts, beside=(), of_some=True))


def _with_bare_terms(level: Level) -> Level:
    """A level of texts that are about some rows, with what they say as a remark in each of these would: the lead time
    of '(1) ten weeks', the change of '* plus 5 %'."""
    told = ((words, one) for words in level.texts for one in _bare_terms(without_sign(words.text)))
    said = tuple(Said(one, level.place(words), as_written(words.text)) for words, one in told)
    return replace(level, beside=level.beside + said) if said else level


def _bare_terms(text: str) -> Iterator[Statement]:
    lead = _lead_of(text)
    if lead is not None:
        yield lead
    if sold_from(text) and not any(isinstance(one, SaysMinimum | LeastUnread) for one in statements(text)):
        # Those marked so may be all that is sold in less than the smallest order of all.
        yield LeastUnread(text.strip())
    if not price_changes(text):
        yield from changes_of_row(text)


def _lead_of(text: str) -> LeadTime | LeadUnread | None:
    """What a note says of the lead time of its own lines alone: 'grades in stock'."""
    speaks = any(isinstance(one, LeadTime) for one in statements(text))
    return None if speaks else lead_of_some(text) or stock_lead(text)
