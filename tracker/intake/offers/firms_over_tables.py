"""Firms whose names stand right over the tables of a sheet, each over its own: an agent's offers of several mills.

ALTVEDA KARTON – EUR per tonne, EXW, 6 weeks     over GC1, GC2
TEMBRAN BOARD – USD per metric ton, 8 weeks      over GD2
"""

import re
from collections.abc import Iterable, Sequence

from tracker.intake.offers.said import Said, at
from tracker.intake.offers.sheet import ReadSheet, ReadTable
from tracker.intake.offers.vendor import vendor_among
from tracker.intake.tables.table import Words
from tracker.intake.values.company import letterhead_name, may_be_a_name
from tracker.intake.values.grade import find_grade
from tracker.intake.values.statements import statements
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases


def firms_over(tables: Sequence[ReadTable]) -> tuple[Said[str] | None, ...]:
    """Who quotes in each table, where their titles name several firms; () where they name one, or none.

    Beside two firms less is needed for a third: 'TEMBRAN BOARD' is one though nothing but its place says so. Beside one
    firm it may as well be a board of his: then nobody knows who quotes there. A table without a name goes on with the
    one above it.
    """
    named = [vendor_among(read.table.titles) for read in tables]
    firms = {fold(name.value) for name in named if name is not None}
    others = [name is None and _names_another(read.table.titles) for name, read in zip(named, tables, strict=True)]
    if not firms or (len(firms) == 1 and not any(others)):
        return ()
    found: list[Said[str] | None] = []
    for name, other, read in zip(named, others, tables, strict=True):
        less_plainly = _less_plainly(read.table.titles) if len(firms) > 1 else None
        above = found[-1] if found else None
        found.append(name or (less_plainly if other else above))
    return tuple(found)


def vendor_of_table(read: ReadTable, sheet: ReadSheet) -> Said[str] | None:
    """Who quotes in a table: the firm over it, else the one that its sheet names."""
    over = zip(sheet.tables, firms_over(sheet.tables), strict=False)
    own = next((firm for table, firm in over if table is read), None)
    return own or vendor_among(read.table.titles) or vendor_among(texts_of_all(sheet))


def texts_of_all(sheet: ReadSheet) -> list[Words]:
    """The texts of a sheet that may name who quotes in all of it: not those over one table, where each has its own."""
    over = {words for read in sheet.tables for words in read.table.titles} if firms_over(sheet.tables) else set()
    return [words for words in sheet.found.texts if words not in over]


_BEHIND = re.compile(r"\s[-–—|•·]\s|[:,;|]\s")


def _names_another(titles: Iterable[Words]) -> bool:
    """Whether one of some titles may begin with a firm's name: a name, and terms of its own behind it."""
    return any(_begins_with_a_name(words.text) for words in titles)


def _begins_with_a_name(text: str) -> bool:
    name, *terms = _BEHIND.split(text.strip(), maxsplit=1)
    if not terms or not statements(terms[0]) or find_grade(name) is not None or statements(name):
        return False
    own = name.isalpha() and name[:1].isupper() and phrases("generic_names").whole(name) is None
    return own or may_be_a_name(name)


def _less_plainly(titles: Iterable[Words]) -> Said[str] | None:
    named = [(words, name) for words in titles if (name := letterhead_name(words.text)) is not None]
    return Said(named[0][1], at(named[0][0].cell), named[0][0].text) if len(named) == 1 else None
