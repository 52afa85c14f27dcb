"""Figures below 'ex warehouse' beside a price that count what lies there, and are no prices from there."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from decimal import Decimal

from tracker.intake.columns.column import Column
from tracker.intake.grid import Cell
from tracker.intake.tables.figures import figures_by_row
from tracker.intake.tables.headers.heads import PRICE_ROLES
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.lists import phrases


def counts_stock(column: Column, columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> Column:
    """'Ex warehouse' over 42 and 17 beside 'Price USD/ST' over 1,228 and 1,010 is stock. Figures that move with the
    prices may be prices on another basis, and stay as they are."""
    if column.role is not Role.PRICE or column.currencies or column.bases or len(column.said) != 1:
        return column
    stored = any(match.value == "stock" for match in phrases("supply_named").find(column.said[0].text))
    if not stored:
        return column
    priced = [other for other in columns if other is not column and other.role in PRICE_ROLES and other.currencies]
    measured = [samples[other.index] for other in columns if other.role in (Role.WEIGHT, Role.CALIPER)]
    counted = priced and all(_count(samples[column.index], samples[other.index], measured) for other in priced)
    return replace(column, role=Role.STOCK) if counted else column


def _count(cells: Sequence[Cell], prices: Sequence[Cell], measured: Sequence[Sequence[Cell]]) -> bool:
    """Whole numbers, each far from the price of its row, that do not move with the prices, nor with what the prices of
    so heavy or thick a board come to per area."""
    priced = {row: price for row, price in figures_by_row(prices).items() if price > 0}
    figures = figures_by_row(cells)
    parts = {row: figure / priced[row] for row, figure in figures.items() if row in priced and figure > 0}
    whole = all(figure % 1 == 0 for figure in figures.values())
    far = all(part * _FAR < 1 or part > _FAR for part in parts.values())
    return whole and far and len(parts) > 1 and not any(map(_move_together, _on_areas(parts, measured)))


def _on_areas(parts: dict[int, Decimal], measured: Sequence[Sequence[Cell]]) -> Iterator[list[Decimal]]:
    """The parts as they are, and each in so many pounds, grams or points of board."""
    yield list(parts.values())
    for cells in measured:
        sizes = {row: size for row, size in figures_by_row(cells).items() if size > 0}
        if parts.keys() <= sizes.keys():
            yield [part / sizes[row] for row, part in parts.items()]


def _move_together(parts: list[Decimal]) -> bool:
    return max(parts) <= _MOVES_WITH * min(parts)


_FAR = 3
"""No freight makes board cost so many times more, or less (our choice)."""
_MOVES_WITH = Decimal("1.5")
"""Prices of one list on two bases stay closer together than that (our choice)."""
