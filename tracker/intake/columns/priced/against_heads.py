"""Columns whose heads name something else, over figures that are as high as the prices beside them and move with these.

'Large', 'Volume 2' and 'Payment 60 days' may each stand over what boards cost. No quantity follows a price from board
to board: whether such figures are prices is asked.
"""

from collections.abc import Mapping, Sequence
from decimal import Decimal

from tracker.intake.columns.column import Column, Kind
from tracker.intake.columns.priced.unnamed import close_by_row
from tracker.intake.columns.roles.headed_figures import mostly_priced
from tracker.intake.columns.sizes.forms import other_forms
from tracker.intake.grid import Cell
from tracker.intake.tables.headers.periods import is_period
from tracker.intake.values.heads.header import Header
from tracker.intake.values.heads.roles import ON_TOP, ORDER_SIZES, Role
from tracker.intake.values.prices.money import price_text

_MAY_MISNAME = frozenset({
    *ON_TOP, Role.CHANGE, Role.TOTAL, Role.PAYMENT, *ORDER_SIZES, Role.MINIMUM,
    Role.LENGTH, Role.WIDTH, Role.ROLL_WIDTH, Role.ITEM, Role.STOCK,
})  # fmt: skip
"""What a head over prices may seem to say by one of its words, or by a word that is nearly like it."""


def priced_against_heads(
    columns: Sequence[Column], prices: Sequence[Column], samples: Mapping[int, Sequence[Cell]]
) -> list[Column]:
    """The columns beside prices that may be prices too, against what their heads say; charges are told elsewhere."""
    charged = any(column.role in ON_TOP for column in columns)
    forms = [column for column in other_forms(columns, prices) if mostly_priced(samples[column.index])]
    return forms or [
        column
        for column in columns
        if column not in prices and column.role not in ON_TOP and may_misname(column)
        and mostly_priced(samples[column.index])
        # What price and charges come to is told by its head.
        and not (column.role is Role.TOTAL and charged)
        and any(_moves_with(samples[column.index], samples[price.index]) for price in prices)
    ]  # fmt: skip


def far_below_named(kinds: Mapping[Column, Kind], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """'$30/ST' under a name that nobody knows, beside 1,200 under 'USD/ST': an extra, or no price of board."""
    offers = [column for column, kind in kinds.items() if kind is Kind.OFFER]
    named = [column for column in offers if column.sure]
    unknown = [
        column for column in offers if not column.sure and column.said and not any(map(_says_price, column.said))
    ]
    return [
        column
        for column in unknown
        if any(_is_far_below(samples[column.index], samples[other.index]) for other in named)
    ]


def _says_price(head: Header) -> bool:
    return bool(head.roles) or head.currency is not None or head.basis is not None


def _is_far_below(cells: Sequence[Cell], others: Sequence[Cell]) -> bool:
    low, high = _amounts(cells), _amounts(others)
    rows = low.keys() & high.keys()
    return bool(rows) and all(low[row] * _FAR < high[row] for row in rows)


_FAR = 5
"""Times: no two prices of one board, per one unit, are so far apart (our choice)."""


def _amounts(cells: Sequence[Cell]) -> dict[int, Decimal]:
    """The one figure of each cell, with its unit or without."""
    found = {cell.row: price_text(cell.text) for cell in cells}
    return {row: said.amounts[0].value for row, said in found.items() if said is not None and len(said.amounts) == 1}


def may_misname(column: Column) -> bool:
    """Whether a head says by its words alone what stands below it: a unit of its own is believed."""
    if column.role not in _MAY_MISNAME or not column.heads or is_period(column.text) or column.percent:
        return False
    if column.role is Role.ITEM:
        # 'Band 1 | Band 2' are told apart by a number, as no numbers of articles are.
        return any(map(str.isdecimal, column.text))
    if column.role in _QUANTITIES and any(head.strength(column.role) >= _PLAINLY for head in column.said):
        return any(map(str.isdecimal, column.text)) and column.role is Role.MINIMUM
    return column.role in ON_TOP or not (column.mass_units or column.length_unit)


_QUANTITIES = (Role.MINIMUM, Role.LENGTH, Role.WIDTH, Role.ROLL_WIDTH)
_PLAINLY = 0.95
"""From this strength on a head says nothing else: 'Min order', 'Width', and not 'Large'."""


def _moves_with(cells: Sequence[Cell], prices: Sequence[Cell]) -> bool:
    """A quantity may happen to be as high as a price, but not to go up and down with it."""
    return len({cell.text for cell in cells}) > 1 and close_by_row(cells, prices)
