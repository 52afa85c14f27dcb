"""A unit said once for several prices: 'EUR/t < 5 t | 5-20 t | > 20 t', '$/ST FOB mill | Delivered', or in the corner
over the boards: '$/ST' over 'Grade'."""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from tracker.intake.columns.column import Column, Kind, PriceColumn
from tracker.intake.columns.priced.unnamed import close_by_row
from tracker.intake.columns.roles.headed_figures import heads_delivered
from tracker.intake.grid import Cell
from tracker.intake.words.lists import phrases


def with_shared_units(
    prices: Sequence[PriceColumn], boards: Sequence[Column], samples: Mapping[int, Sequence[Cell]]
) -> tuple[PriceColumn, ...]:
    """The prices with the column that lends each its unit: its own head says neither money nor unit, its figures go
    row by row with those at its left, whose head says both, and no other head of the table says another. Where no
    price's head says either, the head of a column of `boards` may say both."""
    offers = [price for price in prices if price.kind is Kind.OFFER]
    if not any(price.column.currencies or price.column.bases for price in offers):
        corner = next((column for column in boards if column.currencies and column.bases), None)
        return tuple(replace(price, lender=corner) for price in prices)
    lenders = [price.column for price in offers if price.column.currencies and price.column.bases]
    if len({_unit(column) for column in lenders}) != 1:
        return tuple(prices)
    others = [price.column for price in offers if price.column not in lenders]
    if any(column.currencies or column.bases or _may_name_a_unit(column.text) for column in others):
        return tuple(prices)
    return tuple(replace(price, lender=_lender(price, lenders, samples)) for price in prices)


def _may_name_a_unit(head: str) -> bool:
    """'Delivered/BLX' and 'je Palette': a unit of its own, though it is not understood."""
    return "/" in head or bool(phrases("per").find(head))


def _lender(price: PriceColumn, lenders: Sequence[Column], samples: Mapping[int, Sequence[Cell]]) -> Column | None:
    if price.kind is not Kind.OFFER or price.column in lenders:
        return None
    before = [column for column in lenders if column.index < price.index]
    figures, fewest = samples[price.index], 1 if heads_delivered(price.column) or price.bracket is not None else 2
    return next((column for column in before if close_by_row(figures, samples[column.index], fewest)), None)


def _unit(column: Column) -> tuple[frozenset[object], ...]:
    money = frozenset((reading.codes, reading.cents) for reading in column.currencies)
    per = frozenset((reading.bases, reading.foreign) for reading in column.bases)
    return money, per
