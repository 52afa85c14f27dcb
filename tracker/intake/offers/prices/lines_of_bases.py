"""A board's price on several bases line by line: '€/t | 1,210 | 1,204' over '€/1000 m² | 278.30 | 301.00'."""

from collections.abc import Iterable
from fractions import Fraction

from tracker.intake.offers.draft import Draft
from tracker.intake.offers.prices.twins import about, tell_same_price, tonne
from tracker.trade.offer import State

_ROUNDED = Fraction(2, 1000)
"""How far two figures for one price may differ once on one basis: each is rounded to its own cents."""


def joined_down(drafts: Iterable[Draft]) -> list[Draft]:
    """Prices right below each other for one board, order and delivery that come to the same money are one offer.

    The upper one stands for it. Unlike prices of one row, those that differ are left as they are: the next line may be
    of other goods.
    """
    kept: list[Draft] = []
    lowest: dict[int, tuple[Draft, int]] = {}
    for draft in drafts:
        upper, row = lowest.get(draft.cell.column, (draft, draft.cell.row))
        if row + 1 == draft.cell.row and _same_money(upper, draft):
            upper.also = (*upper.also, draft.where, *draft.also)
            tell_same_price(upper, draft)
        else:
            upper = draft
            kept.append(draft)
        lowest[draft.cell.column] = upper, draft.cell.row
    return kept


def _same_money(one: Draft, other: Draft) -> bool:
    if one.basis is other.basis or one.state is not State.ACCEPTED or other.state is not State.ACCEPTED:
        return False
    if (one.currency, one.delivered, one.product) != (other.currency, other.delivered, other.product):
        return False
    first, second = tonne(one), tonne(other)
    if about(one) != about(other) or first is None or second is None:
        return False
    return abs(first - second) <= _ROUNDED * max(first, second)
