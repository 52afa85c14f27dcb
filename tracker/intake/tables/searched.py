"""The sheets of a workbook with the tables found in them, and what they tell each other: legends and keys."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from tracker.intake.tables.find import find_tables
from tracker.intake.tables.headerless.mail import without_earlier_message
from tracker.intake.tables.parts.side_by_side import with_own_titles
from tracker.intake.tables.rows.key_tables import KeyTable, SaidOf, explaining, key_tables, without_rows
from tracker.intake.tables.table import SheetTables, Table, Words
from tracker.intake.tables.view import View, without_cells


@dataclass(frozen=True, slots=True)
class Searched:
    """A sheet's tables. `offered`: the part of it that is looked at; `quoted`: the rows of an earlier message below;
    `keys`: what its small tables of codes say of the columns of other sheets."""

    offered: View
    quoted: tuple[int, ...]
    found: SheetTables
    keys: tuple[Words, ...] = ()

    def legends(self, every: Sequence["Searched"]) -> list[Words]:
        """What the other sheets of words alone say, where the heads of this one may be explained, and the keys."""
        others = [one for one in every if one is not self]
        said = (words for one in others if not one.found.tables for words in one.found.texts)
        return [*said, *(words for one in others for words in one.keys)]


def searched(views: Iterable[View]) -> list[Searched]:
    """Each sheet, searched for its tables; keys that stand as tables are none of these."""
    every = [_searched(view) for view in views]
    keys = [key_tables(one.offered, one.found.tables) for one in every]
    if not any(keys):
        return every
    # What may be keys is left out first: it hides the tables that it explains, and may look like one itself.
    bare = [_without(one, [place for key in own for place in key.places]) for one, own in zip(every, keys, strict=True)]
    tables = [table for one in bare for table in one.found.tables]
    return [_keyed(*each, tables) for each in zip(every, bare, keys, strict=True)]


def _searched(view: View) -> Searched:
    offered, quoted = without_earlier_message(view)
    return Searched(offered, quoted, with_own_titles(find_tables(offered)))


def _without(sheet: Searched, places: Iterable[tuple[int, int]]) -> Searched:
    taken = frozenset(places)
    return replace(sheet, found=with_own_titles(find_tables(without_cells(sheet.offered, taken)))) if taken else sheet


def _keyed(sheet: Searched, bare: Searched, keys: Sequence[KeyTable], tables: Sequence[Table]) -> Searched:
    """The sheet with texts in place of those keys that explain some column of `tables`. `bare`: without all that may be
    keys."""
    said = {id(key): explaining(key, sheet.offered.sheet, tables) for key in keys}
    places = {place for key in keys for place in without_rows(key, said[id(key)])}
    if not places:
        return sheet
    rest = bare if all(key.places <= places for key in keys) else _without(sheet, places)
    every = [one for key in keys for one in said[id(key)]]
    own = _words(one for one in every if one.table in bare.found.tables)
    found = replace(rest.found, texts=tuple(sorted((*rest.found.texts, *own), key=_place)))
    return replace(sheet, found=found, keys=_words(every))


def _words(said: Iterable[SaidOf]) -> tuple[Words, ...]:
    return tuple(dict.fromkeys(one.words for one in said))


def _place(words: Words) -> tuple[int, int]:
    return words.row, words.cell.column
