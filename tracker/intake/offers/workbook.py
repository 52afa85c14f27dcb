"""All offers of a workbook: its sheets' tables with everything around them, and what holds for the whole file."""

from collections.abc import Iterable, Iterator, Sequence, Set
from dataclasses import dataclass, field, replace
from datetime import date
from itertools import groupby

from tracker.intake.columns.assign import columns_of
from tracker.intake.columns.column import Columns, Kind
from tracker.intake.columns.priced.columns_told import set_columns_aside_as_told
from tracker.intake.columns.priced.earlier_periods import keep_this_years, set_earlier_periods_aside
from tracker.intake.columns.priced.earlier_year import set_earlier_days_aside, set_earlier_year_aside
from tracker.intake.columns.priced.periods_told import set_periods_aside_as_told
from tracker.intake.columns.priced.terms_in_cells import with_terms_apart
from tracker.intake.columns.priced.years_told import set_other_years_aside
from tracker.intake.columns.units.row_units import with_row_units
from tracker.intake.grid import Cell, Workbook
from tracker.intake.offers.charges.charges_left import open_what_is_left
from tracker.intake.offers.charges.charges_passed_over import charges_passed_over
from tracker.intake.offers.charges.surcharges_listed import take_surcharges
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.file_facts import FileFacts, facts_of
from tracker.intake.offers.lines import TableReader
from tracker.intake.offers.notes.footnotes import with_footnotes
from tracker.intake.offers.notes.of_firms import take_notes_of_firms, tell_of_the_last_firm_s
from tracker.intake.offers.notes.of_named_sheets import of_sheet
from tracker.intake.offers.notes.of_own_marks import of_own_marks
from tracker.intake.offers.notes.of_own_tables import of_own_tables
from tracker.intake.offers.notes.of_some_lines import of_own_lines, with_lines_apart
from tracker.intake.offers.notes.of_unseen_marks import with_unseen_marks
from tracker.intake.offers.notes.of_whole_workbook import of_whole_workbook
from tracker.intake.offers.notes.of_word_keys import with_word_keys
from tracker.intake.offers.notes.own_texts import of_own_prices
from tracker.intake.offers.notes.said import Said
from tracker.intake.offers.notes.scope import Level
from tracker.intake.offers.notes.subjects import board_level, sheet_level
from tracker.intake.offers.orders.corner_sizes import with_size_of_corner
from tracker.intake.offers.prices.across_sheets import ask_across_sheets
from tracker.intake.offers.prices.claimed import claimed_at
from tracker.intake.offers.prices.lines_of_bases import joined_down
from tracker.intake.offers.prices.twins import disagreeing_rows, joined_bases, paired_bases, without_repeats
from tracker.intake.offers.rows.earlier_years import earlier_years_aside
from tracker.intake.offers.rows.marked import marked_sheet
from tracker.intake.offers.rows.not_counted import as_passed_over, not_counted
from tracker.intake.offers.rows.outdated import Doubts, only_examples_kept, outdated_whole
from tracker.intake.offers.rows.pass_over import (
    is_change_log,
    only_looks_like_a_table,
    passed_outside,
    passed_table,
)
from tracker.intake.offers.rows.prose import prose_drafts
from tracker.intake.offers.rows.recaps import mark_recaps, without_recaps
from tracker.intake.offers.rows.replaced_lists import replaced_tables_aside
from tracker.intake.offers.rows.terms_unread import mark_terms_unread
from tracker.intake.offers.rows.unheaded import unheaded_drafts
from tracker.intake.offers.sheet import ReadSheet, ReadTable
from tracker.intake.offers.terms.firms_over_tables import texts_of_all, vendor_of_table
from tracker.intake.offers.terms.vendor import may_name_another, short_texts, vendor_of_file
from tracker.intake.progress import expect
from tracker.intake.tables.explained import explained
from tracker.intake.tables.searched import Searched, searched
from tracker.intake.tables.table import Table, Words
from tracker.intake.tables.view import views_of
from tracker.intake.tables.words import words_of
from tracker.trade.layout import Layout
from tracker.trade.offer import Answers, PassedOver


@dataclass
class WorkbookOffers:
    """Drafts in the order of the sheets, what was passed over, and the vendor where the file names just one.

    `layouts`: the sheets that were read by a layout marked by hand. `dated`: the day the list says it was made.
    """

    drafts: list[Draft] = field(default_factory=list)
    letterhead: tuple[str, ...] = ()
    passed: list[PassedOver] = field(default_factory=list)
    vendor: str | None = None
    layouts: dict[str, Layout] = field(default_factory=dict)
    dated: date | None = None


def _earlier_prices_aside(columns: Columns, facts: FileFacts) -> None:
    """What is over by the list's own day and year is not offered, and what is not over is kept."""
    made = facts.list_date
    if facts.list_year is not None:
        set_earlier_year_aside(columns, facts.list_year)
    if made is not None:
        set_earlier_days_aside(columns, made, facts.date_order)
    told = facts.years_of_prices
    if facts.list_year is not None or not told.new:
        keep_this_years(columns, facts.list_year or told.year, told.over)
    if made is not None:
        set_earlier_periods_aside(columns, made)


def read_offers(workbook: Workbook, answers: Answers) -> WorkbookOffers:
    """Every offer of every sheet."""
    views = views_of(workbook.grids)
    found_in = searched(views)
    sheets = [
        marked_sheet(view, workbook.sha256, answers.layouts or ()) or _read_sheet(one, one.legends(found_in))
        for view, one in zip(views, found_in, strict=True)
    ]
    only_examples_kept(sheets)
    replaced_tables_aside(sheets)
    facts = facts_of(sheets, answers)
    earlier_years_aside(sheets, facts.list_date)
    for read in (read for sheet in sheets for read in sheet.tables):
        _earlier_prices_aside(read.columns, facts)
    for sheet in sheets:
        for read in sheet.tables:
            set_columns_aside_as_told(read.columns, sheet.all_texts())
            set_periods_aside_as_told(read.columns, sheet.all_texts())
            set_other_years_aside(read.columns, _above(read, sheet), sheet.all_texts())
    layouts = {sheet.name: sheet.layout for sheet in sheets if sheet.layout is not None}
    found = WorkbookOffers(layouts=layouts, dated=facts.list_date)
    file_vendor = _file_vendor(sheets, answers)
    found.vendor = file_vendor.value if file_vendor is not None else None
    if file_vendor is None:
        found.letterhead = tuple(short_texts(sheets))
    expect(sum(len(read.table.rows) for sheet in sheets for read in sheet.tables))
    for sheet in sheets:
        _read_tables(found, sheet, sheets, facts, file_vendor)
    found.drafts.extend(_unheaded(sheets, {draft.sheet for draft in found.drafts}))
    if not found.drafts:
        told = (sheet for sheet in sheets if not outdated_whole(sheet, sheets))
        found.drafts.extend(draft for sheet in told for draft in prose_drafts(sheet, alone=True))
    found.drafts, repeated = without_recaps(found.drafts)
    found.passed.extend(repeated)
    found.drafts = without_repeats(found.drafts)
    if len(sheets) > 1:
        ask_across_sheets(found.drafts, answers)
    asked = {draft.sheet for draft in found.drafts}
    found.passed = [passed for passed in found.passed if passed.why != NO_PRICES or passed.sheet not in asked]
    left = not_counted(sheets, found.drafts, found.passed)
    open_what_is_left(left, charges_passed_over(sheets, found.passed), found.drafts)
    found.passed[:0] = as_passed_over(left)
    return found


def _above(read: ReadTable, sheet: ReadSheet) -> Iterator[str]:
    """The sheet's name, and what stands over a table of it."""
    yield sheet.name
    yield from (words.text for words in read.table.titles)
    yield from (words.text for words in sheet.found.texts if words.row < read.table.first_row)


def _unheaded(sheets: Sequence[ReadSheet], offering: Set[str]) -> list[Draft]:
    """What stands under no heads in sheets that offer nothing; beside others that do, less is asked about."""
    bare = (sheet for sheet in sheets if not sheet.tables and sheet.name not in offering)
    told = (sheet for sheet in bare if not offering or not outdated_whole(sheet, sheets))
    return [draft for sheet in told for draft in unheaded_drafts(sheet.found.view, beside_offers=bool(offering))]


NO_PRICES = "no prices"


def _read_sheet(sheet: Searched, legends: Sequence[Words]) -> ReadSheet:
    found = explained(sheet.found, legends)
    tables = []
    texts: list[Words] = list(found.texts)
    for table in found.tables:
        read = _read_table(table, found.texts)
        read.passed_over = passed_table(read, found, legends)
        if only_looks_like_a_table(read):
            texts += words_of(table.view, range(table.first_row, table.last_row + 1))
        else:
            tables.append(read)
    take_notes_of_firms(tables)
    whole = replace(found, texts=tuple(texts))
    for read in tables:
        # What only looked like a table may describe the boards of another: a form above a scale of prices.
        read.passed_over = read.passed_over and passed_table(read, whole, legends)
    whole = replace(whole, texts=(*whole.texts, *take_surcharges(tables)))
    if not any(not read.passed_over for read in tables) and is_change_log(sheet.offered):
        whole = replace(whole, texts=())
    return ReadSheet(whole, tuple(tables), quoted=sheet.quoted, last_row=max(sheet.offered.order, default=None))


def _read_table(table: Table, texts: Sequence[Words]) -> ReadTable:
    columns = columns_of(table, texts)
    joined = with_row_units(table, columns)
    columns = columns if joined is table else columns_of(joined, texts)
    return ReadTable(*with_terms_apart(with_size_of_corner(joined, columns), columns))


def _read_tables(
    found: WorkbookOffers,
    sheet: ReadSheet,
    sheets: Sequence[ReadSheet],
    facts: FileFacts,
    file_vendor: Said[str] | None,
) -> None:
    why = outdated_whole(sheet, sheets)
    offering = [read for read in sheet.tables if not read.passed_over and not why]
    claimed = claimed_at(sheet.tables, facts)
    titles = tuple(_titles(sheets))
    everywhere = [read for other in sheets for read in other.tables]
    before = len(found.drafts)
    alike: list[Draft] = []
    if sheet.quoted:
        rows = f"{sheet.quoted[0] + 1}-{sheet.quoted[-1] + 1}"
        found.passed.append(PassedOver(sheet.name, rows, "an earlier message, which this one quotes"))
    found.passed.extend(passed_outside(sheet.name, sheet.outside))
    for read in sheet.tables:
        if read not in offering:
            rows = f"{read.table.first_row + 1}-{read.table.last_row + 1}"
            found.passed.append(PassedOver(sheet.name, rows, why or read.passed_over))
            continue
        around = of_own_tables(_levels(read, sheet, sheets, len(offering)), read, sheets)
        tables = [other.table for other in sheet.tables]
        priced = [other.table for other in offering]
        keyed = (with_unseen_marks(with_word_keys(of_own_prices(level), priced)) for level in around)
        apart = (with_lines_apart(with_footnotes(level, tables)) for level in keyed)
        marked = (of_own_marks(level, read, everywhere if level.foreign else sheet.tables) for level in apart)
        levels = tuple(of_own_lines(level, read, offering) for level in marked)
        vendor = vendor_of_table(read, sheet, file_vendor)
        if vendor is None and file_vendor is not None and not may_name_another(sheet.found.texts, file_vendor):
            vendor = file_vendor
        claimed_here, doubts = replace(claimed, own=claimed_at([read], facts)), Doubts(read, sheet, sheets)
        offers = TableReader(read, levels, claimed_here, facts, vendor, doubts, titles).read()
        found.passed.extend(offers.passed)
        drafts = joined_down(_by_row(offers.drafts))
        tell_of_the_last_firm_s(drafts, read, sheet)
        mark_recaps(drafts, read.table.titles, sheet.name)
        mark_terms_unread(drafts, levels, alone=len(everywhere) == 1)
        # Without words of its own above it, a table tells nothing that sets its prices apart from the one before.
        alike = drafts if read.table.titles else [*alike, *drafts]
        disagreeing_rows(alike)
        found.drafts.extend(drafts)
    if not why:
        found.drafts.extend(prose_drafts(sheet))
    if len(found.drafts) == before and not sheet.tables:
        rows = "" if sheet.last_row is None else f"1-{sheet.last_row + 1}"
        found.passed.append(PassedOver(sheet.name, rows, NO_PRICES))


def _by_row(drafts: Iterable[Draft]) -> Iterator[Draft]:
    """Drafts with the prices of one row on several bases joined. A lying table's row is a column of the sheet."""
    rows = [list(row) for _, row in groupby(drafts, key=lambda draft: draft.row_key)]
    paired = paired_bases(rows)
    for row in rows:
        yield from joined_bases(row, paired)


def _levels(read: ReadTable, sheet: ReadSheet, sheets: Sequence[ReadSheet], tables: int) -> Iterator[Level]:
    """From the table's own titles outwards to the other sheets' terms."""
    if read.table.titles or read.table.notes:
        own = not set(read.table.titles) <= set(sheet.found.texts)
        texts = (*read.table.titles, *read.table.notes)
        yield Level("title", texts, sole=tables == 1, last_row=read.table.last_row, of_table=own)
    yield sheet_level(read, sheet, alone=tables == 1)
    of_all = board_level(read, sheet) if tables > 1 else None
    if of_all is not None:
        yield of_all
    if sheet.name:
        yield Level("sheet name", (_sheet_name(sheet),))
    others = [other for other in sheets if other is not sheet and not _offers(other)]
    for hidden in (False, True):
        terms = [words for other in others if other.found.view.hidden is hidden for words in other.found.texts]
        offering = [other for other in sheets if other not in others and other is not sheet]
        terms += of_whole_workbook(other for other in offering if other.found.view.hidden is hidden)
        for said in of_sheet(terms, sheet.name, [other.name for other in sheets if other not in others]):
            if said:
                yield Level("other sheets", tuple(said), foreign=True, board=False, hidden=hidden)


def _titles(sheets: Sequence[ReadSheet]) -> Iterator[Words]:
    """Every title and sub-heading of the file, and the sheets' names."""
    for sheet in sheets:
        yield _sheet_name(sheet)
        for read in sheet.tables:
            yield from read.table.titles
            yield from read.table.headings()


def _sheet_name(sheet: ReadSheet) -> Words:
    cell = Cell(0, 0, sheet.name, sheet.name)
    return Words(sheet.name, 0, cell, sheet.name)


def _offers(sheet: ReadSheet) -> bool:
    return any(
        price.kind is Kind.OFFER for read in sheet.tables if not read.passed_over for price in read.columns.prices
    )


def _file_vendor(sheets: Sequence[ReadSheet], answers: Answers) -> Said[str] | None:
    texts = [words for sheet in sheets for words in texts_of_all(sheet)]
    named = vendor_of_file(texts, sheets)
    if named is not None:
        return named
    answered = answers.settled.get("vendor")
    return Said(answered, "your answer", answered) if answered else None
