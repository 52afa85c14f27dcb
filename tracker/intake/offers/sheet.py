"""A sheet whose tables and columns are known: what the reading of offers goes over."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from functools import cached_property
from itertools import chain, pairwise

from tracker.intake.columns.column import Column, Columns
from tracker.intake.columns.priced.in_force import SEVERAL_TIMES
from tracker.intake.grid import Cell
from tracker.intake.offers.notes.footnotes import numbering_columns, signs_behind, signs_in_heads
from tracker.intake.tables.figures import sure_figure
from tracker.intake.tables.headers.heads import head_text
from tracker.intake.tables.headers.periods import is_period
from tracker.intake.tables.table import HeadedColumn, SheetTables, Table, Words
from tracker.intake.values.changes.competitors import without_competitors
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.lists import phrases
from tracker.trade.layout import Layout

_READ_AT_MOST = 3000
"""Rows of a table that are looked at for what they tell about the file as a whole."""


@dataclass
class ReadTable:
    """A table with its columns, and why it holds no offers ('' where it may). `told`: its rows are read as notes."""

    table: Table
    columns: Columns
    passed_over: str = ""
    told: bool = False

    def cells(self, column: Column | HeadedColumn) -> Iterator[Cell]:
        """A column's filled cells; of a very long table every so many rows."""
        rows = self.table.rows
        some = (row.index for row in rows[:: 1 + len(rows) // _READ_AT_MOST])
        return (cell for _, cell in self.table.view.down(column.index, some))

    @cached_property
    def counting(self) -> frozenset[int]:
        """The columns that only number the rows (1, 2, 3 or 10, 20, 30), or say when a price holds ('2025' and '2026'
        below 'Year'): they tell no two offers apart."""
        numbered = (column for column in self.columns.of(Role.ITEM) if _counts(list(self.cells(column))))
        headed = (one for one in self.table.columns if phrases("year_heads").whole(one.text.strip()) is not None)
        timed = (column for column in headed if _tells_times(list(self.cells(column))))
        return frozenset((*(column.index for column in numbered), *(column.index for column in timed)))

    @cached_property
    def signs(self) -> frozenset[str]:
        """The signs of footnotes that its cells and heads carry; those of a very long table are not looked for."""
        if self.table.view.passing:
            return frozenset()
        counting = numbering_columns(self.table)
        rows = (self.table.view.rows[row.index] for row in self.table.rows)
        cells = (cell for row in rows for index, cell in row.items() if index not in counting)
        heads = (signs_in_heads(column.heads) for column in self.table.columns)
        return frozenset(chain.from_iterable(chain(map(signs_behind, cells), heads)))


def _tells_times(cells: Sequence[Cell]) -> bool:
    """Years, or quarters with theirs."""
    texts = [cell.text.strip() for cell in cells]
    return bool(texts) and all(_YEAR.fullmatch(one) or (_YEAR.search(one) and is_period(one)) for one in texts)


_YEAR = re.compile(r"20\d\d")


def _counts(cells: Sequence[Cell]) -> bool:
    values = [figure for cell in cells if (figure := sure_figure(cell)) is not None]
    steps = {after - before for before, after in pairwise(values)}
    return len(values) == len(cells) and len(steps) == 1 and steps.pop() > 0


@dataclass
class ReadSheet:
    """One sheet: its tables with columns, and its texts. `layout`: what it was read by, where a person marked it.
    `quoted`: the rows of an earlier message that it quotes, which are left out. `outside`: rows with a figure for a
    price that the person's marks leave out. `last_row`: the last with something in it, be it in a key to codes."""

    found: SheetTables
    tables: tuple[ReadTable, ...]
    layout: Layout | None = None
    quoted: tuple[int, ...] = ()
    outside: tuple[int, ...] = ()
    last_row: int | None = None

    @property
    def name(self) -> str:
        return self.found.view.sheet

    @cached_property
    def _texts(self) -> tuple[str, ...]:
        words: list[Words] = list(self.found.texts)
        heads: list[str] = []
        for read in self.tables:
            words += [*read.table.titles, *read.table.notes]
            words += [*read.table.headings(), *read.table.lines()]
            # Of prices of several times no day over one of them is that of the list.
            timed = read.columns.doubt == SEVERAL_TIMES
            said = [head_text(head) for column in read.table.columns for head in column.heads]
            heads += [text for text in said if not (timed and find_dates(text))]
        return tuple(dict.fromkeys([*(without_competitors(said.text) for said in words), *heads, self.name]))

    def all_texts(self) -> tuple[str, ...]:
        """Every title, note, heading and header text, and the sheet's name, once each."""
        return self._texts

    def figures(self) -> Iterator[str]:
        """Texts of cells in columns of figures: what may show the file's decimal sign."""
        figured = (
            Role.PRICE,
            Role.NET_PRICE,
            Role.LIST_PRICE,
            Role.WEIGHT,
            Role.CALIPER,
            Role.FREIGHT,
            Role.CHARGE,
            Role.ENERGY,
            Role.STOCK,
            Role.BRACKET,
            Role.MINIMUM,
        )
        for read in self.tables:
            for column in read.columns.of(*figured, Role.SHEETING, Role.DISCOUNT, Role.PREVIOUS_PRICE, Role.TOTAL):
                for cell in read.cells(column):
                    if isinstance(cell.value, str):
                        yield cell.text

    def dates(self) -> Iterator[str]:
        """Texts of cells that may show the order of day and month."""
        for read in self.tables:
            for column in read.columns.of(Role.VALIDITY, Role.VALID_FROM, Role.RECEIVED, Role.REMARKS):
                for cell in read.cells(column):
                    if isinstance(cell.value, str) and not isinstance(cell.value, date):
                        yield cell.text
