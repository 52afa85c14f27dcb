"""What a title over one of several tables is about: terms beside another board or form do not hold for this one."""

import re
from collections.abc import Collection, Iterable, Iterator

from tracker.intake.offers.notes.named_parts import of_other_parts
from tracker.intake.offers.notes.of_firms import said_by_other_firms
from tracker.intake.offers.notes.said import Said
from tracker.intake.offers.notes.scope import Level
from tracker.intake.offers.sheet import ReadSheet, ReadTable
from tracker.intake.tables.table import Words
from tracker.intake.values.boards.board_words import names_board_and_price
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.list_boards import board_of_list
from tracker.intake.values.firms.company import company_name
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.of_all_and_some import speaks_of_all
from tracker.intake.values.notes.statements import Statement
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.prices.amounts_named import names_amount
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.prices.units_of_parts import parts_named
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of


def sheet_level(read: ReadTable, sheet: ReadSheet, *, alone: bool) -> Level:
    """What a sheet's texts say of one of its tables. `alone`: it is the only one with offers.

    'Rolls, price ex works' over the first table says nothing of the one below 'Sheets 70 x 100 cm' but its currency;
    'GC1, EUR/t, 6 weeks' over the first tells what the GD2 below a title of its own is priced in, and no more. What
    stands over a table further to the right is that table's alone, but for what it is priced in. 'Export, US$ per
    metric ton' says nothing at all of 'Job lots', and no unit of those whose own title says one, nor whose the '$' is
    that such a title says; 'Terms for B: …' none of the terms of A. Neither does what one firm says over its table of
    another's beside it; of one below it that tells what it is priced in, and no more.
    """
    own = [words.text for words in read.table.titles]
    others = {words for other in sheet.tables if other is not read for words in other.table.titles}
    of_forms = {words for words in others if _apart(_forms([words.text]), _forms(own))}
    of_boards = {words for words in others if _apart(_grades([words.text]), _grades(own))}
    right = _last_column(read)
    beside = {words for words in others if words.cell.column > right} | _in_rows_of_own(read, sheet)
    of_parts = {words for words in others if _apart(_parts([words.text]), _parts(own))} | _of_other_firms(read, sheet)
    of_firms = said_by_other_firms(read, sheet)
    named = of_other_parts(sheet.found.texts, read, sheet.tables)
    elsewhere = of_forms | of_boards | beside
    says_basis = _says_basis(read.table.titles)
    in_units = (others if says_basis else set()) - elsewhere
    of_dollars = {words for words in others if not _speaks_of_its_dollars(words, read, sheet)}
    of_dollars = of_dollars if _in_plain_dollars(read) else set()
    in_dollars = of_dollars - elsewhere
    told = elsewhere | in_units | in_dollars
    texts = tuple(words for words in sheet.found.texts if words not in told | of_parts | of_firms | named)
    around = (elsewhere | of_firms) - of_parts
    kept = tuple(said for said in _stated(sheet, around - of_dollars) if isinstance(said.value, SaysCurrency))
    if not of_forms and not says_basis:
        kept += tuple(said for said in _stated(sheet, around) if isinstance(said.value, SaysBasis))
    for words in (in_units | in_dollars) - of_parts - of_firms:
        own_kinds = (*((SaysBasis,) if words in in_units else ()), *((SaysCurrency,) if words in in_dollars else ()))
        kept += tuple(said for said in _stated(sheet, {words}) if not isinstance(said.value, own_kinds))
    return Level("sheet", texts, board=alone, beside=kept, last_row=read.table.last_row)


def _side_by_side(read: ReadTable, sheet: ReadSheet) -> Iterator[ReadTable]:
    return (other for other in sheet.tables if other is not read and other.table.first_row == read.table.first_row)


def _in_rows_of_own(read: ReadTable, sheet: ReadSheet) -> set[Words]:
    """The titles of the tables beside one that stand in the rows of its own titles."""
    rows = {words.row for words in read.table.titles}
    return {words for other in _side_by_side(read, sheet) for words in other.table.titles if words.row in rows}


def _of_other_firms(read: ReadTable, sheet: ReadSheet) -> set[Words]:
    """The titles of the tables beside one over which another firm stands."""
    own = _firms(read)
    apart = (other for other in _side_by_side(read, sheet) if _apart(_firms(other), own))
    return {words for other in apart for words in other.table.titles} - set(read.table.titles)


def _firms(read: ReadTable) -> frozenset[str]:
    named = (company_name(words.text) for words in read.table.titles)
    return frozenset(name for name in named if name is not None)


def _stated(sheet: ReadSheet, among: Collection[Words]) -> tuple[Said[Statement], ...]:
    return Level("sheet", tuple(words for words in sheet.found.texts if words in among)).stated


def _in_plain_dollars(read: ReadTable) -> bool:
    """The table's titles or the heads of its prices say '$', and nothing there says whose it is."""
    said = Level("title", read.table.titles).all_of(SaysCurrency)
    named = [one.value.currency for one in said]
    named += [reading for price in read.columns.prices for reading in price.column.currencies]
    return bool(named) and all(currency.bare_dollar for currency in named)


def _speaks_of_its_dollars(words: Words, read: ReadTable, sheet: ReadSheet) -> bool:
    """Whether what stands over another table says whose dollar a table's '$' is.

    'Currency: CAD' over the first table, whose heads say '$' as well, explains the '$' of the next one's heads, too,
    as long as nothing there tells two boards, forms or markets apart: 'Dayton mill', 'FOB Buffalo, NY'.
    """
    first = min(sheet.tables, key=lambda each: each.table.first_row)
    own = {*read.table.titles} - {*first.table.titles}
    apart = any(_may_be_apart(title.text) for title in own)
    elsewhere = apart and not all("home" in parts_named(title.text) for title in own)
    if speaks_of_all(words.text) and (not elsewhere or phrases("all_of_them").find(words.text)):
        return True
    alike = all(_heads_in_plain_dollars(each) for each in (read, first))
    apart = apart or _names_a_part(words.text)
    return first is not read and words in first.table.titles and alike and not apart


def _names_a_part(text: str) -> bool:
    return bool(_forms([text]) or _grades([text])) or _names_a_market(text)


def _may_be_apart(title: str) -> bool:
    """Any title with more in it than boards: a market, a mill or a town may be in another country."""
    return _names_a_market(title, "whose_money") or not titles_boards(title)


def _names_a_market(text: str, *more: str) -> bool:
    return any(phrases(section).find(text) for section in ("list_parts", "countries", *more))


def titles_boards(text: str) -> bool:
    """Whether a title says nothing but which board a table holds: 'Board in rolls', 'Ferrowick Board Inc - Sheets, USD
    per MSF'. 'Sheets on request', 'For sheets add $60/ST' and 'Sheet prices on page 2' speak of sheets because the
    rows below are none."""
    mark = _MARK.match(text)
    words = text[mark.end() :] if mark is not None else text
    firm = company_name(words)
    words = words.replace(firm, " ") if firm else words
    return names_board_and_price(words) and not (names_amount(words) or find_masses(words))


def _heads_in_plain_dollars(read: ReadTable) -> bool:
    """The heads of its prices say '$' and nothing of whose it is."""
    named = [price.column.currencies for price in read.columns.prices]
    return bool(named) and all(said and all(one.bare_dollar for one in said) for said in named)


def _says_basis(titles: tuple[Words, ...]) -> bool:
    return bool(Level("title", titles).all_of(SaysBasis))


def board_level(read: ReadTable, sheet: ReadSheet) -> Level | None:
    """What the sheet's first words say of the board of each of its tables; None where they are not about this one.

    'GC2, prices delivered' over reels at the left and sheets at the right names the board of both, as long as nothing
    else in the sheet names another, and the table has no names of its own.
    """
    if read.columns.of(Role.PRODUCT, Role.GRADE):
        return None
    titles = {words for table in sheet.tables for words in table.table.titles}
    top = min(table.table.first_row for table in sheet.tables)
    above = [words for words in sheet.found.texts if words.row < top and words not in titles]
    naming = tuple(words for words in above if _listed(words.text))
    grades = frozenset().union(*(_listed(words.text) for words in naming))
    alone = len(grades) == 1 and _named_elsewhere(sheet) == grades
    return Level("sheet", naming, last_row=read.table.last_row) if alone else None


def _listed(text: str) -> frozenset[str]:
    reading = board_of_list(text)
    return frozenset() if reading is None else frozenset(reading.grades)


def _named_elsewhere(sheet: ReadSheet) -> frozenset[str]:
    """Every grade that any title, heading, head or row of the sheet names."""
    columns = [(read, column) for read in sheet.tables for column in read.columns.of(Role.PRODUCT, Role.GRADE)]
    rows = (cell.text for read, column in columns for cell in read.cells(column))
    return _grades((*sheet.all_texts(), *rows))


def _last_column(read: ReadTable) -> int:
    """The table's last column in its sheet; one that lies on its side has a row of its own for each."""
    table = read.table
    lies = table.view.turned
    return max((row.index for row in table.rows) if lies else (column.index for column in table.columns), default=0)


def _apart(theirs: frozenset[str], own: frozenset[str]) -> bool:
    return bool(theirs) and bool(own) and not theirs & own


_MARK = re.compile(r"\s*([A-Z]|[IVX]{1,4}|\d{1,2})[.):]\s")


def _parts(texts: Iterable[str]) -> frozenset[str]:
    """Which part of an offer a title begins with: 'Export', 'Job lots', or the 'B.' of a list of lists."""
    found: set[str] = set()
    for text in texts:
        mark = _MARK.match(text)
        named = phrases("list_parts").at(tokens_of(text[mark.end() :] if mark is not None else text), 0)
        found |= {named.value} if named is not None else {mark[1]} if mark is not None else set()
    return frozenset(found)


def _forms(texts: Iterable[str]) -> frozenset[str]:
    return frozenset(match.value for text in texts for match in phrases("forms").find(text))


def _grades(texts: Iterable[str]) -> frozenset[str]:
    read = (find_grade(text) for text in texts)
    return frozenset(grade for reading in read if reading is not None for grade in reading.grades)
