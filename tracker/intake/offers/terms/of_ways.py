"""What notes say of rolls or sheets, of stock or direct supply, of delivered prices or others: kept from the rest."""

from collections.abc import Mapping
from dataclasses import replace
from functools import cached_property

from tracker.intake.columns.groups.of_ways import ways_of_price
from tracker.intake.grid import Cell
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.notes.scope import Level, Scope
from tracker.intake.offers.notes.titles import titles_of_boards
from tracker.intake.offers.sheet import ReadTable
from tracker.intake.tables.table import Words
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.ways import considered, left_to, terms_by_way
from tracker.intake.values.notes.ways_named import FORMS, ways_named
from tracker.intake.words.lists import phrases

_NAMING = (Role.FORM, Role.PRODUCT)


class TermsOfWays:
    """The scopes of a table's prices without the terms that are said of prices sold another way."""

    def __init__(self, read: ReadTable) -> None:
        self._read = read
        self._naming = tuple(column.index for column in read.columns.of(*_NAMING))
        self._scopes: dict[tuple[int, frozenset[str]], tuple[Scope, Scope]] = {}
        self._telling: dict[int, tuple[Scope, bool]] = {}

    def left_to(self, scope: Scope, draft: Draft, price: int, cells: Mapping[int, Cell]) -> Scope:
        """The scope of one price: what it says of terms."""
        if id(scope) not in self._telling:
            telling = any(terms_by_way(words.text, self._heard) for level in scope.levels for words in level.texts)
            # The scopes themselves are kept as well, so that no other gets their place in memory.
            self._telling[id(scope)] = (scope, telling)
        if not self._telling[id(scope)][1]:
            return scope
        own = self.own(scope, draft, price, cells)
        if (id(scope), own) not in self._scopes:
            levels = tuple(self._left(level, own) for level in scope.levels)
            self._scopes[id(scope), own] = (scope, replace(scope, levels=levels))
        return self._scopes[id(scope), own][1]

    def own(self, scope: Scope, draft: Draft, price: int, cells: Mapping[int, Cell]) -> frozenset[str]:
        """The ways in which a line is sold, by its price's head, else its row, its headings, what stands over its
        table, its sheet."""
        by_head = self._of_prices[price]
        if by_head & FORMS:
            return by_head
        texts = [cells[index].text for index in self._naming if index in cells]
        headings = [words.text for words in reversed(scope.headings) if not phrases("no_price").find(words.text)]
        for text in (*texts, *headings, *self._titles(scope), draft.sheet):
            form = ways_named(text) & FORMS
            if form:
                return by_head | form
        return by_head | {"sheet"} if draft.sheet_mm is not None else by_head

    def _left(self, level: Level, own: frozenset[str]) -> Level:
        texts = tuple(left for words in level.texts if (left := self._left_of(words, own)).text)
        return level if texts == level.texts else replace(level, texts=texts)

    def _left_of(self, words: Words, own: frozenset[str]) -> Words:
        left = left_to(words.text, own, self._apart)
        return words if left == words.text else replace(words, text=left)

    @cached_property
    def _of_prices(self) -> dict[int, frozenset[str]]:
        return {price.index: ways_of_price(price) for price in self._read.columns.prices}

    @cached_property
    def _heard(self) -> frozenset[str]:
        return considered(way for ways in self._of_prices.values() for way in ways)

    def _titles(self, scope: Scope) -> tuple[str, ...]:
        """What stands over the table and says nothing but which board it holds, the nearest first: 'II. Sheets'."""
        return tuple(text for text in titles_of_boards(scope) if not terms_by_way(text, self._heard))

    @cached_property
    def _apart(self) -> frozenset[str]:
        """The ways that the table's prices, rows and headings name."""
        table = self._read.table
        groups = {id(row.headings): row.headings for row in table.rows if row.headings is not None}
        texts = {words.text for group in groups.values() for words in group.own}
        if not table.view.passing:
            rows = (table.view.rows[row.index] for row in table.rows)
            texts |= {cells[index].text for cells in rows for index in self._naming if index in cells}
        forms = frozenset().union(*map(ways_named, texts)) & FORMS
        return forms.union(*self._of_prices.values())
