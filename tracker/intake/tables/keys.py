"""Letters over columns that a key explains: 'A | B | C' over prices, and 'A = less than 10,000 lb' below them."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import replace
from itertools import pairwise

from tracker.intake.tables.table import HeadedColumn, SheetTables, Table, Words
from tracker.intake.values.brackets import bracket_text
from tracker.intake.words.fold import fold

_FEWEST = 2
_PARTS = re.compile(r"[;\n]|,\s(?=\S{1,6}\s*[=:])")
_ENTRY = re.compile(r"\s*(?P<code>[^\s=:]{1,6})\s*(?:[=:]|\s[-–—]\s)\s*(?P<said>[^=]+?)\s*")


def with_keyed_heads(found: SheetTables) -> SheetTables:
    """The tables with the order sizes that a key gives in place of the letters that stand for them.

    Only where the key explains two heads of one table at least: a single letter may mean anything.
    """
    key = _key(found)
    if len(key) < _FEWEST:
        return found
    return replace(found, tables=tuple(_explained(table, key) for table in found.tables))


def _key(found: SheetTables) -> dict[str, str]:
    """Letter, folded -> the order size that it stands for; one explained two ways is left out."""
    key: dict[str, str] = {}
    clashing: set[str] = set()
    for code, said in _entries(found):
        if key.setdefault(code, said) != said:
            clashing.add(code)
    return {code: said for code, said in key.items() if code not in clashing}


def _entries(found: SheetTables) -> Iterator[tuple[str, str]]:
    for words in _around(found):
        for part in _PARTS.split(words.text):
            entry = _ENTRY.fullmatch(part)
            if entry is not None and bracket_text(entry["said"]) is not None:
                yield fold(entry["code"]).strip(), entry["said"]
    for name, said in pairwise(_around(found)):
        beside = name.row == said.row and name.cell.column + 1 == said.cell.column
        if beside and bracket_text(said.text) is not None:
            yield fold(name.text).strip(" :="), said.text


def _around(found: SheetTables) -> list[Words]:
    own = (words for table in found.tables for words in (*table.titles, *table.notes))
    return sorted({*found.texts, *own}, key=lambda words: (words.row, words.cell.column))


def _explained(table: Table, key: Mapping[str, str]) -> Table:
    named = [column for column in table.columns if column.heads and fold(column.heads[-1].text).strip() in key]
    if len(named) < _FEWEST:
        return table
    columns = tuple(_headed(column, key) if column in named else column for column in table.columns)
    return replace(table, columns=columns)


def _headed(column: HeadedColumn, key: Mapping[str, str]) -> HeadedColumn:
    *above, lowest = column.heads
    said = key[fold(lowest.text).strip()]
    return replace(column, heads=(*above, lowest._replace(value=said, text=said)))
