"""Figures below 'ex warehouse' beside a price that count what lies there, and are no prices from there."""

from collections.abc import Mapping, Sequence
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
    counted = priced and all(_count(samples[column.index], samples[other.index]) for other in priced)
    return replace(column, role=Role.STOCK) if counted else column


def _count(cells: Sequence[Cell], prices: Sequence[Cell]) -> bool:
    """Whole numbers, each far from the price of its row, that do not move with the prices."""
    priced = {row: price for row, price in figures_by_row(prices).items() if price > 0}
    figures = figures_by_row(cells)
    parts = [figure / priced[row] for row, figure in figures.items() if row in priced and figure > 0]
    whole = all(figure % 1 == 0 for figure in figures.values())
    far = all(part * _FAR < 1 or part > _FAR for part in parts)
    return whole and far and len(parts) > 1 and max(parts) > _MOVES_WITH * min(parts)


_FAR = 3
"""No freight makes board cost so many times more, or less (our choice)."""
_MOVES_WITH = Decimal("1.5")
"""Prices of one list on two bases stay closer together than that (our choice)."""
