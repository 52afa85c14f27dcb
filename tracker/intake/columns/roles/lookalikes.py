"""Roles that share a word of a head with the one that is meant: 'qty on hand' is stock, and no order size."""

from collections.abc import Sequence

from tracker.intake.columns.column import Column
from tracker.intake.grid import Cell
from tracker.intake.tables.headers.periods import YEAR
from tracker.intake.values.heads.header import Header
from tracker.intake.values.heads.roles import ON_TOP, ORDER_SIZES, Role
from tracker.intake.values.prices.currency import currency_text
from tracker.intake.values.prices.money_ticked import money_ticked
from tracker.intake.words.lists import phrases

_PARTICULAR = (Role.PREVIOUS_PRICE, Role.LIST_PRICE, Role.NET_PRICE, Role.ALL_IN)
_EQUALLY = 0.02


def without_lookalikes(candidates: dict[Role, float], said: Sequence[Header]) -> dict[Role, float]:
    """The roles that a column's heads may name, by strength, without those that another of them explains."""
    dropped = {role for role in ON_TOP if _is_index_of(candidates, role)}
    if Role.SHEETS_WEIGHT in candidates:
        # 'Weight lb/M' is what a thousand sheets weigh, and no basis weight.
        dropped.add(Role.WEIGHT)
    if Role.STOCK in candidates:
        # 'Qty on hand' is stock, though 'qty' alone is an order size.
        dropped.add(Role.BRACKET)
    if any(role in candidates for role in _PARTICULAR):
        # 'Prior price' is no price to pay.
        dropped.add(Role.PRICE)
    left = {role: strength for role, strength in candidates.items() if role not in dropped}
    yearly = any(phrases("yearly").find(head.text) or YEAR.search(head.text) for head in said)
    return _bought_in_a_year(left) if yearly else left


def marks_money(column: Column, candidates: dict[Role, float], cells: Sequence[Cell]) -> bool:
    """'US$' below 'Marked', which is only like a word that heads something else, and 'X' below 'US$'."""
    if all(money_ticked(column.text, cell.text) is not None for cell in cells):
        return bool(cells)
    likeness = max(candidates.values(), default=0) < _PLAINLY
    return likeness and all(currency_text(cell.text) is not None for cell in cells)


_PLAINLY = 0.8


def _is_index_of(candidates: dict[Role, float], charge: Role) -> bool:
    """'Energy index' is an index of what energy costs; 'Energy surcharge (index)' and 'Energy index surcharge' charge.

    Where 'index' is all that stands beside the word of the charge, the two are told equally strongly.
    """
    if Role.INDEX not in candidates or charge not in candidates or charge is Role.CHARGE or Role.CHARGE in candidates:
        return False
    return candidates[charge] - candidates[Role.INDEX] <= _EQUALLY


def _bought_in_a_year(candidates: dict[Role, float]) -> dict[Role, float]:
    """'Volume per year' or 'Volume 2025' beside a price bounds no single order."""
    return {Role.STOCK if role in ORDER_SIZES else role: strength for role, strength in candidates.items()}
