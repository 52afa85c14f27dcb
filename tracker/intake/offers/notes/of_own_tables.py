"""Notes that tell the tables of a file apart by their letters, numbers or names: each table hears what is its own."""

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace

from tracker.intake.offers.notes.scope import Level
from tracker.intake.offers.sheet import ReadSheet, ReadTable
from tracker.intake.tables.table import Words
from tracker.intake.values.notes.tables_named import PLACE, parts_by_table, table_labels

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
    names = frozenset(
        (name, place)
        for place, named in enumerate(called.values())
        for name in named
        if counted[name] == 1 and len(name) >= _SHORTEST
    )
    known = frozenset(counted)
    titles = {words for sheet in sheets for table in sheet.tables for words in table.table.titles}
    for level in levels:
        texts = tuple(
            part
            for words in level.texts
            for part in _left(words, own, frozenset() if words in titles else names, known)
        )
        yield level if texts == level.texts else replace(level, texts=texts)


_SEVERAL = 2


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
        yield id(read), frozenset([f"{PLACE}{place + 1}", *placed, *own, *names])


def _labels(text: str) -> frozenset[str]:
    return frozenset[str]().union(*(labels for labels, _ in table_labels(text)))


def _left(
    words: Words, own: frozenset[str], names: frozenset[tuple[str, int]], known: frozenset[str]
) -> Iterator[Words]:
    parts = parts_by_table(words.text, names)
    if not parts:
        yield words
        return
    yield from (
        words if part.alone else replace(words, text=part.text)
        for part in parts
        if not part.tables or part.tables & own or (part.alone and not part.tables & known)
    )
