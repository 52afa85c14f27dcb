"""Amounts far below the prices beside them: what is added to these, or prices in a unit that nobody named.

'C2S premium' over 95 beside 1,190, and 'Sheets' over 52 where only a short ton is spoken of.
"""

from collections.abc import Mapping, Sequence
from decimal import Decimal

from tracker.intake.columns.column import PriceColumn
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.prices.column_doubts import ask_of_column
from tracker.intake.offers.sheet import ReadTable
from tracker.intake.tables.figures import figure_of
from tracker.trade.basis import Basis

_LOOKED_AT = 200
_TIMES = 5
"""How many times as dear as another no board is by weight, in whatever form or order; common practice, no source."""
_BY_WEIGHT = frozenset({Basis.SHORT_TON, Basis.TONNE, Basis.CWT, Basis.LB, Basis.KG})


def columns_far_below(read: ReadTable, offers: Sequence[PriceColumn]) -> frozenset[tuple[int, int]]:
    """Pairs of columns of which the first is far below the second wherever both have a figure. A slip of one figure
    among others is told at its line."""
    if len(offers) < 2:
        return frozenset()
    rows = read.table.rows
    some = [row.index for row in rows[:: 1 + len(rows) // _LOOKED_AT]]
    figures = {
        price.index: {
            row: figure for row, cell in read.table.view.down(price.index, some) if (figure := figure_of(cell))
        }
        for price in offers
        if not (price.grade is not None and price.grade.grades)
    }
    return frozenset(
        (low, high)
        for low, small in figures.items()
        for high, large in figures.items()
        if low != high and _far_below(small, large)
    )


def _far_below(small: Mapping[int, Decimal], large: Mapping[int, Decimal]) -> bool:
    both = small.keys() & large.keys()
    return bool(both) and all(0 < small[row] * _TIMES <= large[row] for row in both)


def ask_of_amounts_far_below(drafts: Mapping[int, Draft], pairs: frozenset[tuple[int, int]]) -> None:
    """Holds back the prices of one row, by column, that are far below another in the same unit."""
    for low, high in pairs if len(drafts) > 1 else ():
        one, other = drafts.get(low), drafts.get(high)
        if one is not None and other is not None and not one.asked and _alike(one, other):
            ask_of_column(one, "it stands far below the price beside it, as what is added to a price does")


def _alike(one: Draft, other: Draft) -> bool:
    """In the same money, by weight or of the same board: by area thick board costs many times as much as thin."""
    same_board = (one.caliper_um, one.grammage_gsm, one.sheet_mm) == (
        other.caliper_um,
        other.grammage_gsm,
        other.sheet_mm,
    )
    alike = one.currency == other.currency and one.basis == other.basis and one.basis is not None
    return alike and (one.basis in _BY_WEIGHT or same_board)
