"""Steps on the way to the price: 'Base | Adder | Price', where in every row the last is the first and the second."""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import replace
from decimal import Decimal
from itertools import product

from tracker.intake.columns.column import Column
from tracker.intake.columns.roles.headed_figures import says_delivery, tells_offers_apart
from tracker.intake.grid import Cell
from tracker.intake.tables.figures import sure_figure, sure_share
from tracker.intake.tables.headers.periods import is_later
from tracker.intake.tables.table import Table
from tracker.intake.values.changes.totals import is_total
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.freight.prices_without import head_without
from tracker.intake.values.heads.roles import CHARGES, Role
from tracker.intake.words.lists import phrases

_LOOKED_AT = 200
_FEWEST_ROWS = 2
_ROUNDED = Decimal("0.006")
_ROUNDED_SHARE = Decimal("0.001")
"""A sum is exact to the cent; what a percentage makes of a price may be rounded to its last figure."""
_PRICES = (Role.PRICE, Role.NET_PRICE)
_BETWEEN = (CHARGES - {Role.FREIGHT}) | {Role.PRICE, None}
"""What may lead from one price to the next. Freight makes a delivered price of it, which is an offer of its own."""

_Figures = Mapping[int, Decimal]
_Way = Callable[[Decimal, Decimal, Decimal], bool]


def without_steps(columns: list[Column], table: Table) -> list[Column]:
    """Makes the start a list price, and what leads from it to the price a change, where the figures show both.

    A careful buyer adds up: what a column starts from, and what is put on top, is no price to pay.
    """
    named = any(column.role in _PRICES for column in columns)
    # Where no column is called a price, the sum of two others shows which is one: 'Current | Increase | New (1 July)'.
    roles_of_prices = _PRICES if named else (None,)
    prices = [
        column
        for column in columns
        if column.role in roles_of_prices and column.heads and not tells_offers_apart(column)
    ]
    starts = [*prices, *(column for column in columns if column not in prices and _may_start(column))]
    between = [column for column in columns if column.role in _BETWEEN]
    if not prices or len(starts) == 1 or not between:
        return columns
    figures = {column.index: figures_by_row(table, column) for column in (*starts, *between)}
    roles: dict[int, Role] = {}
    for start, step, price in product(starts, between, prices):
        if is_later(start.text, price.text):
            # 'Dec price | change | Nov price': what changed since, and no way to what is to be paid.
            continue
        in_order = start is not step and (_of_old(start, step, price) or max(start.index, step.index) < price.index)
        if step.role is Role.DISCOUNT:
            if start is not price and not _hangs(step, price) and _discounted(start, step, price, figures):
                roles |= {start.index: _of_start(start), step.index: Role.CHANGE}
            continue
        if not in_order or not _is_larger(figures[start.index], figures[step.index]):
            continue
        first, second, last = (figures[column.index] for column in (start, step, price))
        if not _of_a_height(first, last) and (start.role is Role.PREVIOUS_PRICE or _of_a_height(first, second)):
            # 'Was | Now | Saving': what the two differ by is no price.
            if _leads(first, last, second):
                roles[price.index] = Role.CHANGE
            continue
        if _leads(first, second, last, _ways_of(step, price)) or _never_reckoned(start, price, figures):
            roles |= {start.index: _of_start(start), step.index: Role.CHANGE}
            if not named:
                roles[price.index] = Role.PRICE
    roles |= _summed_up(starts, between, prices, figures) | _after_discount(columns, starts, between, prices, table)
    return [replace(column, role=roles[column.index]) if column.index in roles else column for column in columns]


def _ways_of(step: Column, price: Column) -> tuple[_Way, ...]:
    """What is called a surcharge is taken off no price but 'Price without surcharge': 'Gross 1,200 | Energy 40 | Net
    1,160' leaves it to be added."""
    without = any(head_without(head.text) is not None for head in price.said)
    return _PUT_ON if charges_named(step.text) and not without else _WAYS


def _of_old(start: Column, step: Column, price: Column) -> bool:
    """'Old price | New price | Extra': what was paid before is no part of a price, wherever it stands."""
    return start.role is Role.PREVIOUS_PRICE and start is not price and step is not price


def _discounted(start: Column, discount: Column, price: Column, figures: Mapping[int, _Figures]) -> bool:
    """'Your price | List | Discount': whichever comes first, the discount is taken off the one and leaves the other."""
    shares = {row: abs(share) for row, share in figures[discount.index].items()}
    return _leads(figures[start.index], shares, figures[price.index], (_taken_off, _share_taken_off))


def _hangs(discount: Column, price: Column) -> bool:
    """'Skonto', 'Volume rebate', 'Pick-up allowance': what is left by it is a price to some buyers only."""
    said = (*discount.said, *price.said)
    hung = any(phrases("discount_hangs").find(head.text) and not phrases("yearly").find(head.text) for head in said)
    return hung or any(map(says_delivery, discount.said))


def _of_start(column: Column) -> Role:
    """'Old price | Increase | New price' begins with what was paid before, and no list price."""
    return Role.PREVIOUS_PRICE if column.role is Role.PREVIOUS_PRICE else Role.LIST_PRICE


def _may_start(column: Column) -> bool:
    """'List', 'Old price', and 'Current' under no known word beside a price called 'New'."""
    if column.role in (Role.LIST_PRICE, Role.PREVIOUS_PRICE):
        return True
    return column.role is None and bool(column.heads) and not tells_offers_apart(column)


def _is_larger(start: _Figures, step: _Figures) -> bool:
    """The sum says nothing of which of its parts is put on top of which: the small one is."""
    return all(abs(step[row]) < start[row] for row in start.keys() & step.keys() if start[row] > 0)


def _of_a_height(start: _Figures, price: _Figures) -> bool:
    return all(2 * price[row] > start[row] for row in start.keys() & price.keys())


def _summed_up(
    starts: list[Column], between: list[Column], prices: list[Column], figures: Mapping[int, _Figures]
) -> dict[int, Role]:
    """'Base | Energy | Fibre adder | Price': all that stands between a start and a price leads to it together."""
    roles: dict[int, Role] = {}
    for start, price in product(starts, prices):
        steps = [column for column in between if start.index < column.index < price.index]
        summed = _sum([figures[step.index] for step in steps])
        larger = len(steps) >= _SEVERAL and _is_larger(figures[start.index], summed)
        if larger and _leads(figures[start.index], summed, figures[price.index]):
            roles |= {start.index: _of_start(start), **{step.index: Role.CHANGE for step in steps}}
    return roles


def _sum(steps: list[_Figures]) -> dict[int, Decimal]:
    rows = {row for step in steps for row in step}
    return {row: sum((step.get(row, Decimal(0)) for step in steps), Decimal(0)) for row in rows}


def _after_discount(
    columns: list[Column], starts: list[Column], between: list[Column], prices: list[Column], table: Table
) -> dict[int, Role]:
    """'List | Rebate 4 % | Energy | Net': the rebate taken off, the energy put on, which the net price bears then."""
    roles: dict[int, Role] = {}
    discounts = [column for column in columns if column.role is Role.DISCOUNT]
    for start, discount, price in product(starts, discounts, prices):
        steps = [column for column in between if start.index < column.index < price.index and column not in discounts]
        if not steps or not start.index < discount.index < price.index:
            continue
        first, share, last = (figures_by_row(table, column) for column in (start, discount, price))
        summed = _sum([figures_by_row(table, step) for step in steps])
        rows = [row for row in last if first.get(row) and share.get(row) is not None]
        told = [row for row in rows if summed.get(row, Decimal(0)) > _ROUNDED_SHARE * last[row]]
        whole = (first[row] * (1 - _share(share[row])) + summed.get(row, Decimal(0)) - last[row] for row in rows)
        near = (abs(rest) <= _ROUNDED_SHARE * last[row] for row, rest in zip(rows, whole, strict=True))
        if len(told) >= _FEWEST_ROWS and all(near):
            roles |= {start.index: _of_start(start), **{step.index: Role.CHANGE for step in steps}}
    return roles


_SEVERAL = 2


def _never_reckoned(start: Column, price: Column, figures: Mapping[int, _Figures]) -> bool:
    """'Base | Supplement | Net price' whose net prices are formulas without a value: the base is still no price."""
    named = any(phrases("base_prices").whole(head.text) is not None for head in start.said)
    return named and price.role is Role.NET_PRICE and not any(figures[price.index].values())


def figures_by_row(table: Table, column: Column) -> dict[int, Decimal]:
    """The figures of a column that can be read for certain, but for those of rows that sum others up."""
    rows = {row.index: table.view.rows[row.index] for row in table.rows[:_LOOKED_AT]}
    cells = ((row, found.get(column.index)) for row, found in rows.items() if not _sums_up(found))
    read = sure_share if column.role is Role.DISCOUNT else sure_figure
    figures = ((row, read(cell)) for row, cell in cells if cell is not None)
    return {row: figure for row, figure in figures if figure is not None}


def _sums_up(row: Mapping[int, Cell]) -> bool:
    """'Mean | 965.83 | 28.75 | 1067.50': averages of other rows, which need not add up."""
    label = next((cell.text for cell in row.values() if isinstance(cell.value, str)), "")
    return is_total(label)


def _leads(start: _Figures, step: _Figures, price: _Figures, ways: Iterable[_Way] | None = None) -> bool:
    """One way of reckoning holds in every row that has the price and its start, and in two rows changes something."""
    rows = [row for row in price if start.get(row) and price[row] > 0]
    changed = [row for row in rows if step.get(row)]
    if len(changed) < _FEWEST_ROWS and not (changed and len(rows) > len(changed)):
        return False
    return any(all(way(start[row], step.get(row, Decimal(0)), price[row]) for row in rows) for way in ways or _WAYS)


def _added(start: Decimal, step: Decimal, price: Decimal) -> bool:
    return abs(start + step - price) <= _ROUNDED


def _taken_off(start: Decimal, step: Decimal, price: Decimal) -> bool:
    return abs(start - step - price) <= _ROUNDED


def _share_added(start: Decimal, step: Decimal, price: Decimal) -> bool:
    return abs(start * (1 + _share(step)) - price) <= _ROUNDED_SHARE * price


def _share_taken_off(start: Decimal, step: Decimal, price: Decimal) -> bool:
    return abs(start * (1 - _share(step)) - price) <= _ROUNDED_SHARE * price


def _share(rate: Decimal) -> Decimal:
    """The same whether it is written as 3 or as 0.03."""
    return rate / 100 if abs(rate) >= 1 else rate


_WAYS = (_added, _taken_off, _share_added, _share_taken_off)
_PUT_ON = (_added, _share_added)
