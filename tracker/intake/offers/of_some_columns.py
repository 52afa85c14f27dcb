"""Notes about some of a table's price columns only, by the sign, the words or the letter of their heads: kept from the
other prices, and put first for those that they are about."""

import re
from collections.abc import Iterable, Sequence
from dataclasses import replace

from tracker.intake.columns.column import PriceColumn
from tracker.intake.offers.footnotes import signs_in_heads
from tracker.intake.offers.of_some_lines import of_own
from tracker.intake.offers.scope import Level, Scope
from tracker.intake.tables.table import Words
from tracker.intake.values.column_legend import behind_column_named, column_named
from tracker.intake.values.columns_meant import ColumnNames, Piece, columns_apart
from tracker.intake.values.lines_meant import TERMS, lead_of_some
from tracker.intake.values.note_signs import sign_ahead, without_sign
from tracker.intake.values.price_changes import ChangesPrice
from tracker.intake.values.relieved_charges import NoCharge
from tracker.intake.values.statements import statements
from tracker.intake.values.ways import ways_named
from tracker.intake.words.phrases import tokens_of


class OfSomeColumns:
    """What the texts around a table say of each of its price columns."""

    def __init__(self, offers: Sequence[PriceColumn], levels: Iterable[Level]) -> None:
        self._names = names_of(offers)
        self._signs = {price.index: signs_in_heads(price.column.heads) for price in offers}
        self._apart = {words: apart for level in levels for words in level.texts if (apart := self._pieces(words.text))}
        self._scopes: dict[tuple[int, int], tuple[Scope, Scope]] = {}

    def left_to(self, scope: Scope, column: int) -> Scope:
        """The scope of one column's prices: without what is said of others alone, with its own first."""
        if not self._apart:
            return scope
        key = (id(scope), column)
        if key not in self._scopes:
            levels = (*_own(scope, self._apart, column), *(_of_all(level, self._apart) for level in scope.levels))
            # The scope itself is kept as well, so that no other gets its place in memory.
            self._scopes[key] = (scope, replace(scope, levels=levels))
        return self._scopes[key][1]

    def _pieces(self, text: str) -> tuple[Piece, ...]:
        """The parts of a text that are about some columns each; () where it tells none apart, or states no terms."""
        said = without_sign(text)
        apart = columns_apart(said, self._names)
        if not apart:
            columns = self._signed(text) or self._lettered(text)
            apart = (Piece(behind_column_named(said), columns),) if columns else ()
        return apart if any(piece.columns is not None and _states_terms(piece.text) for piece in apart) else ()

    def _signed(self, text: str) -> frozenset[int]:
        """The columns whose heads carry the sign that a note begins with, where others do not."""
        sign = sign_ahead(text)
        columns = frozenset(index for index, signs in self._signs.items() if sign in signs) if sign else frozenset()
        return columns if columns != self._names.every else frozenset()

    def _lettered(self, text: str) -> frozenset[int]:
        letter = column_named(text)
        return frozenset() if letter is None else frozenset({letter}) & self._names.every


_STATED = (*TERMS, ChangesPrice, NoCharge)


def _states_terms(text: str) -> bool:
    return any(isinstance(said, _STATED) for said in statements(text)) or lead_of_some(text) is not None


def _own(scope: Scope, apart: dict[Words, tuple[Piece, ...]], column: int) -> Iterable[Level]:
    for level in scope.levels:
        texts = tuple(
            replace(words, text=piece.text)
            for words in level.texts
            for piece in apart.get(words, ())
            if piece.columns is not None and column in piece.columns
        )
        if texts:
            yield of_own(level, texts)


def _of_all(level: Level, apart: dict[Words, tuple[Piece, ...]]) -> Level:
    texts = tuple(
        words if words not in apart else replace(words, text=". ".join(general))
        for words in level.texts
        if (general := [piece.text for piece in apart.get(words, ()) if piece.columns is None]) or words not in apart
    )
    return level if texts == level.texts else replace(level, texts=texts)


_ASIDE = re.compile(r"\s*\([^()]*\)")
_COUNTED = re.compile(r"([^\W\d_]{3,})\s*(\d{1,3}|[a-z])")
_SHORTEST = 3


def names_of(offers: Sequence[PriceColumn]) -> ColumnNames:
    """What tells price columns apart: 'Zone 1 (to 250 mi) | Zone 2' by number, 'Delivered Arkham | Delivered Salem' by
    place, 'Pellgate Board | Dunmarrow Mill' by firm. Boards, forms and order sizes are told apart elsewhere."""
    labels = {price.index: _label(price) for price in offers}
    named: dict[tuple[str, ...], frozenset[int]] = {}
    counted: dict[str, dict[str, frozenset[int]]] = {}
    shared = _shared(list(labels.values()))
    for index, words in labels.items():
        text = " ".join(words)
        number = _COUNTED.fullmatch(text)
        if number is not None:
            signs = counted.setdefault(number[1], {})
            signs[number[2]] = signs.get(number[2], frozenset()) | {index}
            continue
        own = tuple(word for word in words if word not in shared)
        if own and max(map(len, own)) >= _SHORTEST and own[0].isalpha() and not ways_named(" ".join(own)):
            named[own] = named.get(own, frozenset()) | {index}
    return ColumnNames(frozenset(labels), named, counted)


def _label(price: PriceColumn) -> tuple[str, ...]:
    """The words of a price's name, without what stands in brackets; none where another reader knows what they mean."""
    if price.grade is not None or price.caliper is not None or price.weights:
        return ()
    label = _ASIDE.sub("", price.vendor or price.label)
    return tuple(word for word, *_ in tokens_of(label) if word.isalnum())


def _shared(labels: Sequence[tuple[str, ...]]) -> frozenset[str]:
    """The words that all names have, such as 'delivered'; of a single column none tells anything."""
    return frozenset(labels[0]).intersection(*labels[1:]) if labels else frozenset()
