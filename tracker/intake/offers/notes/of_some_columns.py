"""Notes about some of a table's price columns only, by the sign, the words or the letter of their heads: kept from the
other prices, and put first for those that they are about."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from tracker.intake.columns.column import PriceColumn
from tracker.intake.columns.groups.names import names_of
from tracker.intake.offers.notes.footnotes import signs_in_heads
from tracker.intake.offers.notes.of_some_lines import of_own
from tracker.intake.offers.notes.scope import Level, Scope
from tracker.intake.tables.table import Words
from tracker.intake.values.changes.price_changes import ChangesPrice
from tracker.intake.values.freight.relieved_charges import NoCharge
from tracker.intake.values.heads.column_legend import behind_column_named, column_named
from tracker.intake.values.heads.columns_meant import Piece, columns_apart
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.lines_meant import TERMS
from tracker.intake.values.notes.note_signs import sign_ahead, without_sign
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.orders.terms_by_size import terms_by_size
from tracker.intake.values.times.lead_remarked import lead_of_some


class OfSomeColumns:
    """What the texts around a table say of each of its price columns; `parted`: those whose parts are known already."""

    def __init__(
        self, offers: Sequence[PriceColumn], levels: Iterable[Level], parted: Mapping[Words, tuple[Piece, ...]]
    ) -> None:
        self._names = names_of(offers)
        self._signs = {price.index: signs_in_heads(price.column.heads) for price in offers}
        texts = (words for level in levels for words in level.texts)
        self._apart = {words: apart for words in texts if (apart := parted.get(words) or self._pieces(words.text))}
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
        """The parts of a text that are about some columns each; () where it tells none apart, or states no terms, and
        where it tells them apart by how much is ordered, which the size of each column's orders settles."""
        said = without_sign(text)
        if terms_by_size(said):
            return ()
        apart = columns_apart(said, self._names)
        if not apart:
            signed = self._signed(text)
            apart = (Piece(said, signed),) if signed else self._lettered(said)
        return apart if any(piece.columns is not None and states_terms(piece.text) for piece in apart) else ()

    def _signed(self, text: str) -> frozenset[int]:
        """The columns whose heads carry the sign that a note begins with, where others do not."""
        sign = sign_ahead(text)
        columns = frozenset(index for index, signs in self._signs.items() if sign in signs) if sign else frozenset()
        return columns if columns != self._names.every else frozenset()

    def _lettered(self, text: str) -> tuple[Piece, ...]:
        """'Column D: USD per short ton; column E: EUR per tonne': what each clause says of its price column."""
        letters = {clause: column_named(clause) for clause in clauses(text)}
        if not self._names.every.intersection(letters.values()):
            return ()
        return tuple(
            Piece(behind_column_named(clause), None if letter is None else frozenset({letter}))
            for clause, letter in letters.items()
        )


_STATED = (*TERMS, ChangesPrice, NoCharge)


def states_terms(text: str) -> bool:
    """Whether a part of a note says what prices come with or changes them."""
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
