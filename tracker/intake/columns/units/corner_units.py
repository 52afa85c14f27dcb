"""A cross-tab's corner that says what its prices are in: 'EUR/1000 kg' over the boards, and calipers across."""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import head_of, looks_priced
from tracker.intake.tables.table import HeadedColumn
from tracker.intake.values.prices.money import price_unit

_MOSTLY = 0.8
_FEWEST = 2


def with_corner_unit(
    columns: Sequence[HeadedColumn], samples: Mapping[int, Sequence[Cell]]
) -> tuple[HeadedColumn, ...]:
    """The columns with a unit of price over words set over the prices that the header spreads, of which none says its
    own unit. The words below it are boards, under no head, or what 'Order size' below the unit calls them."""
    first = next((column for column in columns if column.heads), None)
    unit = next(filter(_is_unit, first.heads), None) if first is not None else None
    if first is None or unit is None or not _words(samples[first.index]):
        return tuple(columns)
    spread = {column.index for column in columns if column is not first and _spreads(column, samples[column.index])}
    if len(spread) < _FEWEST:
        return tuple(columns)
    bare = replace(first, heads=tuple(cell for cell in first.heads if cell is not unit))
    return tuple(
        bare if column is first else replace(column, heads=(unit, *column.heads)) if column.index in spread else column
        for column in columns
    )


def _is_unit(cell: Cell) -> bool:
    unit = price_unit(cell.text) if isinstance(cell.value, str) else None
    return unit is not None and unit.currency is not None and unit.basis is not None


def _words(cells: Sequence[Cell]) -> bool:
    words = [cell for cell in cells if isinstance(cell.value, str) and not looks_priced(cell)]
    return bool(cells) and len(words) >= _MOSTLY * len(cells)


def _spreads(column: HeadedColumn, cells: Sequence[Cell]) -> bool:
    """Figures below a caliper, a weight, an order size or a bare number, and no unit of price above them."""
    heads = [head for cell in column.heads if (head := head_of(cell)) is not None]
    across = any(head.across or head.number is not None for head in heads)
    return across and not any(map(_is_unit, column.heads)) and bool(cells)
