"""Texts about the rows with a code under the head that they call it by: 'Mill A: US dollars per short ton, FOB Dayton'
says nothing of mill T."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import lru_cache

from tracker.intake.columns.column import Columns
from tracker.intake.offers.notes.scope import Level
from tracker.intake.tables.table import Table, Words
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.prices.units_of_codes import unit_led_to
from tracker.intake.words.fold import fold

_OF_CODES = frozenset({None, Role.ITEM, Role.VENDOR, Role.PROPERTY, Role.BASIS})
"""What else a head may name is told by its own rules: boards, measures, places."""
_LONGEST = 12


@dataclass(frozen=True, slots=True)
class CodeMeant:
    """The column and the code, folded, that a text is about, and what it says of them."""

    column: int
    code: str
    rest: str


class CodesNamed:
    """The columns of a table that hold codes, by their heads, and what they hold."""

    def __init__(self, table: Table, columns: Columns) -> None:
        self._table = table
        known = {column.index: role for role, found in columns.by_role.items() for column in found}
        self._columns = {
            name: column.index
            for column in (() if table.view.passing else table.columns)
            if known.get(column.index) in _OF_CODES and (name := column.called.strip(" :.")) and "\n" not in name
        }
        self._held: dict[int, frozenset[str]] = {}

    def apart(self, level: Level) -> Level:
        """The level with what a text says of several codes as texts of their own."""
        texts = tuple(replace(words, text=part) for words in level.texts for part in self._parts(words.text))
        return level if texts == level.texts else replace(level, texts=texts)

    def meant(self, words: Words) -> CodeMeant | None:
        """The code that a text states terms or a unit of; None for any other text."""
        found = next(self._entries(words.text), None)
        if found is None or found[0].start("label") or not statements(words.text[found[0].end() :]):
            return None
        match, column = found
        rest = words.text[match.end() :].strip()
        return CodeMeant(column, fold(match["code"]), rest if _is_certain(rest) else "")

    def _parts(self, text: str) -> Iterator[str]:
        starts = [match.start("label") for match, _ in self._entries(text)]
        if len(starts) < _SEVERAL or starts[0]:
            yield text
            return
        for start, end in zip(starts, [*starts[1:], len(text)], strict=True):
            yield text[start:end].strip(" ;,\n")

    def _entries(self, text: str) -> Iterator[tuple[re.Match[str], int]]:
        for name, column in self._columns.items():
            found = [match for match in _entry(name).finditer(text) if self._names_code(match, column)]
            if found:
                yield from ((match, column) for match in found)
                return

    def _names_code(self, match: re.Match[str], column: int) -> bool:
        """'Mill A prices are FOB Dayton' begins with it; within a text a colon behind it tells it from other words."""
        told = match.start() == 0 or match["colon"] is not None
        return told and fold(match["code"]) in self._codes(column)

    def _codes(self, column: int) -> frozenset[str]:
        if column not in self._held:
            rows = (self._table.view.rows[row.index] for row in self._table.rows)
            cells = {cells[column].text.strip() for cells in rows if column in cells}
            self._held[column] = frozenset(fold(text) for text in cells if len(text) <= _LONGEST)
        return self._held[column]


_SEVERAL = 2


def _is_certain(rest: str) -> bool:
    """'Figure is euros per tonne before the yearly bonus' is no unit of the code's rows, nor of any others."""
    priced = any(isinstance(said, SaysBasis | SaysCurrency) for said in statements(rest))
    return not priced or unit_led_to(COMMA.split(rest)[0]) is not None


@lru_cache(maxsize=256)
def _entry(name: str) -> re.Pattern[str]:
    """The code behind the head's name, at the beginning of a text, or of one of its parts and before a colon."""
    words = r"\s+".join(map(re.escape, name.split()))
    code = r"(?P<code>[^\s:=,;]+)(?P<colon>\s*[:=]|\s[-–—]\s)?"
    return re.compile(rf"(?:^|[;,.\n]\s*)(?P<label>{words})\s+{code}", re.IGNORECASE)
