"""'Price | Tons | Amount': what is multiplied by the price to give the amount is a quantity, whatever its head says."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from decimal import Decimal
from itertools import product

from tracker.intake.columns.column import Column
from tracker.intake.columns.headed_figures import by_words
from tracker.intake.grid import Cell
from tracker.intake.tables.heads import PRICE_ROLES
from tracker.intake.values.roles import Role

_FEWEST_ROWS = 2
_ROUNDED = Decimal("0.001")
"""An amount to the cent over a price to the cent; a chance product of three columns in two rows is never this near."""


def without_quantities(columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """Takes the ordered quantities, and the amounts they come to, from among the prices.

    By themselves 'Tons' and 'MT' could head what a ton costs. A head that names money or calls itself a price is
    believed as it stands.
    """
    plain = [column for column in columns if column.role in PRICE_ROLES and _is_plain(column)]
    doubtful = [column for column in columns if column.role is Role.PRICE and not _is_plain(column)]
    amounts = [column for column in columns if column.role in (Role.PRICE, Role.TOTAL, None)]
    roles: dict[int, Role] = {}
    for price, quantity, amount in product(plain, doubtful, amounts):
        if amount not in (price, quantity) and _comes_to(price, quantity, amount, samples):
            roles |= {quantity.index: Role.STOCK, amount.index: Role.TOTAL}
    return [replace(column, role=roles[column.index]) if column.index in roles else column for column in columns]


def _is_plain(column: Column) -> bool:
    return bool(column.currencies) or any(by_words(head) for head in column.said)


def _comes_to(price: Column, quantity: Column, amount: Column, samples: Mapping[int, Sequence[Cell]]) -> bool:
    """Whether price times quantity is the amount, in at least two rows and in all that have the three."""
    prices, quantities, amounts = (_figures(samples[column.index]) for column in (price, quantity, amount))
    rows = prices.keys() & quantities.keys() & amounts.keys()
    if len(rows) < _FEWEST_ROWS or _alike(quantities[row] for row in rows):
        return False
    return all(abs(prices[row] * quantities[row] - amounts[row]) <= _ROUNDED * abs(amounts[row]) for row in rows)


def _alike(values: Iterable[Decimal]) -> bool:
    """One factor throughout may be a rate, of exchange or from one unit to another."""
    return len(set(values)) == 1


def _figures(cells: Sequence[Cell]) -> dict[int, Decimal]:
    return {cell.row: cell.value for cell in cells if isinstance(cell.value, Decimal) and cell.value}
