"""Rows that a bare 'x' marks beside 'Prices in CDN$ unless marked US$': their prices are in the currency excepted."""

import re
from collections.abc import Iterable
from typing import Protocol

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.notes.said import at
from tracker.intake.offers.prices.settle import Claim
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.clauses import sentences_of
from tracker.intake.values.notes.money_of_marked import money_excepted
from tracker.intake.values.notes.note_signs import SIGN, sign_ahead
from tracker.intake.values.prices.money_ticked import says_yes
from tracker.intake.words.lists import phrases

_SIGN = re.compile(SIGN)
_KEYED = re.compile(r"\W*(\w+)\s*[=:]")


class HasTexts(Protocol):
    """A sheet, by all that it says."""

    def all_texts(self) -> tuple[str, ...]: ...


class MoneyOfMarks:
    """What a file says of the money of marked rows, and which signs it explains otherwise."""

    def __init__(self, sheets: Iterable[HasTexts]) -> None:
        texts = {text for sheet in sheets for text in sheet.all_texts()}
        sentences = {sentence for text in texts for sentence in sentences_of(text)}
        told = {sentence: said for sentence in sentences if (said := money_excepted(sentence)) is not None}
        self.codes = frozenset(code for said in told.values() for code in said.marked.codes)
        self._more = any(said.rebased for said in told.values())
        self._more |= any(map(_speaks_of_marks, sentences - told.keys()))
        self._explained = {sign_ahead(text) for text in texts}
        self._explained |= {key[1].casefold() for text in texts if (key := _KEYED.match(text))}

    def may_mean(self, mark: str) -> bool:
        """Whether a mark is one that no text explains: 'x', '*'."""
        if _SIGN.fullmatch(mark) is not None:
            return sign_ahead(f"{mark} a") not in self._explained
        return says_yes(mark) and mark.casefold() not in self._explained

    @property
    def certain(self) -> bool:
        """Whether marks stand for one currency, and for nothing else."""
        return len(self.codes) == 1 and not self._more


def _speaks_of_marks(sentence: str) -> bool:
    return bool(phrases("marked").find(sentence)) and phrases("mark_heads").whole(sentence.strip(_STOPS)) is None


_STOPS = " .:"


def ticked_rows(cells: dict[int, Cell], columns: Columns, money: MoneyOfMarks) -> tuple[Claim[str], ...]:
    """What the marks below 'Marked' say of the row's price; in doubt where they may mean something else as well."""
    heads = [one for one in columns.of(Role.REMARKS) if phrases("mark_heads").whole(one.text.strip(_STOPS)) is not None]
    marks = [cells[head.index] for head in heads if head.index in cells] if money.codes else []
    meant = [cell for cell in marks if money.may_mean(cell.text.strip())]
    return tuple(Claim(money.codes, at(cell), cell.text.strip(), doubted=not money.certain) for cell in meant)
