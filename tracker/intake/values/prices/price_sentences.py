"""What a clause says of all prices: their currency, and what they are per."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import TypeVar

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.money_of_marked import money_excepted
from tracker.intake.values.notes.topics import OF_TERMS, topic_of
from tracker.intake.values.orders.bracket_pieces import VEHICLES
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.prices.amounts_named import names_amount
from tracker.intake.values.prices.basis import BasisReading, basis_span, basis_text, find_basis
from tracker.intake.values.prices.clauses_of_others import (
    is_of_others,
    without_other_lists,
    without_other_money,
    without_payment,
    without_weights,
)
from tracker.intake.values.prices.currency import CurrencyReading, currency_text, find_currencies
from tracker.intake.values.prices.exchange import beside_exchange
from tracker.intake.values.prices.goods_by_unit import boards_by_unit
from tracker.intake.values.prices.money import PriceUnit, find_price_unit
from tracker.intake.values.prices.other_times import without_other_times
from tracker.intake.values.prices.pounds_of_money import with_pounds_as_money
from tracker.intake.values.prices.several_bases import bases_side_by_side, one_of
from tracker.intake.values.prices.units_by_board import (
    OF_ALL,
    OfBoards,
    units_by_board,
)
from tracker.intake.values.prices.units_in_doubt import is_of_a_later_day
from tracker.intake.values.prices.worded_basis import is_of_prices, may_tell_a_unit, worded_basis
from tracker.intake.words.lists import phrases
from tracker.trade.basis import Basis

U = TypeVar("U", BasisReading, CurrencyReading)

_ASIDES = re.compile(r",(?!\d)|[()]|\s[-–—]\s")


@dataclass(frozen=True, slots=True)
class SaysCurrency:
    """Prices are in this currency. `grades` and all behind it: as in SaysBasis."""

    currency: CurrencyReading
    words: str
    grades: tuple[str, ...] = ()
    parts: frozenset[str] = frozenset()
    perhaps: tuple[str, ...] = ()
    called: str = ""


@dataclass(frozen=True, slots=True)
class SaysBasis:
    """Prices are per this. `grades`: those that the same part of the sentence names, () where it speaks of all;
    `called`: how it calls them; `parts`: so the forms and markets; `perhaps`: grades that it may mean as well."""

    basis: BasisReading
    words: str
    grades: tuple[str, ...] = ()
    parts: frozenset[str] = frozenset()
    perhaps: tuple[str, ...] = ()
    called: str = ""


def price_says(clause: str) -> Iterator[SaysCurrency | SaysBasis]:
    """Currency and basis of a clause. A basis counts only beside a currency or a word for price."""
    told = with_pounds_as_money(_without_marks_of_pallets(without_other_times(clause)))
    told = without_weights(_without_definition(told))
    clause = without_other_money(beside_exchange(without_other_lists(without_payment(told))))
    excepted = money_excepted(clause)
    clause = clause if excepted is None else excepted.without
    defined = _sign_defined(clause)
    if defined is not None:
        yield SaysCurrency(defined, clause)
        return
    labelled = _labelled_basis(clause)
    if labelled is not None:
        yield SaysBasis(labelled, clause)
        return
    if by_unit := boards_by_unit(clause):
        yield from (_says(unit, clause, boards) for unit, boards in by_unit)
        return
    labels = [piece.strip() for piece in COMMA.split(clause)]
    keyed = all("=" in piece for piece in labels)
    if len(labels) > 1 and (keyed or any(_labelled_basis(piece) is not None for piece in labels)):
        # 'Monnaie : euro, unité : tonne' and 'A = USD per cwt, B = USD per MSF': each part says its own.
        for piece in labels:
            yield from price_says(piece)
        return
    if names_amount(clause):
        # 'Prices in £ per tonne, based on 1.17 EUR/GBP': the part without the amount still says its own.
        parts = [piece.strip() for piece in COMMA.split(clause)]
        for piece in parts if len(parts) > 1 else ():
            yield from price_says(piece)
        return
    if is_of_others(clause):
        return
    bases = units_by_board(clause, _bases)
    parted = _are_of_boards(bases, clause)
    yield from (_says(basis, clause, boards) for basis, boards in bases if parted)
    unit = find_price_unit(clause)
    if unit is not None and _is_a_code(clause, unit):
        return
    if not parted and (unit is None or unit.basis is None) and (worded := worded_basis(clause)) is not None:
        yield SaysBasis(worded, clause)
    if unit is None:
        return
    if unit.currency is not None:
        money = units_by_board(clause, find_currencies)
        one = all({*unit.currency.codes} <= {*each.codes} for each, _ in money)
        money = _as_one(unit.currency, money) if one else money
        yield from (_says(currency, clause, boards) for currency, boards in money)
    if (
        not parted
        and unit.basis is not None
        and not _names_form(clause, unit.basis)
        and (unit.currency is not None or is_of_prices(clause) or _is_only_a_basis(clause))
    ):
        basis = one_of(bases_side_by_side(clause)) or unit.basis
        bases = _as_one(basis, bases) if len({each.bases for each, _ in bases}) <= 1 else bases
        yield from (_says(each, clause, boards) for each, boards in bases)


def _are_of_boards(said: tuple[tuple[BasisReading, OfBoards], ...], clause: str) -> bool:
    """'CUK per tonne, all others per short ton', 'CUK: per tonne': what says units of some boards speaks of prices. A
    longer clause with one unit may tell more than what prices are per, unless 'GD2 kommt aus Polen und wird je 100 kg
    fakturiert' tells how these are sold."""
    several = len({basis.bases for basis, _ in said}) > 1
    sold = any(match.value == "sold" for match in phrases("units_in_doubt").find(clause))
    later = bool(phrases("per").find(clause)) and is_of_a_later_day(clause)
    short = len(clause.split()) <= _FEW_WORDS
    return any(boards.any for _, boards in said) and (several or sold or later or short)


_FEW_WORDS = 7
"""'SBS and CRB per short ton'."""


def _as_one(unit: U, said: tuple[tuple[U, OfBoards], ...]) -> tuple[tuple[U, OfBoards], ...]:
    """The unit as the whole clause names it, of the boards that its parts say it of."""
    return ((unit, said[0][1] if said else OF_ALL),)


def _says(unit: BasisReading | CurrencyReading, clause: str, of: OfBoards) -> SaysCurrency | SaysBasis:
    if isinstance(unit, CurrencyReading):
        return SaysCurrency(unit, clause, of.grades, perhaps=of.perhaps, called=of.words)
    return SaysBasis(unit, clause, of.grades, perhaps=of.perhaps, called=of.words)


def _bases(text: str) -> tuple[BasisReading, ...]:
    basis = find_basis(text)
    return () if basis is None else (basis,)


def _is_a_code(clause: str, unit: PriceUnit) -> bool:
    """The 'CT' of a key, 'CT – time to dispatch', says of no price that it is in cents."""
    cents = unit.currency is not None and unit.currency.cents and unit.basis is None
    return cents and len(clause.strip(" .")) <= _LONGEST_CODE and clause.strip(" .").isalpha()


_LONGEST_CODE = 2


def _sign_defined(clause: str) -> CurrencyReading | None:
    """'¢ = Canadian cents' says of what country the money is, and not that every price is in hundredths."""
    sign, equals, rest = clause.partition("=")
    named = find_currencies(rest)
    told = (
        bool(equals)
        and not any(map(str.isdigit, rest))
        and currency_text(sign.strip(" \"'“”‘’«»")) is not None
        and len(named) == 1
    )
    return replace(named[0], cents=False) if told else None


def _without_definition(clause: str) -> str:
    """'Per short ton of 2,000 lb' defines its ton beside saying what prices are per."""
    for match in phrases("ton_definitions").find(clause):
        before = clause[: match.start].rstrip(" (=")
        named = any(unit.end == len(before) and unit.value in _PLAIN_TONS for unit in phrases("basis").find(before))
        if named and any(map(str.isdigit, clause[match.start : match.end])):
            return f"{before} {clause[match.end :].lstrip(' )')}".rstrip()
    return clause


_PLAIN_TONS = ("short_ton", "tonne")


def _without_marks_of_pallets(clause: str) -> str:
    """A clause without the pool's mark of 'EUR-Paletten', 'Euro pallets' and 'palettes EUR'; 'EUR/pallet', '12 EUR
    Palette' and 'pallets EUR 12' are money."""
    marks = [*_MARK.finditer(clause)] if "eur" in clause.casefold() else []
    pallets = [found for found in phrases("basis").find(clause) if found.value == "pallet"] if marks else []
    for mark in marks:
        before = any(clause[found.end : mark.start()].isspace() for found in pallets)
        if before or any(clause[mark.end() : found.start] in (" ", "-") for found in pallets):
            clause = clause[: mark.start()] + "   " + clause[mark.end() :]
    return clause


_MARK = re.compile(r"(?<!\d)(?<!\d )\b(?:EUR|[Ee]uro|EURO)\b(?!\W{0,3}\d)")


def _names_form(clause: str, basis: BasisReading) -> bool:
    """'Reels, prices ex works' says in what form the board comes, and 'Price sheet' what the paper is called, where
    'prices per reel' says what they are per."""
    weighed = basis.foreign in VEHICLES and find_masses(clause[clause.find(basis.words) :])
    if weighed and not find_currencies(clause):
        # 'Par camion complet de 24 tonnes' says how the board comes.
        return True
    if basis_span(clause) is not None:
        return False
    papers = (clause[found.start : found.end] for found in phrases("list_names").find(clause))
    return phrases("forms").whole(basis.words) is not None or any(basis.words in paper for paper in papers)


def _labelled_basis(clause: str) -> BasisReading | None:
    """'Price basis: short ton (2,000 lb)', 'Unit: cwt': the label speaks of a unit, and the rest is one.

    'Basis: 1,000 sq ft' may be what basis weights are on.
    """
    label, colon, rest = clause.partition(":")
    unit = basis_text(rest) if colon else None
    if unit is None or not (asks_basis(label) or _is_basis_of_mass(label, unit)):
        return None
    return None if Basis.MSF in unit.bases and not phrases("price_words").find(label) else unit


def _is_basis_of_mass(label: str, unit: BasisReading) -> bool:
    """'Basis: short ton'; 'Basis: lb' may be what basis weights are in."""
    by_mass = bool(unit.bases) and unit.bases <= _LARGE_MASSES
    return by_mass and phrases("unit_words").whole(label.strip()) is not None


_LARGE_MASSES = frozenset({Basis.SHORT_TON, Basis.TONNE, Basis.CWT})


def asks_basis(label: str) -> bool:
    """'Unit', and 'Prices are per (ton / cwt / MSF)' in a form to be filled in."""
    label = _CHOICES.sub("", label).strip(" :")
    roles = header_roles(label)
    if roles and roles[0].role is Role.BASIS and roles[0].strength >= _PLAINLY:
        return True
    ends = any(match.end == len(label) for match in phrases("per").find(label))
    return ends and bool(phrases("price_words").find(label))


_CHOICES = re.compile(r"\([^()]*\)\s*$")
_PLAINLY = 0.9


def _is_only_a_basis(clause: str) -> bool:
    """'DAP buyer's works, per 1000 kg', 'Everything per short ton', 'Preisanpassung, Berechnung je 1000 kg': a part
    between commas that says what prices are per, and nothing else."""
    first, *rest = [_without_goods(part.strip()) for part in COMMA.split(clause)]
    parts = [_without_delivery(first), *rest]
    parts = parts if phrases("charges").find(clause) else [_without_invoicing(part) for part in parts]
    said = [basis_text(part) for part in parts if find_basis(part) is not None]
    alone = any(reading is not None and reading.bases for reading in said) and may_tell_a_unit(clause)
    return alone or _ends_with_a_basis(clause)


def _without_invoicing(part: str) -> str:
    """'Billed per MSF' is what prices are per; 'freight, billed per load' is no price."""
    ahead = next((match for match in phrases("unit_words").find(part) if match.start == 0), None)
    return part if ahead is None else part[ahead.end :].strip(" :")


def _ends_with_a_basis(clause: str) -> bool:
    """'Coated unbleached kraft, rolls - per MSF', 'GC2 in Bogen (je 1.000 Bogen)': a heading that names boards, and
    behind a dash or in brackets what theirs are per. 'Weights of SBS - per MSF' and 'SBS - min. 5 t (per item)' say
    something else of them."""
    *before, last = [part.strip() for part in _ASIDES.split(clause) if part.strip(" .:")]
    if not before or find_basis(last) is None or basis_text(last) is None:
        return False
    named = find_grade(" ".join(before)) is not None or bool(phrases("forms").find(" ".join(before)))
    other = phrases("weight_words").find(clause) or topic_of(clause, *OF_TERMS)
    return named and not other


def _without_delivery(part: str) -> str:
    """'Per tonne delivered' without its term of delivery."""
    for match in reversed([*phrases("incoterms").find(part), *phrases("delivery").find(part)]):
        part = f"{part[: match.start]} {part[match.end :]}"
    return part.strip(" -–,")


def _without_goods(part: str) -> str:
    """'Allt per 1000 kg' without its word for all that is sold."""
    named = next((match for match in phrases("all_goods").find(part) if match.start == 0), None)
    return part if named is None else part[named.end :].strip(" :")
