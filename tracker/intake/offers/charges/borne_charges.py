"""Charges that a delivered price bears already: 'FOB mill | Freight | Delivered' in one row."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from decimal import Decimal
from itertools import product

from tracker.intake.columns.column import Column, Columns, Kind, PriceColumn
from tracker.intake.grid import Cell
from tracker.intake.tables.figures import sure_figure, sure_share
from tracker.intake.values.changes.shares_off import shares_off
from tracker.intake.values.heads.roles import ON_TOP, Role

_ROUNDED = Decimal("0.006")
_ROUNDED_SHARE = Decimal("0.001")


def borne_by(
    price: PriceColumn, offers: Sequence[PriceColumn], cells: dict[int, Cell], columns: Columns
) -> frozenset[int]:
    """The columns of charges that are in this price: the freight of one delivered beside another that is not, and the
    others where the two prices and they add up."""
    freight = columns.of(Role.FREIGHT)
    mill_prices = [other for other in offers if not _delivered(other)]
    if not freight or not beside_mill_price(price, offers):
        return frozenset()
    charges = columns.of(*ON_TOP)
    whole = figure_in(cells, price.column)
    added = sum((figure_in(cells, charge) or Decimal(0) for charge in charges), Decimal(0))
    starts = [start for other in mill_prices if (start := figure_in(cells, other.column)) is not None]
    in_full = whole is not None and any(abs(start + added - whole) <= _ROUNDED for start in starts)
    return frozenset(charge.index for charge in (charges if in_full else freight))


def led_to_by(
    price: PriceColumn, cells: Mapping[int, Cell], columns: Columns, said: Iterable[str]
) -> tuple[frozenset[int], frozenset[int]]:
    """The columns of charges between a list price and the net one that lead from the one to the other, and those of
    which that is not certain: 'Gross price 1,200 | Energy 40 | Net price 1,240' bears the energy, one of 1,140 may.
    `said`: the texts around the table, of which one may tell a discount."""
    starts = [other.column for other in columns.prices if other.kind is Kind.LIST and other.index < price.index]
    between = [
        charge for charge in columns.of(*ON_TOP)
        if any(start.index < charge.index < price.index for start in starts) and figure_in(cells, charge)
    ]  # fmt: skip
    whole, figures = figure_in(cells, price.column), {one.index: figure_in(cells, one) for one in between}
    if whole is None or not between:
        return frozenset(), frozenset()
    off = [
        *_off_in_columns(cells, columns),
        *(share for text in (price.column.text, *said) for share in shares_off(text)),
    ]
    if any(_discounted(start, whole, cells, off) for start in starts):
        return frozenset(), frozenset()
    ways = [figures.keys(), *({index} for index in figures)]
    for start, way in product(starts, ways):
        first = figure_in(cells, start)
        if first is not None and abs(first + sum(figures[index] or 0 for index in way) - whole) <= _ROUNDED:
            return frozenset(way), frozenset(figures.keys() - way)
    return frozenset(), frozenset(figures)


def _discounted(start: Column, whole: Decimal, cells: Mapping[int, Cell], off: Iterable[Decimal]) -> bool:
    """'List 1,200 | Discount 5 % | Energy 40 | Net 1,140': the discount alone makes the price, the charge is left."""
    first = figure_in(cells, start)
    if first is None:
        return False
    ways = (way for figure in off for way in (first - figure, first * (1 - figure / 100), first * (1 - figure)))
    return any(abs(way - whole) <= max(_ROUNDED, _ROUNDED_SHARE * whole) for way in ways)


def _off_in_columns(cells: Mapping[int, Cell], columns: Columns) -> Iterator[Decimal]:
    told = (cells[one.index] for one in columns.of(Role.DISCOUNT, Role.CHANGE) if one.index in cells)
    return (abs(share) for cell in told if (share := sure_share(cell)) is not None)


def beside_mill_price(price: PriceColumn, offers: Sequence[PriceColumn]) -> bool:
    """Whether this price is delivered by its head, and another beside it is not."""
    return _delivered(price) and not all(map(_delivered, offers))


def _delivered(price: PriceColumn) -> bool:
    return price.delivery is not None and price.delivery.delivered is True


def figure_in(cells: Mapping[int, Cell], column: Column) -> Decimal | None:
    """A row's figure in a column, where it is certain which it is."""
    cell = cells.get(column.index)
    return None if cell is None else sure_figure(cell)
