"""The currency and the basis of one price column's cells, from all that is said at and around them."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from enum import Enum, auto
from functools import cached_property, lru_cache
from typing import TypeVar

from tracker.intake.columns.column import Column, PriceColumn, basis_in_head, may_name_form
from tracker.intake.columns.sizes.forms import form_named
from tracker.intake.grid import Cell
from tracker.intake.offers.boards.boards_held import ANY_BOARD, BoardPriced
from tracker.intake.offers.boards.legend import is_of_codes
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.parts_of_rows import of_parts
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.notes.scope import HEADING, Level, Scope
from tracker.intake.offers.prices.no_currency import counted_or_marked
from tracker.intake.offers.prices.of_all_prices import (
    excepts,
    is_of_that_unit,
    leaves_out,
    of_all_prices,
    of_some_invoices,
    of_these_prices,
)
from tracker.intake.offers.prices.settle import Claim, Settled, settle
from tracker.intake.offers.prices.units_of_boards import is_in_doubt, is_of_other_boards, left_open, of_board
from tracker.intake.values.heads.column_legend import column_named
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.notes.unless import unless_at
from tracker.intake.values.prices.basis import BasisReading
from tracker.intake.values.prices.currency import CurrencyReading
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.prices.units_of_parts import parts_named
from tracker.intake.words.lists import phrases
from tracker.trade.basis import Basis

S = TypeVar("S", SaysBasis, SaysCurrency)

Bases = frozenset[str]
"""Bases as text, so that 'foreign:ream' stands beside the ones that are converted."""

_FOREIGN = "foreign:"


class Nearer(Enum):
    """Whether a nearer text has spoken of the same: of one table among others, or of the sheet's only one."""

    SILENT = auto()
    SAYS = auto()
    SAYS_OF_ALL = auto()


@dataclass(frozen=True)
class Around:
    """What is said about money around a price column for some rows: claims that its cells share, level by level."""

    currency: tuple[tuple[Claim[str], ...], ...]
    basis: tuple[tuple[Claim[str], ...], ...]
    cents: bool

    @cached_property
    def settled(self) -> tuple[Settled[str], Settled[str]]:
        """Currency and basis of a cell that says nothing of either itself."""
        return settle(self.currency), settle(self.basis)


@dataclass(frozen=True, slots=True)
class Claimed:
    """Currencies and bases that the headers, unit columns and formats of a sheet's tables speak of; `headed`: the bases
    of headers alone; `own`: those of the table itself."""

    currencies: frozenset[str] = frozenset()
    bases: frozenset[str] = frozenset()
    headed: frozenset[str] = frozenset()
    own: "Claimed | None" = None

    def around(self, level: Level) -> "Claimed":
        """Those that a level's texts may be about: a title over one of several tables is about no other."""
        return self.own if level.of_table and self.own is not None else self

    def beside(self, bases: Bases) -> bool:
        """Whether another column of the same table has its prices on one of these."""
        return self.own is not None and bool(bases & self.own.headed)


def currency_claim(reading: CurrencyReading, where: str, words: str, excused: bool = False) -> Claim[str]:
    counted = counted_or_marked(reading, words)
    return Claim(frozenset(counted + code for code in reading.codes), where, words, excused)


def basis_claim(reading: BasisReading, where: str, words: str, facts: FileFacts, excused: bool = False) -> Claim[str]:
    return Claim(bases_of(reading, facts), where, words, excused, reading.metric_hint)


def bases_of(reading: BasisReading, facts: FileFacts) -> frozenset[str]:
    """The bases that a reading leaves open in this file, "foreign:ream" among them."""
    if reading.metric_hint and facts.makes_tonne(reading.words):
        return frozenset({Basis.TONNE.value})
    bases = frozenset(basis.value for basis in reading.bases)
    return bases if reading.foreign is None else bases | {_FOREIGN + reading.foreign}


def foreign_unit(value: str) -> str | None:
    """The unit that can't be converted ('ream', 'long ton'), or None for a basis."""
    return value.removeprefix(_FOREIGN).replace("_", " ") if value.startswith(_FOREIGN) else None


def around(
    column: PriceColumn, scope: Scope, claimed: Claimed, facts: FileFacts, board: BoardPriced = ANY_BOARD,
    parts: frozenset[str] = frozenset(),
) -> Around:  # fmt: skip
    """Claims of the column's own header, then of the levels around it, for the rows of one board; `parts`: the forms
    and markets that the rows name."""
    heads = column.column
    prices = _Prices(column.index, board, parts_named(heads.text) or form_named(heads) or parts)
    currency: list[tuple[Claim[str], ...]] = []
    basis: list[tuple[Claim[str], ...]] = []
    # A nearer text (a heading, a table's title) overrides every farther one without contradicting it.
    nearer_currency = nearer_basis = Nearer.SILENT
    for level in scope.levels:
        currencies = _firm_first(_stated_currency(level, prices, claimed, facts, nearer_currency))
        bases = _firm_first(_stated_basis(level, prices, claimed, facts, nearer_basis))
        currency.append(currencies)
        basis.append(bases)
        nearer_currency = _then_nearer(nearer_currency, level) if _are_told(currencies) else nearer_currency
        nearer_basis = _then_nearer(nearer_basis, level) if _are_told(bases) else nearer_basis
    if column.lender is not None:
        currency.append(tuple(replace(claim, excused=True) for claim in _head_currencies(column.lender)))
        basis.append(tuple(replace(claim, excused=True) for claim in _head_bases(column.lender, facts)))
    _put_head(currency, _head_currencies(heads), _said_anew(scope, SaysCurrency))
    _put_head(basis, _head_bases(heads, facts), _said_anew(scope, SaysBasis))
    basis.append(tuple(_head_forms(heads, facts)))
    return Around(tuple(currency), tuple(basis), _in_cents(column, scope, prices, facts))


def _put_head(claims: list[tuple[Claim[str], ...]], of_head: Iterable[Claim[str]], anew: bool) -> None:
    """The head is nearer than all texts, but for one that says something else of the rows below it."""
    claims.insert(len(claims) if anew else 0, tuple(replace(claim, excused=claim.excused or anew) for claim in of_head))


def _said_anew(scope: Scope, kind: type[SaysCurrency] | type[SaysBasis]) -> bool:
    """'From here down prices are US$ per MSF' among the rows: the heads hold for those above."""
    said = (one for level in scope.levels if level.name == HEADING for one in level.all_of(kind))
    return any(phrases("from_here_on").find(one.words) for one in said)


def _then_nearer(nearer: Nearer, level: Level) -> Nearer:
    """What is nearer once a level has spoken too: behind a heading of some rows the title of a sheet's only table is
    about others as well."""
    return Nearer.SAYS_OF_ALL if level.sole and nearer is not Nearer.SAYS else Nearer.SAYS


def _are_told(claims: tuple[Claim[str], ...]) -> bool:
    return not all(claim.doubted for claim in claims)


def _in_cents(column: PriceColumn, scope: Scope, prices: "_Prices", facts: FileFacts) -> bool:
    """The nearest that names the money decides: the column's head, the texts around, the head that lends its unit.

    'a = per short ton, d = cents per lb' says so of the rows marked d alone.
    """
    if column.column.currencies:
        return any(reading.cents for reading in column.column.currencies)
    levels = (tuple(prices.heard(level.all_of(SaysCurrency), facts)) for level in scope.levels)
    around = next(filter(None, levels), ())
    if around or column.lender is None:
        return any(said.value.currency.cents for said in around)
    return any(reading.cents for reading in column.lender.currencies)


def _firm_first(claims: Iterable[Claim[str]]) -> tuple[Claim[str], ...]:
    """What gives way is heard last: 'prices per short ton unless marked' stands beside '* per cwt' of a marked row."""
    return tuple(sorted(claims, key=lambda claim: claim.excused))


def _head_currencies(column: Column) -> Iterator[Claim[str]]:
    for cell in column.heads:
        yield from comment_currencies(cell)
    for cell, head in reversed(list(zip(column.heads, column.said, strict=True))):
        if head.currency is not None:
            yield currency_claim(head.currency, at(cell), cell.text, unless_at(cell.text) is not None)


def comment_currencies(cell: Cell) -> Iterator[Claim[str]]:
    """The currencies that a comment on a cell says its prices are in: 'GBP per tonne'."""
    for said in statements(cell.comment) if cell.comment else ():
        if isinstance(said, SaysCurrency):
            yield currency_claim(said.currency, at(cell), cell.comment)


def comment_bases(cell: Cell, facts: FileFacts) -> Iterator[Claim[str]]:
    """What a comment on a cell says its prices are per."""
    for said in statements(cell.comment) if cell.comment else ():
        if isinstance(said, SaysBasis):
            yield basis_claim(said.basis, at(cell), cell.comment, facts)


def _head_bases(column: Column, facts: FileFacts) -> Iterator[Claim[str]]:
    for cell in column.heads:
        yield from comment_bases(cell, facts)
    for cell, head in reversed(list(zip(column.heads, column.said, strict=True))):
        basis = basis_in_head(head)
        if basis is not None and not may_name_form(head, basis):
            yield basis_claim(basis, at(cell), cell.text, facts, unless_at(cell.text) is not None)


def _head_forms(column: Column, facts: FileFacts) -> Iterator[Claim[str]]:
    """'Roll price' is per roll where nothing else says what it is per, and the price of rolls below 'US$ per ton'."""
    for cell, head in zip(column.heads, column.said, strict=True):
        basis = basis_in_head(head)
        if basis is not None and may_name_form(head, basis):
            yield basis_claim(basis, at(cell), cell.text, facts, excused=True)


@dataclass(frozen=True, slots=True)
class _Prices:
    """Those that are asked about: of one column, in rows of one board and of some forms and markets."""

    column: int
    board: BoardPriced
    parts: frozenset[str]

    def heard(self, said: tuple[Said[S], ...], facts: FileFacts) -> Iterator[Said[S]]:
        """Of what a level states, what is said of these prices."""
        for one in of_board(of_parts(said, self.parts, self.board), self.board):
            of_codes = one.words in facts.coded_texts and is_of_codes(one.value.words, one.words)
            if column_named(one.value.words) in (None, self.column) and not of_codes:
                yield one


def _stated_currency(
    level: Level, prices: _Prices, claimed: Claimed, facts: FileFacts, nearer: Nearer
) -> Iterator[Claim[str]]:
    of_others: list[Claim[str]] = []
    for said in prices.heard(level.all_of(SaysCurrency), facts):
        reading = said.value.currency
        doubted = is_in_doubt(said.value, prices.board)
        if of_some_invoices(said.value.words, reading.words) and not doubted:
            continue
        words = _clause_saying(said.words, reading.words)
        named = claimed.around(level).currencies.intersection(reading.codes)
        excused = _gives_way(words, nearer) or (bool(named) and not of_all_prices(words, reading.words))
        claim = replace(currency_claim(reading, said.where, words, excused and not doubted), doubted=doubted)
        if is_of_other_boards(said.value, prices.board):
            of_others.append(claim)
        else:
            yield claim
    yield from left_open(of_others)


def _stated_basis(
    level: Level, prices: _Prices, claimed: Claimed, facts: FileFacts, nearer: Nearer
) -> Iterator[Claim[str]]:
    of_others: list[Claim[str]] = []
    for said in prices.heard(level.all_of(SaysBasis), facts):
        if not said.value.parts and excepts(said.words, prices.parts):
            continue
        bases = bases_of(said.value.basis, facts)
        unit = said.value.basis.words
        words = _clause_saying(said.words, unit)
        elsewhere = bool(bases & claimed.around(level).bases) and not of_all_prices(words, unit)
        elsewhere = elsewhere or claimed.beside(bases) or leaves_out(said.words, prices.parts)
        excused = _gives_way(words, nearer) or elsewhere or is_of_that_unit(words, unit)
        of_rows = level.of_row or level.of_some or level.name == HEADING
        doubted = is_in_doubt(said.value, prices.board)
        claim = basis_claim(said.value.basis, said.where, words, facts, excused and not doubted)
        claim = replace(claim, of_rows=of_rows, doubted=doubted)
        if is_of_other_boards(said.value, prices.board):
            of_others.append(claim)
        else:
            yield claim
    yield from left_open(of_others)


def _gives_way(words: str, nearer: Nearer) -> bool:
    """'Prices per 100 lb unless marked' gives way to what is marked, and a text far off to a nearer one; beside the
    title of a sheet's only table, what speaks of these prices as well does not."""
    if nearer is Nearer.SAYS or unless_at(words) is not None:
        return True
    return nearer is Nearer.SAYS_OF_ALL and not of_these_prices(words)


@lru_cache(maxsize=1024)
def _clause_saying(text: str, words: str) -> str:
    """The part of a text that speaks of money: a quotation's number and date beside it change from sheet to sheet, and
    an answer about it is remembered by its words."""
    return next((clause for clause in clauses(text) if words in clause), text)
