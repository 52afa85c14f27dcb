"""Rows that a bare 'x' marks beside 'Prices in CDN$ unless marked US$': their prices are in the currency excepted."""

import re
from collections.abc import Iterable, Iterator
from functools import cached_property

from tracker.intake.columns.column import Column, Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.notes.said import at
from tracker.intake.offers.prices.settle import Claim
from tracker.intake.offers.sheet import ReadSheet
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.clauses import sentences_of
from tracker.intake.values.notes.money_of_marked import money_excepted
from tracker.intake.values.notes.note_signs import SIGN, sign_ahead
from tracker.intake.values.prices.money_ticked import says_yes
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found

_SIGN = re.compile(SIGN)
_KEYED = re.compile(r"\W*(\w+)\s*[=:]")


class MoneyOfMarks:
    """What a file says of the money of marked rows, and which signs it explains otherwise."""

    def __init__(self, sheets: Iterable[ReadSheet]) -> None:
        sheets = tuple(sheets)
        texts = {text for sheet in sheets for text in sheet.all_texts()}
        sentences = {sentence for text in texts for sentence in sentences_of(text)}
        told = {sentence: said for sentence in sentences if (said := money_excepted(sentence)) is not None}
        self.codes = frozenset(code for said in told.values() for code in said.marked.codes)
        self._more = any(said.rebased for said in told.values())
        self._more |= any(map(_speaks_of_marks, sentences - told.keys()))
        self._explained = {sign_ahead(text) for text in texts}
        self._explained |= {key[1].casefold() for text in texts if (key := _KEYED.match(text))}
        self._others = tuple(sentences - told.keys())
        self._sheets = sheets

    def may_mean(self, mark: str) -> bool:
        """Whether a mark is one that no text explains: 'x', '*'."""
        if _SIGN.fullmatch(mark) is not None:
            return sign_ahead(f"{mark} a") not in self._explained
        return says_yes(mark) and mark.casefold() not in self._explained

    @cached_property
    def certain(self) -> bool:
        """Whether marks stand for one currency, and for nothing else: there is one kind of them, and no other sentence
        speaks of it."""
        if len(self.codes) != 1 or self._more:
            return False
        used = {mark.casefold() for sheet in self._sheets for mark in _marks_of(sheet) if self.may_mean(mark)}
        return len(used) == 1 and not any(_names(sentence, mark) for sentence in self._others for mark in used)


def _marks_of(sheet: ReadSheet) -> Iterator[str]:
    for read in sheet.tables:
        for column in _mark_columns(read.columns):
            yield from (cell.text.strip() for cell in read.cells(column))


def _names(sentence: str, mark: str) -> bool:
    """'An x means FSC certified', '(x) stock items', and not '20 x 30 in'."""
    alone = rf"(?<![^\s(\[\"'“„«]){re.escape(mark)}(?![^\s)\]\"'”“»,;:.=–—-])"
    found = re.search(alone, _BY.sub(" ", sentence), re.IGNORECASE)
    return found is not None


_BY = re.compile(r"\d[^\W\d]*\s*[xX×]\s*(?=\d)")


def _speaks_of_marks(sentence: str) -> bool:
    """'Marked grades are made to order', 'Grades with a mark ship from stock'; no person called Mark."""
    if phrases("mark_heads").whole(sentence.strip(_STOPS)) is not None:
        return False
    found = [*phrases("marked").find(sentence), *phrases("mark_heads").find(sentence)]
    return any(not _is_a_name(sentence, match) for match in found)


def _is_a_name(sentence: str, match: Found[str]) -> bool:
    words = _WORDS.findall(sentence)
    capitals = all(word[0].isupper() for word in words)
    return capitals and len(words) > 1 and sentence[match.end :][:1] != ":"


_WORDS = re.compile(r"[^\W\d_]+")


def _mark_columns(columns: Columns) -> list[Column]:
    heads = columns.of(Role.REMARKS)
    return [head for head in heads if phrases("mark_heads").whole(head.text.strip(_STOPS)) is not None]


_STOPS = " .:"


def ticked_rows(cells: dict[int, Cell], columns: Columns, money: MoneyOfMarks) -> tuple[Claim[str], ...]:
    """What the marks below 'Marked' say of the row's price; in doubt where they may mean something else as well."""
    heads = _mark_columns(columns) if money.codes else []
    marks = [cells[head.index] for head in heads if head.index in cells]
    meant = [cell for cell in marks if money.may_mean(cell.text.strip())]
    return tuple(Claim(money.codes, at(cell), cell.text.strip(), doubted=not money.certain) for cell in meant)
