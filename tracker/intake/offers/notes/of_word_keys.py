"""Keys of words around a table, held against what its cells say: below 'Colour' with 'green' and 'yellow' in its rows
'yellow = made to order, 5 weeks' is said of the yellow ones. Where no cell has a word, of nobody knows which."""

from collections.abc import Iterable, Iterator
from dataclasses import replace
from itertools import pairwise

from tracker.intake.grid import Cell
from tracker.intake.offers.notes.scope import Level
from tracker.intake.tables.table import Table, Words
from tracker.intake.values.notes.note_signs import KEYED
from tracker.intake.values.notes.unseen_marks import marks_alone
from tracker.intake.values.notes.word_keys import as_key, tells_more_than_money, without_rest, word_keys, words_in_cell


def with_word_keys(level: Level, tables: Iterable[Table]) -> Level:
    """The level with each entry of such keys as a text of its own, whose sign is its word."""
    if not any(map(_may_be_key, level.texts)) and not _side_by_side(level.texts):
        return level
    held, headed = _words_of(tables)
    joined = tuple(part for words in _joined(level.texts, held) for part in _without_rest(words))
    known = [words for words in joined if any(one.word in held for one in word_keys(words.text))]
    texts = tuple(part for words in joined for part in _parted(words, known, headed))
    return level if texts == level.texts else replace(level, texts=texts)


def _may_be_key(words: Words) -> bool:
    return bool(word_keys(words.text))


def _words_of(tables: Iterable[Table]) -> tuple[frozenset[str], frozenset[str]]:
    """The words of the tables' cells, and of their heads."""
    tables = [table for table in tables if not table.view.passing]
    cells = (cell for table in tables for row in table.rows for cell in table.view.rows[row.index].values())
    held = frozenset(word for cell in cells if isinstance(cell.value, str) for word in words_in_cell(cell.text))
    heads = (column for table in tables for column in table.columns)
    named = (text for one in heads for text in (one.called, *(cell.text for cell in one.heads)))
    return held, frozenset(map(as_key, named))


def _side_by_side(texts: Iterable[Words]) -> bool:
    return any(_are_beside(*pair) for pair in pairwise(texts))


def _are_beside(name: Words, said: Words) -> bool:
    """'yellow | lead time 5 weeks' in two cells."""
    beside = name.sheet == said.sheet and name.row == said.row and name.cell.column + 1 == said.cell.column
    return beside and len(name.text) <= _LONGEST and tells_more_than_money(said.text)


_LONGEST = 30


def _joined(texts: Iterable[Words], held: frozenset[str]) -> Iterator[Words]:
    """The texts with a word that cells have and what stands right of it as one."""
    left: Words | None = None
    for words in texts:
        if left is not None and _are_beside(left, words) and _is_explained(left.text, held):
            yield replace(words, text=f"{left.text.strip(' :=')} {KEYED} {words.text}")
            left = None
            continue
        if left is not None:
            yield left
        left = words
    if left is not None:
        yield left


def _without_rest(words: Words) -> Iterator[Words]:
    key, rest = without_rest(words.text)
    yield words if not rest else replace(words, text=key)
    if rest:
        yield replace(words, text=rest)


def _is_explained(text: str, held: frozenset[str]) -> bool:
    """A word that cells have, a colour, and what leads on with a sign: 'yellow ='."""
    return as_key(text) in held or text.rstrip().endswith(KEYED) or marks_alone(text)


def _parted(words: Words, known: list[Words], headed: frozenset[str]) -> Iterator[Words]:
    entries = word_keys(words.text)
    if not entries or any(one.word in headed for one in entries):
        yield words
        return
    alone, names = all(one.alone for one in entries), all(one.names for one in entries)
    beside = names and any(_is_next_to(words, one) for one in known)
    if words in known or beside or (known and alone):
        yield from (replace(words, text=f"[{KEYED}{one.word}] {one.said}") for one in entries)
        return
    yield replace(words, unsure=True) if alone else words


def _is_next_to(words: Words, other: Words) -> bool:
    return words.sheet == other.sheet and abs(words.row - other.row) <= 1


def cells_worded(cells: Iterable[Cell]) -> frozenset[str]:
    """The signs of the words that some cells have."""
    texts = (cell.text for cell in cells if isinstance(cell.value, str))
    return frozenset(f"{KEYED}{word}" for text in texts for word in words_in_cell(text))
