"""Charges that a delivered price bears already: 'FOB mill | Freight | Delivered' in one row."""

from collections.abc import Mapping, Sequence
from decimal import Decimal

from tracker.intake.columns.column import Column, Columns, PriceColumn
from tracker.intake.grid import Cell
from tracker.intake.tables.figures import sure_figure
from tracker.intake.values.heads.roles import ON_TOP, Role

_ROUNDED = Decimal("0.006")


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


def beside_mill_price(price: PriceColumn, offers: Sequence[PriceColumn]) -> bool:
    """Whether this price is delivered by its head, and another beside it is not."""
    return _delivered(price) and not all(map(_delivered, offers))


def _delivered(price: PriceColumn) -> bool:
    return price.delivery is not None and price.delivery.delivered is True


def figure_in(cells: Mapping[int, Cell], column: Column) -> Decimal | None:
    """A row's figure in a column, where it is certain which it is."""
    cell = cells.get(column.index)
    return None if cell is None else sure_figure(cell)
