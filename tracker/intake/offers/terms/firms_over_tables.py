"""Firms whose names stand right over the tables of a sheet, each over its own: an agent's offers of several mills.

ORVALDA KARTON – EUR per tonne, EXW, 6 weeks     over GC1, GC2
SORBEK BOARD – USD per metric ton, 8 weeks      over GD2
"""

import re
from collections.abc import Iterable

from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.sheet import ReadSheet, ReadTable
from tracker.intake.offers.terms.vendor import maker_alone, seller_among, vendor_among
from tracker.intake.tables.table import Words
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.firms.company import labelled_company, letterhead_name, may_be_a_name
from tracker.intake.values.firms.seller_labels import names_maker
from tracker.intake.values.notes.statements import statements
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases


def firms_over(sheet: ReadSheet) -> tuple[Said[str] | None, ...]:
    """Who quotes in each table, where their titles name several firms; () where they name one, or none.

    Beside two firms less is needed for a third: 'SORBEK BOARD' is one though nothing but its place says so. Beside one
    firm it may as well be a board of his: then nobody knows who quotes there. A table without a name goes on with the
    one above it.
    """
    tables = sheet.tables
    named = [vendor_among(read.table.titles) or vendor_among(_labels_right_over(read, sheet)) for read in tables]
    firms = [name for name in named if name is not None]
    if firms and all(names_maker(name.words) for name in firms) and seller_among(sheet.found.texts) is not None:
        # 'Mill: Tarn Kartong AB' over the boards of a merchant who names himself.
        return ()
    several = len({fold(name.value) for name in firms}) > 1
    ahead = {name.words.partition(name.value)[0] for name in firms}
    others = [
        name is None and any(_names_another(words.text, ahead, alone=several) for words in read.table.titles)
        for name, read in zip(named, tables, strict=True)
    ]
    if not several and not any(others):
        return ()
    found: list[Said[str] | None] = []
    for name, other, read in zip(named, others, tables, strict=True):
        less_plainly = _less_plainly(read.table.titles, ahead) if several else None
        above = found[-1] if found else None
        found.append(name or (less_plainly if other else above))
    return tuple(found)


def vendor_of_table(read: ReadTable, sheet: ReadSheet, of_file: Said[str] | None) -> Said[str] | None:
    """Who quotes in a table: the firm over it, else the one that its sheet names; the board's maker where its file
    names nobody else."""
    over = zip(sheet.tables, firms_over(sheet), strict=False)
    own = next((firm for table, firm in over if table is read), None)
    texts = texts_of_all(sheet)
    return own or seller_among(read.table.titles) or seller_among(texts) or maker_alone(texts, sheet, of_file)


def texts_of_all(sheet: ReadSheet) -> list[Words]:
    """The texts of a sheet that may name who quotes in all of it: not those over one table, where each has its own, nor
    the label over a block without prices: 'Vendor: Sorbek Board' over 'no quote'."""
    if not firms_over(sheet):
        return list(sheet.found.texts)
    over = {words for read in sheet.tables for words in (*read.table.titles, *_labels_right_over(read, sheet))}
    starts = [read.table.first_row for read in sheet.tables]
    among = [words for words in sheet.found.texts if min(starts) < words.row < max(starts)]
    over |= {words for words in among if labelled_company(words.text) is not None}
    return [words for words in sheet.found.texts if words not in over]


def _labels_right_over(read: ReadTable, sheet: ReadSheet) -> list[Words]:
    """The texts in the unbroken rows above a table that label a firm: 'Vendor: Orvalda Karton' over its terms."""
    rows = {words.row: words for words in sheet.found.texts}
    row = read.table.first_row
    while row - 1 in rows:
        row -= 1
    close = [words for words in sheet.found.texts if row <= words.row < read.table.first_row]
    return [words for words in close if labelled_company(words.text) is not None]


_BEHIND = re.compile(r"\s[-–—|•·]\s|[:,;|]\s")


def _names_another(title: str, ahead: Iterable[str], *, alone: bool) -> bool:
    """Whether a title may begin with a firm's name: a name, behind what stands `ahead` of the others' names too, and
    terms of its own; `alone`: also without these."""
    return any(_begins_with_a_name(text, alone=alone) for text in _behind(title, ahead))


def _behind(title: str, ahead: Iterable[str]) -> list[str]:
    """The 'Sorbek Board, FOB' of 'Offer from Sorbek Board, FOB', where 'Offer from ' leads to other names."""
    return [title.strip().removeprefix(words) for words in ahead if title.strip().startswith(words)]


def _begins_with_a_name(text: str, *, alone: bool) -> bool:
    name, *terms = _BEHIND.split(text.strip(), maxsplit=1)
    if not (statements(terms[0]) if terms else alone) or find_grade(name) is not None or statements(name):
        return False
    own = name.isalpha() and name[:1].isupper() and phrases("generic_names").whole(name) is None
    return own or may_be_a_name(name)


def _less_plainly(titles: Iterable[Words], ahead: Iterable[str]) -> Said[str] | None:
    texts = [(words, text) for words in titles for text in _behind(words.text, ahead)]
    named = {name: words for words, text in texts if (name := letterhead_name(text)) is not None}
    if len(named) != 1:
        return None
    ((name, words),) = named.items()
    return Said(name, at(words.cell), words.text)
