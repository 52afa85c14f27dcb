"""What arithmetic tells of columns: a quantity gives the amount with the price, a discount leads from list to net."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from decimal import Decimal
from itertools import product

from tracker.intake.columns.column import Column
from tracker.intake.columns.roles.headed_figures import by_words
from tracker.intake.grid import Cell
from tracker.intake.tables.figures import figures_by_row
from tracker.intake.tables.headers.heads import PRICE_ROLES
from tracker.intake.values.heads.roles import Role

_QUANTITIES = frozenset({Role.BRACKET, Role.FROM_QUANTITY, Role.MINIMUM, Role.STOCK})
_FEWEST_ROWS = 2
_ROUNDED = Decimal("0.001")
"""An amount to the cent over a price to the cent; a chance product of three columns in two rows is never this near."""
_UNITS = (
    Decimal(1), Decimal(100), Decimal(1000), Decimal(2000),
    Decimal("0.05"), Decimal("0.1"), Decimal("0.001"), Decimal("0.0005"),
)  # fmt: skip
"""Of the quantity in that of the price: pounds at a price per cwt or short ton, short tons at one per cwt or pound,
tonnes at one per 100 kg or kg."""


def without_quantities(columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """Takes the ordered quantities, and the amounts they come to, from among the prices.

    By themselves 'Tons' and 'MT' could head what a ton costs. A head that names money or calls itself a price is
    believed as it stands.
    """
    plain = [column for column in columns if column.role in PRICE_ROLES and _is_plain(column)]
    doubtful = [column for column in columns if column.role is Role.PRICE and not _is_plain(column)]
    amounts = [column for column in columns if column.role in (Role.PRICE, Role.TOTAL, None)]
    roles: dict[int, Role] = {}
    named = [column for column in columns if column.role in _QUANTITIES or column.role is None]
    for price, quantity, amount in product(plain, [*doubtful, *named], amounts):
        if amount not in (price, quantity) and _comes_to(price, quantity, amount, samples):
            counted = {quantity.index: Role.STOCK} if quantity in doubtful else {}
            roles |= {**counted, amount.index: Role.TOTAL}
    return [replace(column, role=roles[column.index]) if column.index in roles else column for column in columns]


def with_units_of_the_list(columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """'List USD/ST | Disc. % | Net': what the discount leaves of the list price is in its currency and per its unit."""
    by_role: dict[Role | None, list[Column]] = {}
    for column in columns:
        by_role.setdefault(column.role, []).append(column)
    lists, discounts, nets = (by_role.get(role, []) for role in (Role.LIST_PRICE, Role.DISCOUNT, Role.NET_PRICE))
    if len(lists) != 1 or len(discounts) != 1 or len(nets) != 1 or nets[0].currencies or nets[0].bases:
        return columns
    net, listed = nets[0], lists[0]
    if not _leaves(listed, discounts[0], net, samples):
        return columns
    own = replace(net, heads=(*listed.heads, *net.heads), said=(*listed.said, *net.said))
    return [own if column is net else column for column in columns]


def _leaves(listed: Column, discount: Column, net: Column, samples: Mapping[int, Sequence[Cell]]) -> bool:
    """In every row that has the three, whether the discount is written as 12 or as 0.12."""
    before, rates, after = (_figures(samples[column.index]) for column in (listed, discount, net))
    rows = before.keys() & rates.keys() & after.keys()
    shares = {row: rates[row] / 100 if rates[row] >= 1 else rates[row] for row in rows}
    return bool(rows) and all(
        abs(before[row] * (1 - shares[row]) - after[row]) <= _ROUNDED * after[row] for row in rows
    )


def _is_plain(column: Column) -> bool:
    return bool(column.currencies) or any(by_words(head) for head in column.said)


def _comes_to(price: Column, quantity: Column, amount: Column, samples: Mapping[int, Sequence[Cell]]) -> bool:
    """Whether price times quantity is the amount, in at least two rows and in all that have the three: both in one
    unit, or the one in a part or a multiple of the other's."""
    prices, quantities, amounts = (_figures(samples[column.index]) for column in (price, quantity, amount))
    rows = prices.keys() & quantities.keys() & amounts.keys()
    if len(rows) < _FEWEST_ROWS or _alike(quantities[row] for row in rows):
        return False
    return any(
        all(abs(prices[row] * quantities[row] / unit - amounts[row]) <= _ROUNDED * abs(amounts[row]) for row in rows)
        for unit in _UNITS
    )


def _alike(values: Iterable[Decimal]) -> bool:
    """One factor throughout may be a rate, of exchange or from one unit to another."""
    return len(set(values)) == 1


def _figures(cells: Sequence[Cell]) -> dict[int, Decimal]:
    return {row: figure for row, figure in figures_by_row(cells).items() if figure}
