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
from tracker.intake.values.notes.topics import OF_TERMS, topic_of
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.prices.units_of_codes import unit_led_to
from tracker.intake.values.times.lead_remarked import bare_lead
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import pattern, phrases

_OF_CODES = frozenset({None, Role.ITEM, Role.VENDOR, Role.PROPERTY, Role.BASIS})
"""What else a head may name is told by its own rules: boards, measures, places."""
_LONGEST = 12


@dataclass(frozen=True, slots=True)
class CodeMeant:
    """The column and the codes, folded, that a text is about, and what it says of them."""

    column: int
    codes: frozenset[str]
    rest: str


@dataclass(frozen=True, slots=True)
class _Entry:
    """A head's name and the codes behind it, from `start` to `end` of a text; `led`: a colon follows them."""

    name: str
    column: int
    codes: tuple[str, ...]
    start: int
    end: int
    led: bool


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
        self._held: dict[int, dict[str, str]] = {}

    def apart(self, level: Level) -> Level:
        """The level with what a text says of several codes, of the others and of all as texts of their own."""
        texts = tuple(replace(words, text=part) for words in level.texts for part in self._parts(words.text))
        return level if texts == level.texts else replace(level, texts=texts)

    def meant(self, words: Words) -> CodeMeant | None:
        """The codes that a text states terms or a unit of; None for any other text."""
        found = next(iter(self._entries(words.text)), None)
        if found is None or found.start:
            return None
        rest = words.text[found.end :].strip()
        if not statements(rest) and bare_lead(rest) is None:
            return None
        return CodeMeant(found.column, frozenset(map(fold, found.codes)), rest if _is_certain(rest) else "")

    def _parts(self, text: str) -> Iterator[str]:
        entries = self._entries(text)
        if not entries or entries[0].start:
            yield text
            return
        topic = ""
        for entry, end in zip(entries, [*(entry.start for entry in entries[1:]), len(text)], strict=True):
            own, *others = self._split(text[entry.end : end], entry, entries)
            topic = topic_of(own, *OF_TERMS) or topic
            bare = not statements(own) and bool(topic) and bool(statements(f"{topic} {own.strip()}"))
            said = f": {topic} {own.strip(_ENDS)}" if bare else own.rstrip(_ENDS)
            yield text[entry.start : entry.end].rstrip() + (said if bare or not entry.led else f" {said.strip()}")
            yield from others

    def _split(self, said: str, entry: _Entry, entries: list[_Entry]) -> Iterator[str]:
        """What is said behind codes, up to where it goes on about the others, or about all: 'Mill A delivers free, all
        others FOB mill', 'Mill A: FOB Dayton; minimum for all mills 10,000 lb'."""
        for joint in _BREAK.finditer(said):
            piece = said[joint.end() :]
            others = next((match for match in phrases("the_others").find(piece) if match.start == 0), None)
            if others is not None:
                yield said[: joint.start()]
                yield from self._of_others(piece[others.end :], entry, entries)
                return
            ends = "," not in joint[0] and len(entries) == 1
            if self._is_of_all(_BREAK.split(piece)[0], entry, ends=ends):
                yield said[: joint.start()]
                yield piece.strip(_ENDS)
                return
        yield said

    def _of_others(self, said: str, entry: _Entry, entries: list[_Entry]) -> Iterator[str]:
        """As a text about the codes that the text names nowhere."""
        named = {fold(code) for one in entries for code in one.codes}
        left = [code for folded, code in self._codes(entry.column).items() if folded not in named]
        said = re.sub(rf"^\s*{re.escape(entry.name)}[^\W\d_]{{0,3}}\b", "", said, flags=re.IGNORECASE)
        if left and all(_CODE.fullmatch(code) for code in left):
            yield f"{entry.name} {', '.join(left)}: {said.strip(f'{_ENDS}:=')}"

    def _is_of_all(self, piece: str, entry: _Entry, *, ends: bool) -> bool:
        """'All mills FOB Dayton' is; behind a full stop or semicolon also 'all prices in USD' and 'prices FOB mill B',
        which names another code."""
        name = re.escape(entry.name)
        for match in phrases("all_of_them").find(piece):
            if ends or re.match(rf"[\s\w]*?\s{name}", piece[match.end :], re.IGNORECASE):
                return True
        others = re.findall(rf"\b{name}\s+([^\s:=,;.]+)", piece, re.IGNORECASE) if ends else ()
        return any(fold(code) in self._codes(entry.column) for code in others)

    def _entries(self, text: str) -> list[_Entry]:
        for name, column in self._columns.items():
            found = [one for match in _label(name).finditer(text) if (one := self._entry(text, match, name, column))]
            # 'Mill A prices are FOB Dayton' begins with it; else a colon behind it tells it from other words.
            if found and (not found[0].start or any(one.led for one in found)):
                return found if not found[0].start else [one for one in found if one.led]
        return []

    def _entry(self, text: str, match: re.Match[str], name: str, column: int) -> _Entry | None:
        """The code behind the head's name, and those joined to it: 'Mill A and B', 'Mills A, B and C'."""
        codes, end = list[str](), match.end()
        while (code := _CODE.match(text, end)) is not None and fold(code[0].rstrip(".")) in self._codes(column):
            codes.append(code[0].rstrip("."))
            joint = _joint(name).match(text, code.start() + len(codes[-1]))
            behind = code.start() + len(codes[-1])
            end = joint.end() if joint is not None else len(text)
        if not codes or (match["plural"] and len(codes) == 1):
            return None
        colon = _COLON.match(text, behind)
        ends = behind if colon is None else colon.end()
        return _Entry(name, column, tuple(codes), match.start("label"), ends, colon is not None)

    def _codes(self, column: int) -> dict[str, str]:
        if column not in self._held:
            rows = (self._table.view.rows[row.index] for row in self._table.rows)
            cells = dict.fromkeys(cells[column].text.strip() for cells in rows if column in cells)
            self._held[column] = {fold(text): text for text in cells if len(text) <= _LONGEST}
        return self._held[column]


_ENDS = " ;,\n"
_BREAK = re.compile(r"\s*(?:[;\n]\s*|\.\s+|,\s+(?!\d))")
_CODE = re.compile(r"[^\s:=,;]+")
_COLON = re.compile(r"\s*[:=]|\s[-–—]\s")


def _is_certain(rest: str) -> bool:
    """'Figure is euros per tonne before the yearly bonus' is no unit of the code's rows, nor of any others."""
    priced = any(isinstance(said, SaysBasis | SaysCurrency) for said in statements(rest))
    return not priced or unit_led_to(COMMA.split(rest)[0]) is not None


@lru_cache(maxsize=256)
def _label(name: str) -> re.Pattern[str]:
    """The head's name, or its plural, at the beginning of a text or of one of its parts."""
    words = r"\s+".join(map(re.escape, name.split()))
    return re.compile(rf"(?:^|[;,.\n]\s*)(?P<label>{words}(?P<plural>[^\W\d_]{{0,2}}))\s+", re.IGNORECASE)


@lru_cache(maxsize=256)
def _joint(name: str) -> re.Pattern[str]:
    """Between codes that are meant together, with the name again or without it."""
    words = r"\s+".join(map(re.escape, name.split()))
    joints = rf"\s*[,&/+]\s*|\s+{pattern('range', 'and', 'or')}\s+"
    return re.compile(rf"(?:,?(?:{joints}))(?:{words}\s+)?", re.IGNORECASE)
