"""Lists that another text of the file calls by their name and says to be replaced: 'List 14 is superseded' on a cover
sheet, beside the sheets or the titled tables 'List 14' and 'List 15'."""

import re
from collections.abc import Iterable, Iterator, Sequence

from tracker.intake.offers.notes.of_named_sheets import is_telling
from tracker.intake.offers.sheet import ReadSheet, ReadTable
from tracker.intake.tables.table import Words
from tracker.intake.values.changes.list_age import Age, age_of_list
from tracker.intake.values.changes.named_lists import age_of_named
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.note_signs import sign_ahead
from tracker.intake.words.lists import phrases

REPLACED = "a text says that this list is superseded"
"""Why its tables are passed over."""
_LONGEST = 40
_SET_APART = re.compile(r"\s*(?:[,:;(]|\s[-–—]\s)")


def age_told_elsewhere(sheet: ReadSheet, sheets: Sequence[ReadSheet]) -> Age:
    """What the file's texts say of a sheet by its name. Where all with prices are said to be replaced, that is of what
    stands elsewhere, and leaves it open."""
    priced = [other for other in sheets if _is_priced(other)]
    if sheet not in priced:
        return Age.IN_FORCE
    names = tuple(other.name for other in priced)
    texts = tuple(dict.fromkeys(text for one in sheets for text in _texts(one))) if len(priced) >= _SEVERAL else ()
    age = _age_of_sheet(sheet, names, texts)
    left = age is Age.SUPERSEDED and any(_age_of_sheet(other, names, texts) is Age.IN_FORCE for other in priced)
    return Age.DOUBTFUL if age is Age.SUPERSEDED and not left else age


def _age_of_sheet(sheet: ReadSheet, names: Sequence[str], texts: Iterable[str]) -> Age:
    return max(_age_of(sheet.name, names, texts), _age_told_below(sheet))


def _age_told_below(sheet: ReadSheet) -> Age:
    """What 'This list is cancelled and replaced by list B' says below the only table of a sheet."""
    if len(sheet.tables) != 1:
        return Age.IN_FORCE
    table = sheet.tables[0].table
    below = (words for words in _words(sheet) if words.row > table.first_row and not sign_ahead(words.text))
    told = (age_of_list(clause) for words in below for clause in clauses(words.text) if _is_of_this_list(clause))
    return max(told, default=Age.IN_FORCE)


def _is_of_this_list(clause: str) -> bool:
    """'This list is superseded'; 'Los precios anteriores' are those above, and 'precios anteriores' earlier ones."""
    begins = [match for match in phrases("these_prices").find(clause) if not clause[: match.start].strip(" *-–•")]
    states = [mark for mark in phrases("superseded").find(clause) if mark.value != "list"]
    return any(mark.start >= match.end for match in begins for mark in states)


def age_told_of_table(read: ReadTable, sheets: Sequence[ReadSheet]) -> Age:
    """What the file's texts say of a table by its title, beside others with titles of their own."""
    titled = [other for sheet in sheets for other in sheet.tables if not other.passed_over and any(_names_of(other))]
    if len(titled) < _SEVERAL or read not in titled:
        return Age.IN_FORCE
    names = tuple(dict.fromkeys(name for other in titled for name in _names_of(other)))
    texts = [(words, words.text) for sheet in sheets for words in _words(sheet)]
    return max((_age_of_titled(read, name, names, texts) for name in _names_of(read)), default=Age.IN_FORCE)


def speaks_of_another(text: str, sheet: ReadSheet, sheets: Sequence[ReadSheet]) -> bool:
    """Whether a text on a sheet says of another sheet, or of a table by its title, that it is replaced: then it says
    nothing of the rest."""
    others = [other.name for other in sheets if other is not sheet and other.tables and _may_be_meant(other.name)]
    titled = (read for read in sheet.tables if all(text != words.text for words in read.table.titles))
    names = (*others, *(name for read in titled for name in _names_of(read)))
    own = age_of_named(text, sheet.name, names) if _may_be_meant(sheet.name) else Age.IN_FORCE
    return own is Age.IN_FORCE and any(age_of_named(text, name, (sheet.name,)) is not Age.IN_FORCE for name in names)


def replaced_tables_aside(sheets: Sequence[ReadSheet]) -> None:
    """Passes over the tables that a text calls by their title and says to be replaced, beside another that is not."""
    tables = [read for sheet in sheets for read in sheet.tables if not read.passed_over]
    old = [read for read in tables if age_told_of_table(read, sheets) is Age.SUPERSEDED]
    for read in old if len(old) < len(tables) else ():
        read.passed_over = REPLACED


_SEVERAL = 2


def _age_of_titled(
    read: ReadTable, name: str, names: Sequence[str], texts: Iterable[tuple[Words, str]]
) -> Age:  # fmt: skip
    own = tuple(_names_of(read))
    others = tuple(other for other in names if other not in own)
    told = (age_of_named(text, name, others) for words, text in texts if words not in read.table.titles)
    return max(told, default=Age.IN_FORCE)


def _names_of(read: ReadTable) -> Iterator[str]:
    """The titles of a table, and what stands in them before a comma or a dash: the 'List 14' of 'List 14, October'."""
    for words in read.table.titles:
        name = _SET_APART.split(words.text.strip(), maxsplit=1)[0].strip()
        if len(name) <= _LONGEST and _may_be_meant(name):
            yield name


def _age_of(name: str, names: Sequence[str], texts: Iterable[str]) -> Age:
    others = tuple(other for other in names if other != name)
    told = (age_of_named(text, name, others) for text in texts) if _may_be_meant(name) else ()
    return max(told, default=Age.IN_FORCE)


def _may_be_meant(name: str) -> bool:
    return is_telling(name) and any(map(str.isalpha, name))


def _is_priced(sheet: ReadSheet) -> bool:
    return any(not read.passed_over for read in sheet.tables)


def _texts(sheet: ReadSheet) -> Iterator[str]:
    return (words.text for words in _words(sheet))


def _words(sheet: ReadSheet) -> Iterator[Words]:
    yield from sheet.found.texts
    for read in sheet.tables:
        yield from (*read.table.titles, *read.table.notes)
