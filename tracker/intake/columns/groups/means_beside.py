"""Columns that hold what the prices beside them come to: 'Average' and 'Lowest' are no third price."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from decimal import Decimal

from tracker.intake.columns.column import Kind, PriceColumn
from tracker.intake.grid import Cell
from tracker.intake.tables.figures import figures_by_row
from tracker.intake.values.heads.header import without_unit
from tracker.intake.words.lists import phrases

_FEWEST = 2
_ROUNDED = Decimal("0.001")
_NEAR = 2
"""Prices of one board that are compared with each other lie closer together (our choice)."""


def without_means(prices: Sequence[PriceColumn], samples: Mapping[int, Sequence[Cell]]) -> list[PriceColumn]:
    """The prices with those set aside whose heads say so and whose every figure is the mean, the least or the most of
    those of its row; where none of these is offered, as by months that are over, it is asked."""
    offers = [price for price in prices if price.kind is Kind.OFFER]
    means = [price for price in offers if any(_names_a_mean(without_unit(head)) for head in price.column.said)]
    if not means:
        return list(prices)
    offered = [price.index for price in offers if price not in means]
    around = [index for index in samples if index not in {price.index for price in means}]
    made = _made_of_columns(means, offered, samples)
    asked = _made_of_columns(means, around, samples) - made
    told = {mean: replace(mean, kind=Kind.LIST) for mean in means if mean.index in made}
    told |= {mean: replace(mean, unexplained=True) for mean in means if mean.index in asked}
    return [told.get(price, price) for price in prices]


def _made_of_columns(
    means: Sequence[PriceColumn], columns: Sequence[int], samples: Mapping[int, Sequence[Cell]]
) -> frozenset[int]:
    others = [figures_by_row(samples[index]) for index in columns]
    return frozenset(mean.index for mean in means if _made_of(figures_by_row(samples[mean.index]), others))


def _names_a_mean(text: str) -> bool:
    text = text.strip(" /()[],")
    return phrases("total").whole(text) is not None or phrases("no_firms").whole(text) in ("any", "may_be_firms")


def _made_of(figures: Mapping[int, Decimal], others: Sequence[Mapping[int, Decimal]]) -> bool:
    """Figures of one kind throughout, where at least two like it stand beside each. A sample has one cell for each
    text, so that some rows lack a price that stood above: those with the most are compared."""
    beside = {
        row: [one[row] for one in others if row in one and one[row] <= _NEAR * figure and figure <= _NEAR * one[row]]
        for row, figure in figures.items()
    }
    most = max(_FEWEST, *map(len, beside.values()), 0)
    told = {row: found for row, found in beside.items() if len(found) == most}
    return bool(told) and any(
        all(abs(figures[row] - kind(found)) <= _ROUNDED * figures[row] for row, found in told.items())
        for kind in (_mean, min, max)
    )


def _mean(figures: Sequence[Decimal]) -> Decimal:
    return sum(figures, Decimal(0)) / len(figures)
