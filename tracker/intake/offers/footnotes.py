"""Footnotes: a note that begins with a sign ('*', '¹', '2)', '(a)') holds for the rows that carry the sign, where any
does, and speaks of the money of the columns whose heads carry it."""

import re
from collections.abc import Iterable, Mapping
from dataclasses import replace

from tracker.intake.grid import Cell
from tracker.intake.offers.scope import Level
from tracker.intake.tables.table import Words
from tracker.intake.words.lists import phrases

_SIGN = r"\*+|[†‡§]+|[¹²³⁴⁵⁶⁷⁸⁹]+|\([\da-e]\)|\[[\da-e]\]|[\da-e]\)"
_AHEAD = re.compile(rf"\s*({_SIGN})\s*(?=[^\W\d])")
# 'g/m²' and '1000 ft²' end with their unit; '1)' is a sign only apart from the word before it.
_BEHIND = re.compile(r"(\*+|[†‡§]+|(?<![mM])(?<!ft)[¹²³⁴⁵⁶⁷⁸⁹]+|\([\da-e]\)|\[[\da-e]\]|(?<=\s)[\da-e]\))\s*$")
_RAISED = str.maketrans("¹²³⁴⁵⁶⁷⁸⁹", "123456789", "()[]")


def sign_ahead(text: str) -> str:
    """The sign that a note begins with, '' for none; '¹', '1)' and '(1)' are one."""
    found = _AHEAD.match(text)
    return found.group(1).translate(_RAISED) if found else ""


def sign_behind(text: str) -> str:
    """The sign that a cell of a table ends with, '' for none."""
    found = _BEHIND.search(text)
    return found.group(1).translate(_RAISED) if found else ""


_PARTS = re.compile(r"[,;]\s|\.\s")
_SIGNED = re.compile(rf"\s*({_SIGN})\s*(?=[^\W\d]|\(|$)")


def with_footnotes(level: Level) -> Level:
    """The level with each footnote that stands within a text as a text of its own."""
    texts = tuple(part for words in level.texts for part in _parted(words))
    return level if len(texts) == len(level.texts) else replace(level, texts=texts)


def _parted(words: Words) -> tuple[Words, ...]:
    """A text and the footnotes within it, each beginning with its sign.

    'Prices in EUR/t, those marked with * in EUR/kg' is the note '* those in EUR/kg' behind 'Prices in EUR/t'.
    """
    if not phrases("marked_with").find(words.text):
        return (words,)
    parts = [_as_note(part) for part in _PARTS.split(words.text)]
    plain = ", ".join(part for part in parts if not sign_ahead(part))
    notes = [part for part in parts if sign_ahead(part)]
    return tuple(replace(words, text=text) for text in (plain, *notes) if text)


def _as_note(part: str) -> str:
    """'mit * gekennzeichnete Preise in EUR/kg' as '* gekennzeichnete Preise in EUR/kg'."""
    for match in phrases("marked_with").find(part):
        sign = _SIGNED.match(part[match.end :])
        if sign is not None:
            return f"{sign[1]} {part[: match.start]}{part[match.end + sign.end() :]}"
    return part


class Footnotes:
    """The signs of some levels' notes that cells of a table's rows carry; its heads (by column) carry theirs for every
    row."""

    def __init__(self, levels: Iterable[Level], heads: Mapping[int, Iterable[Cell]], cells: Iterable[Cell]) -> None:
        noted = {sign_ahead(words.text) for level in levels for words in level.texts} - {""}
        self._headed = {index: noted & self._carried(above) for index, above in heads.items()} if noted else {}
        self._of_heads = frozenset().union(*self._headed.values())
        noted -= self._of_heads
        self.signs = frozenset(noted & self._carried(cells)) if noted else frozenset()

    @staticmethod
    def _carried(cells: Iterable[Cell]) -> set[str]:
        return {sign_behind(cell.text) for cell in cells if isinstance(cell.value, str)}

    def of_row(self, cells: Iterable[Cell]) -> frozenset[str]:
        """The signs that a row carries."""
        return self.signs & self._carried(cells) if self.signs else frozenset()

    def left(self, levels: tuple[Level, ...], carried: frozenset[str]) -> tuple[Level, ...]:
        """The levels without the notes whose sign other rows carry, and this one does not; its own come first."""
        if not self.signs:
            return levels
        own = tuple(near for level in levels if (near := _of_signs(level, carried)).texts)
        return own + tuple(_without(level, self.signs) for level in levels)

    def left_to_column(self, levels: tuple[Level, ...], column: int) -> tuple[Level, ...]:
        """The levels without the notes whose sign the heads of other columns carry, and this one's do not."""
        other = self._of_heads - self._headed.get(column, set())
        return tuple(_without(level, other) for level in levels) if other else levels


def _without(level: Level, signs: frozenset[str]) -> Level:
    texts = tuple(words for words in level.texts if sign_ahead(words.text) not in signs)
    return level if len(texts) == len(level.texts) else replace(level, texts=texts)


def _of_signs(level: Level, signs: frozenset[str]) -> Level:
    texts = tuple(words for words in level.texts if sign_ahead(words.text) in signs)
    return replace(level, texts=texts, beside=())
