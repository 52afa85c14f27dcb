"""Which column of units is which price's: 'Price | Per | Price | Per', 'Unit | Roll price | Unit | Sheet price'."""

from collections.abc import Mapping, Sequence
from itertools import takewhile

from tracker.intake.columns.column import Column, Columns, PriceColumn
from tracker.intake.grid import Cell
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.money import unit_of_text
from tracker.trade.basis import BY_SHEET, Basis

_UNITS = (Role.BASIS, Role.PER_QUANTITY, Role.CURRENCY)
_BEHIND, _BEFORE = 1, -1
_Held = Mapping[Role, tuple[Column, ...]]


def without_units_of_others(held: _Held, columns: Columns, price: PriceColumn) -> dict[Role, tuple[Column, ...]]:
    """The columns that a price holds without the units of the other prices: where every price has one right behind it,
    or every price one right before it, and none is left over, each says what its own price is in. A single one is of
    all prices; any others are, too, and contradict each other.
    """
    told = {role: own for role in _UNITS if (own := own_units(columns, role))}
    left = {role: _of_price(found, told.get(role), price) for role, found in held.items()}
    units = told.get(Role.BASIS)
    if units is not None and Role.PER_QUANTITY in held and Role.PER_QUANTITY not in told:
        # The 100 of 'Price | PE | Unit | Price | Unit' counts no units of the other price.
        beside = _run(price.index, _BEHIND if units[price.index] > price.index else _BEFORE, columns)
        left[Role.PER_QUANTITY] = tuple(one for one in held[Role.PER_QUANTITY] if one.index in beside)
    return left


def own_units(columns: Columns, role: Role = Role.BASIS) -> dict[int, int]:
    """Price column -> the one column of this role that is its own; {} where they are not told apart by their places."""
    places = {column.index for column in columns.of(role)}
    priced = [price.index for price in columns.prices]
    if len(places) < 2 or len(places) != len(priced):
        return {}
    for step in (_BEHIND, _BEFORE):
        beside = {index: [one for one in _run(index, step, columns) if one in places] for index in priced}
        if all(len(found) == 1 for found in beside.values()):
            return {index: found[0] for index, found in beside.items()}
    return {}


def on_several_bases(columns: Columns, samples: Mapping[int, Sequence[Cell]]) -> bool:
    """'Price 1 | Unit 1 | Price 2 | Unit 2' over 'ST' and 'MSF': each price has a column of units, no two of which name
    a unit in common, and what board weighs puts all on one basis, where they agree or not."""
    named = [[_bases(cell) for cell in samples[unit]] for unit in own_units(columns).values()]
    if not named or any(not bases or bases & BY_SHEET for of_one in named for bases in of_one):
        return False
    told = [frozenset().union(*of_one) for of_one in named]
    return sum(map(len, told)) == len(frozenset().union(*told))


def _bases(cell: Cell) -> frozenset[Basis]:
    unit = unit_of_text(cell.text)
    return unit.basis.bases if unit is not None and unit.basis is not None else frozenset()


def _of_price(found: tuple[Column, ...], own: Mapping[int, int] | None, price: PriceColumn) -> tuple[Column, ...]:
    return found if own is None else tuple(column for column in found if column.index == own[price.index])


def _run(price: int, step: int, columns: Columns) -> list[int]:
    """The columns of units that follow each other from the price on, to one side."""
    units = {column.index for column in columns.of(*_UNITS)}
    return list(takewhile(units.__contains__, range(price + step, price + step * (len(units) + 1), step)))
