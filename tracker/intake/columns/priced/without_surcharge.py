"""'Price' beside 'Price without surcharge': what is paid has the surcharge in it, whichever of the two comes first."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from decimal import Decimal
from itertools import combinations

from tracker.intake.columns.column import Column
from tracker.intake.columns.priced.borne_by_all import is_borne_by_all
from tracker.intake.columns.priced.steps import figures_by_row, without_steps
from tracker.intake.columns.priced.years_in_heads import year_in_head
from tracker.intake.columns.roles.headed_figures import tells_offers_apart
from tracker.intake.columns.sizes.forms import form_in
from tracker.intake.columns.sizes.order_sizes import order_size
from tracker.intake.tables.table import Table, Words
from tracker.intake.values.freight.charge_names import charges_named, label_of
from tracker.intake.values.freight.prices_without import Without, head_without, is_of_all_board
from tracker.intake.values.heads.roles import ON_TOP, Role
from tracker.trade.basis import Basis

_PAID = (Role.PRICE, Role.NET_PRICE, Role.ALL_IN)
_NAMED = (*_PAID, Role.LIST_PRICE)
_SURCHARGES = (Role.ENERGY, Role.CHARGE, Role.CHANGE)

_Figures = Mapping[int, Decimal]


def without_parts(columns: list[Column], table: Table, texts: Iterable[Words]) -> list[Column]:
    """The columns without prices that only lead to the one to pay, by their heads and by their figures."""
    return without_steps(_without_bare_prices(columns, table, texts), table)


def _without_bare_prices(columns: list[Column], table: Table, texts: Iterable[Words]) -> list[Column]:
    """Makes the price without the surcharge a step to the one beside it, and what the two differ by changes.

    Where columns of charges stand beside them and do not make up the difference, and where a text says that the
    surcharge is not charged, or by some only, which of the two is paid is left to what else is said.
    """
    bare = [column for column in columns if column.role in _NAMED and _leaves_out(column)]
    whole = [column for column in columns if column.role in _PAID and column not in bare]
    bare, whole = ([one for one in held if not tells_offers_apart(one)] for held in (bare, whole))
    if len(bare) != 1 or len(whole) != 1 or not _are_of_one_thing(bare[0], whole[0]):
        return columns
    part, paid = (figures_by_row(table, column) for column in (bare[0], whole[0]))
    part = {row: figure for row, figure in part.items() if row in paid}
    said = [words.text for words in (*texts, *table.titles, *table.notes)]
    if not _bears_a_part(part, paid) or not is_borne_by_all(columns, said, part, paid):
        return columns
    charged = {column: figures_by_row(table, column) for column in columns if column.role in (*ON_TOP, Role.CHANGE)}
    made = _makes_up(charged, part, paid)
    if made is None or not (made or any(head_without(head.text) is Without.NAMED for head in bare[0].said)):
        # 'Price | Price without surcharge': of which surcharge, and who bears it, is not said.
        return columns
    roles = {column.index: Role.CHANGE for column in made} | {bare[0].index: Role.LIST_PRICE}
    if whole[0].role is Role.ALL_IN:
        roles[whole[0].index] = Role.PRICE
    names = tuple(name for column in (*made, bare[0]) for head in column.said for name in _names_in(head.text))
    return [
        replace(column, role=roles.get(column.index, column.role), holds=names if column is whole[0] else column.holds)
        for column in columns
    ]


def beside_one_without(offers: Iterable[Column]) -> bool:
    """'Price | Price without surcharge': one offer, and of which surcharge, and who bears it, is not said."""
    offers = [*offers]
    bare = [column for column in offers if _leaves_out(column)]
    return len(offers) == _PAIR and len(bare) == 1 and not any(map(tells_offers_apart, offers))


_PAIR = 2
WITHOUT_SURCHARGE = "a price and one without a surcharge stand beside each other, and it is not said who pays that one"
"""The doubt that such a pair leaves."""


def _are_of_one_thing(bare: Column, whole: Column) -> bool:
    """Not 'Roll price excl. energy | Sheet price', 'Price excl. energy USD/ST | Price EUR/t', nor prices of a size of
    order, of a vendor or of a year each."""
    alike = all(not (one and other) or one == other for one, other in zip(_unit(bare), _unit(whole), strict=True))
    return alike and _kind_of_goods(bare) == _kind_of_goods(whole)


def _unit(column: Column) -> tuple[frozenset[str], frozenset[Basis]]:
    codes = (code for reading in column.currencies for code in reading.codes)
    return frozenset(codes), frozenset(basis for reading in column.bases for basis in reading.bases)


def _kind_of_goods(column: Column) -> tuple[str, str, int, bool]:
    sized = order_size(column)[1] is not None
    return form_in(column.text), column.vendor, year_in_head(column), sized


def _is_surcharge(column: Column) -> bool:
    return column.role in _SURCHARGES and any(is_of_all_board(head.text) for head in column.said)


def _leaves_out(column: Column) -> bool:
    return any(head_without(head.text) is not None for head in column.said)


def _names_in(head: str) -> tuple[str, ...]:
    named = charges_named(head)
    return (label_of(head, named),) if named else ()


def _bears_a_part(part: _Figures, paid: _Figures) -> bool:
    """In no row less than nothing, nor half of the price: then they are prices of different things."""
    differences = {row: paid[row] - figure for row, figure in part.items()}
    return any(differences.values()) and all(0 <= more < paid[row] / 2 for row, more in differences.items())


def _makes_up(charged: Mapping[Column, _Figures], part: _Figures, paid: _Figures) -> tuple[Column, ...] | None:
    """The charges that are the difference, the fewest together: 'Price excl. energy 1,200 | Energy 25 | Freight 42 |
    Price 1,267'. None of them where only larger ones stand there; None where it can't be told which it holds."""
    held = [column for column, figures in charged.items() if any(row in figures for row in part)]
    for count in range(1, len(held[:_MOST]) + 1):
        fitting = [
            some for some in combinations(held, count)
            if any(map(_is_surcharge, some)) and _makes([(charged[one], one.percent) for one in some], part, paid)
        ]  # fmt: skip
        if fitting:
            return fitting[0] if len(fitting) == 1 else None
    within = [one for one in held if _is_surcharge(one) or _fits_in(charged[one], part, paid)]
    return None if within else ()


_MOST = 5
"""Columns of charges that are tried together."""


def _fits_in(figures: _Figures, part: _Figures, paid: _Figures) -> bool:
    """A freight of 42 may be in what differs by 67, and is not in what differs by 25."""
    return all(figures.get(row, Decimal(0)) <= paid[row] - figure for row, figure in part.items())


def _makes(charges: Sequence[tuple[_Figures, bool]], part: _Figures, paid: _Figures) -> bool:
    """Whether charges, each with whether it is a share, make the one price of the other in every row, as exactly as
    that is written: 1,200 and 24.6 are 1,225."""
    shown = max(-int(figure.normalize().as_tuple().exponent) for figure in paid.values())
    near = Decimal("0.5").scaleb(-max(shown, 0)) + (_ROUNDED if shown > 1 else 0)
    summed = {
        row: sum(_amount(figures.get(row), start, share=share) for figures, share in charges)
        for row, start in part.items()
    }
    return any(summed.values()) and all(abs(part[row] + more - paid[row]) <= near for row, more in summed.items())


def _amount(figure: Decimal | None, price: Decimal, *, share: bool) -> Decimal:
    if figure is None or not share:
        return figure or Decimal(0)
    return price * (figure if abs(figure) < 1 else figure / 100)


_ROUNDED = Decimal("0.006")
