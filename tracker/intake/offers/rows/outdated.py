"""What marks prices as no longer in force, or may do so: words above a table, a sub-heading, a head, a row's remark.

What is plainly marked is passed over, and told; where a text may be meant of something else a person is asked.
"""

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import chain

from tracker.intake.columns.column import Column, Columns, Kind, PriceColumn
from tracker.intake.grid import Cell
from tracker.intake.offers.notes.footnotes import is_footnote
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.rows.numbered_offers import offers_numbered
from tracker.intake.offers.rows.old_sheets import age_of_sheet, outdated_sheets
from tracker.intake.offers.rows.replaced_lists import (
    REPLACED,
    age_told_elsewhere,
    age_told_of_table,
    speaks_of_another,
)
from tracker.intake.offers.sheet import ReadSheet, ReadTable
from tracker.intake.tables.table import Table, Words
from tracker.intake.values.changes.list_age import Age, age_of_list, age_of_name, age_of_row
from tracker.intake.values.changes.list_numbers import goes_on, is_another_list
from tracker.intake.values.changes.no_offers import (
    deals_done,
    denies_offers,
    explains_the_list,
    may_be_all_example,
    offers_nothing,
    shows_how_to_read,
)
from tracker.intake.values.changes.others_prices import Offering, heading_offers, round_of_bids, title_offers
from tracker.intake.values.changes.shown_besides import shown_besides, shows_the_past
from tracker.intake.values.changes.withdrawn import will_go
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import without

_OF_BOARDS = (
    Role.PRODUCT, Role.GRADE, Role.COATING, Role.CALIPER, Role.WEIGHT, Role.SHEET_SIZE, Role.FORM, Role.VENDOR,
    Role.ITEM,
)  # fmt: skip


def age_above(words: Words, tables: Iterable[Table]) -> Age:
    """What words above some tables say of them; 'Old' alone is what a column of old prices is called.

    '* withdrawn' is about the prices with a star and not about the list; 'Old prices above, new prices below' is not
    told apart.
    """
    age = _age_above(words, tables)
    return Age.DOUBTFUL if words.unsure and age is Age.SUPERSEDED else age


def _age_above(words: Words, tables: Iterable[Table]) -> Age:
    if is_footnote(words.text, tables):
        return Age.IN_FORCE
    named = header_roles(words.text)
    if named and named[0].role is Role.PREVIOUS_PRICE and named[0].strength >= 1:
        return Age.SUPERSEDED
    return age_of_list(words.text)


NO_OFFERS = "under a heading that marks them as no offers"
"""Why rows are passed over that nobody offers."""
EXAMPLE = "marked as an example"
"""Why a table is, beside others."""


MOST_EXAMPLES = 3
"""Rows that show how a list is read; more of them are a list with a title about reading it."""


def marked_off(headings: Iterable[Words], table: Table) -> str:
    """Why rows below these sub-headings offer nothing, '' where they may."""
    for words in headings:
        if words.unsure or _is_list_explained(words, table):
            continue
        if age_above(words, (table,)) is Age.SUPERSEDED:
            return "under a heading that marks them as no longer in force"
        if offers_nothing(words.text) or heading_offers(words.text) is Offering.NOT:
            return NO_OFFERS
    return ""


def _is_list_explained(heading: Words, table: Table) -> bool:
    """Whether an example's heading stands over many rows, or over all that a table has."""
    if not shows_how_to_read(heading.text) or deals_done(heading.text) or denies_offers(heading.text):
        return False
    below = [row for row in table.rows if row.headings is not None and heading in row.headings.own]
    return len(below) > MOST_EXAMPLES or len(below) == len(table.rows)


def outdated_whole(sheet: ReadSheet, sheets: Sequence[ReadSheet]) -> str:
    """Why all of a sheet is no longer in force, '' where it may be: its name or its first words mark it as old, or as
    an example beside the list on another of the file's sheets, or another is called the same but for a later year."""
    if sheet.name in outdated_sheets(tuple(other.name for other in sheets)):
        return "a later year has a sheet of its own"
    if age_of_sheet(sheet, sheets) is Age.SUPERSEDED:
        return "the sheet's name marks it as old"
    if age_told_elsewhere(sheet, sheets) is Age.SUPERSEDED:
        return REPLACED
    if title_offers(sheet.name) is Offering.NOT:
        return "the sheet's name marks it as no offers"
    if _is_an_example(sheet) and any(_offers(other) for other in sheets if other is not sheet):
        return "it shows how to read the list"
    marks = [words for words in _above(sheet) if age_above(words, sheet.found.tables) is Age.SUPERSEDED]
    whole = (words for words in marks if not _of_one_table(words, sheet))
    return "marked as old" if any(not speaks_of_another(words.text, sheet, sheets) for words in whole) else ""


def _is_an_example(sheet: ReadSheet) -> bool:
    few = sum(len(read.table.rows) for read in sheet.tables) <= MOST_EXAMPLES
    return few and (explains_the_list(sheet.name) or _begins_as_an_example(sheet))


def _offers(sheet: ReadSheet) -> bool:
    """Whether a sheet has a table with prices that are offered, and is no example itself."""
    return any(not read.passed_over for read in sheet.tables) and not _is_an_example(sheet)


def only_examples_kept(sheets: Sequence[ReadSheet]) -> None:
    """Reads a table called an example after all where nothing else of the file is offered: it is the list."""
    examples = [read for sheet in sheets for read in sheet.tables if read.passed_over == EXAMPLE]
    if examples and all(read.passed_over for sheet in sheets for read in sheet.tables):
        for read in examples:
            read.passed_over = ""


def _begins_as_an_example(sheet: ReadSheet) -> bool:
    """Whether a sheet's first words, or any over its only table, say that it holds an example and no offers."""
    above = sorted(_above(sheet), key=lambda words: (words.row, words.cell.column))
    said = above if len(sheet.tables) == 1 else above[:1]
    return any(shows_how_to_read(words.text) for words in said)


def _above(sheet: ReadSheet) -> list[Words]:
    """The words above the first table."""
    first = min((read.table.first_row for read in sheet.tables), default=None)
    return [words for words in sheet.found.texts if first is not None and words.row < first]


def _of_one_table(mark: Words, sheet: ReadSheet) -> bool:
    """'Old prices' right above the first table, where 'New prices' or another list stands above another, or any title
    in its row."""
    titles = [read.table.titles for read in sheet.tables]
    theirs = (words for each in titles if mark not in each for words in each)
    others = [words for words in theirs if age_above(words, sheet.found.tables) is Age.IN_FORCE]
    return any(mark in each for each in titles) and any(
        words.row == mark.row
        or (phrases("price_words").find(words.text) and not goes_on(words.text, mark.text))
        or is_another_list(words.text, mark.text)
        for words in others
    )


def columns_beside(table: Table, columns: Columns) -> tuple[int, ...]:
    """The columns that hold neither prices nor what describes the boards: where remarks on rows may stand."""
    known = {column.index for column in columns.of(*_OF_BOARDS)} | {price.index for price in columns.prices}
    return tuple(column.index for column in table.columns if column.index not in known)


def remarks_in(cells: Mapping[int, Cell], beside: Iterable[int]) -> list[Cell]:
    """The words that a row has in these columns."""
    found = [cells[index] for index in beside if index in cells]
    return [cell for cell in found if isinstance(cell.value, str)]


def age_of_remarks(remarks: Iterable[Cell]) -> tuple[Age, Cell | None]:
    """What a row's own remarks say of it, and the first that says so; None where they leave it in force.

    Of a board that will go, the one that takes its place says nothing of its price.
    """
    age, saying = Age.IN_FORCE, None
    for cell in remarks:
        said = age_of_row(_without_successor(cell.text) if will_go(cell.text) else cell.text)
        if said > age:
            age, saying = said, cell
    return age, saying


def _without_successor(text: str) -> str:
    """'To be discontinued; replaced by SBS 20 pt' without 'replaced by'."""
    return without(text, phrases("successor").find(text))


@dataclass(frozen=True, slots=True)
class Doubt:
    """Words that leave it open whether somebody offers a price, and what they may mean."""

    said: Said[str]
    may_mean: str


_OUTDATED = "it is no longer in force"
_NOT_OFFERED = "nobody offers it"


class Doubts:
    """What leaves it open whether the prices of one table are offered, and still in force."""

    def __init__(self, read: ReadTable, sheet: ReadSheet, sheets: Sequence[ReadSheet]) -> None:
        self._beside = columns_beside(read.table, read.columns)
        self._tables = sheet.found.tables
        # Nearly no text is doubtful, and to which table one belongs is asked of those alone.
        above = [words for words in _above(sheet) if age_above(words, self._tables) is Age.DOUBTFUL]
        around = [*read.table.titles, *(words for words in above if not _of_one_table(words, sheet))]
        around = [words for words in around if not speaks_of_another(words.text, sheet, sheets)]
        self._titles = read.table.titles
        texts = (words for one in sheet.tables for words in (*one.table.titles, *one.table.headings()))
        self._rounds = len({named for words in (*texts, *_above(sheet)) if (named := round_of_bids(words.text))})
        self._numbered = offers_numbered(read, sheet)
        # 'The superseded prices are shown for reference' is said of the column of those.
        told_apart = any(price.kind is Kind.PREVIOUS for price in read.columns.prices)
        old = None if told_apart else next(_doubtful(around, self._tables), None)
        if old is None and age_of_sheet(sheet, sheets) is Age.DOUBTFUL:
            old = Doubt(Said(sheet.name, "the sheet's name", sheet.name), _OUTDATED)
        if old is None and age_told_elsewhere(sheet, sheets) is Age.DOUBTFUL:
            old = Doubt(Said(sheet.name, "what is said of this sheet", sheet.name), _OUTDATED)
        if old is None and age_told_of_table(read, sheets) is not Age.IN_FORCE:
            title = read.table.titles[0]
            old = Doubt(Said(title.text, "what is said of this table", title.text), _OUTDATED)
        shown = [*read.table.titles, *(_above(sheet) if len(sheet.tables) == 1 else ())]
        example = (Doubt(_said(one.cell, one.text), _NOT_OFFERED) for one in shown if may_be_all_example(one.text))
        of_others = _not_offered([*read.table.titles, *_above(sheet)], title_offers)
        # Over the only prices it is what a vendor writes of any list.
        tells = shown_besides if len(sheet.tables) > 1 else shows_the_past
        besides = [one for one in read.table.titles if tells(one.text)]
        of_others = chain(of_others, (Doubt(_said(one.cell, one.text), _NOT_OFFERED) for one in besides))
        self._above = old or next(example, None) or next(of_others, None)

    def of_row(self, cells: Mapping[int, Cell], headings: Sequence[Words]) -> Doubt | None:
        """What may mean that nobody offers a row's prices, or no longer, the nearest first."""
        age, cell = age_of_remarks(remarks_in(cells, self._beside))
        if age is Age.DOUBTFUL and cell is not None:
            return Doubt(Said(cell.text, at(cell), cell.text), _OUTDATED)
        if not headings and self._rounds <= 1:
            return self._above
        own = next(_doubtful(headings, self._tables), None) or next(_not_offered(headings, heading_offers), None)
        return own or next(self._of_earlier_round([*reversed(headings), *self._titles]), None) or self._above

    def _of_earlier_round(self, texts: Iterable[Words]) -> Iterator[Doubt]:
        """'Initial offer' over rows, where 'Revised offer' stands over others; the nearest that names a round tells."""
        told = (words for words in texts if words not in self._numbered)
        named = next((words for words in told if round_of_bids(words.text)), None) if self._rounds > 1 else None
        if named is not None and round_of_bids(named.text) != "last":
            yield Doubt(_said(named.cell, named.text), _OUTDATED)


def _doubtful(texts: Iterable[Words], tables: Sequence[Table]) -> Iterator[Doubt]:
    doubtful = (words for words in texts if age_above(words, tables) is Age.DOUBTFUL)
    return (Doubt(_said(words.cell, words.text), _OUTDATED) for words in doubtful)


def _not_offered(texts: Iterable[Words], offers: Callable[[str], Offering]) -> Iterator[Doubt]:
    """'Discontinued grades while stocks last', and 'Target prices' over the only table of a sheet."""
    doubtful = (words for words in texts if offers(words.text) is not Offering.SURELY)
    return (Doubt(_said(words.cell, words.text), _NOT_OFFERED) for words in doubtful)


def _said(cell: Cell, text: str) -> Said[str]:
    return Said(text, at(cell), text)


def doubt_in_head(price: PriceColumn) -> Doubt | None:
    """A head that may mean that its prices are no longer in force."""
    doubtful = (cell for cell in _heads(price.column) if age_of_name(cell.text) is Age.DOUBTFUL)
    return next((Doubt(_said(cell, cell.text), _OUTDATED) for cell in doubtful), None)


def _heads(column: Column) -> Iterator[Cell]:
    return reversed(column.heads)
