"""Notes that tell the tables of a file apart by their letters, numbers or names: each table hears what is its own."""

import re
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from typing import NamedTuple

from tracker.intake.offers.notes.said import Said
from tracker.intake.offers.notes.scope import Level
from tracker.intake.offers.sheet import ReadSheet, ReadTable
from tracker.intake.tables.table import Words
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.notes.statements import SaysMinimum, Statement, statements
from tracker.intake.values.notes.table_labels import PLACE, numbered_list, table_labels
from tracker.intake.values.notes.tables_named import LAST, NOWHERE, parts_by_table
from tracker.intake.values.orders.minimum import LeastUnread
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.intake.values.times.validity import Validity
from tracker.intake.words.lists import joined

_SHORTEST = 4
"""Letters of a word that may be a table's name."""


def of_own_tables(levels: Iterable[Level], read: ReadTable, sheets: Sequence[ReadSheet]) -> Iterator[Level]:
    """The levels of a table without what their texts say of other tables. A text that tells tables apart by what none
    of them is called holds for none of them: which is meant is not known."""
    called = dict(one for sheet in sheets for one in _called(sheet))
    if len(called) < _SEVERAL:
        yield from levels
        return
    counted = Counter(name for names in called.values() for name in names)
    own = frozenset(name for name in called[id(read)] if counted[name] == 1 or len(name) < _SHORTEST)
    letters = _lettered(sheets)
    names = frozenset(
        (name, place)
        for place, named in enumerate(called.values())
        for name in named
        if counted[name] == 1 and (len(name) >= _SHORTEST or name in letters)
    )
    lists = frozenset(name for name in map(numbered_list, counted) if counted[name] == 1)
    lists = lists if len(lists) >= _SEVERAL else frozenset()
    known = frozenset(counted)
    titles = {words for sheet in sheets for table in sheet.tables for words in table.table.titles}
    for level in levels:
        called_so = [_Names() if words in titles else _Names(names, lists) for words in level.texts]
        left = [_left(words, own, by, known) for words, by in zip(level.texts, called_so, strict=True)]
        texts = tuple(each for found, _ in left for each in found)
        opened = tuple(Said(one, level.place(words), words.text) for _, found in left for words, one in found)
        changed = opened or texts != level.texts
        yield replace(level, texts=texts, beside=(*level.beside, *opened)) if changed else level


_SEVERAL = 2


class _Names(NamedTuple):
    """What else tables are called in a text, each with a number, and the lists with a number among them."""

    tables: frozenset[tuple[str, int]] = frozenset()
    lists: frozenset[str] = frozenset()


def _called(sheet: ReadSheet) -> Iterator[tuple[int, frozenset[str]]]:
    """Each table of a sheet with its place, the letters and numbers of its titles, or its place as such where no title
    has any, and the words of its titles and sheet, which may be names."""
    titles = [[words.text for words in read.table.titles] for read in sheet.tables]
    labels = [frozenset[str]().union(*map(_labels, texts)) for texts in titles]
    for place, (read, texts, own) in enumerate(zip(sheet.tables, titles, labels, strict=True)):
        placed = () if any(labels) else (str(place + 1), chr(ord("a") + place))
        words = (word for text in (*texts, sheet.name) for word in text.replace("/", " ").split())
        named = (word.strip(" ,.:;()–-").casefold() for word in words)
        names = (word for word in named if len(word) >= _SHORTEST and word.isalpha())
        last = [LAST] if place and place + 1 == len(sheet.tables) else []
        lists = filter(None, map(numbered_list, texts))
        yield id(read), frozenset([f"{PLACE}{place + 1}", *last, *placed, *own, *names, *lists])


def _lettered(sheets: Sequence[ReadSheet]) -> frozenset[str]:
    """The letters that tables have in their titles, by which alone a text may call them: 'A: SEK, B: DKK'. One that
    stands in a cell is a code, and 'A = delivered' explains it."""
    tables = [read.table for sheet in sheets for read in sheet.tables]
    titled = (label for table in tables for words in table.titles for label in _labels(words.text))
    letters = {label for label in titled if len(label) == 1 and label.isalpha()}
    cells = (cell for table in tables if letters for row in table.rows for cell in table.view.rows[row.index].values())
    codes = {word.casefold() for cell in cells if len(cell.text) <= _LONGEST_CODE for word in cell.text.split()}
    return frozenset(letters - codes)


_LONGEST_CODE = 24
"""'A', 'Size A', 'Kraft A'."""


def _labels(text: str) -> frozenset[str]:
    """'Table A', the 'A' of 'A. Bleached board', and that of 'List A'."""
    lettered = _MARK.match(text) or _LIST.fullmatch(_BREAK.split(text.strip())[0])
    of_list = lettered is not None and (lettered.re is _MARK or _is_a_list(lettered["word"]))
    marks = frozenset({lettered["letter"].casefold()}) if lettered is not None and of_list else frozenset[str]()
    return marks.union(*(labels for labels, _ in table_labels(text)))


def _is_a_list(word: str) -> bool:
    return joined("list_names", "price_lists").whole(word) is not None


_MARK = re.compile(r"\s*\(?(?P<letter>[A-Z])[.)]\s+(?=[^\W\d_]{2})")
_LIST = re.compile(r"(?P<word>[^\W\d_]+(?: [^\W\d_]+)?) (?P<letter>[A-Z])")
_BREAK = re.compile(r"\s[-–—]\s|[:,;(]")


def _left(
    words: Words, own: frozenset[str], names: _Names, known: frozenset[str]
) -> tuple[list[Words], list[tuple[Words, Statement]]]:
    """What a text says of a table, and what it leaves open of it."""
    parts = parts_by_table(words.text, *names)
    of_tables = {part.tables for part in parts if part.tables}
    if not parts or (len(of_tables) == 1 and not {*known, *NOWHERE} & set[str]().union(*of_tables)):
        # 'Weights after table 7 of the handbook' names none of these.
        return [words], []
    texts = [
        words if part.alone else replace(words, text=part.text)
        for part in parts
        if part.tables & own or not (part.tables or part.but & own)
    ]
    opened = [
        (words, one) for part in parts if part.tables & own and part.before for one in _open(part.before, words.text)
    ]
    return texts, opened


def _open(told: str, text: str) -> Iterator[Statement]:
    """The terms that a part of a text tells, as what is not known of a table with its own: 'minimum 5 t, for table B
    10 t'."""
    for one in statements(told):
        match one:
            case LeadTime():
                yield LeadUnread(text)
            case SaysMinimum():
                yield LeastUnread(text)
            case Validity():
                yield Validity(text, unread=True)
            case Delivery():
                yield Delivery(None, text, conditional=True)
