"""Columns among prices whose own heads do not say what those beside them do."""

from collections.abc import Sequence

from tracker.intake.columns.column import PriceColumn
from tracker.intake.columns.sizes.forms import form_of
from tracker.intake.values.prices.money import price_unit


def standing_apart(offers: Sequence[PriceColumn]) -> frozenset[int]:
    """Columns beside prices by order size, caliper, weight, grade or coating whose own heads say none of these.

    What they hold may be a price for every size, an amount, a wish or an old price: their heads do not tell. Rolls
    have no size of sheet: 'Rolls | Sheets 70 x 100 | Sheets 72 x 102'. So it is with figures that only the head of
    another column calls prices, beside prices that it is not said of.
    """
    told = {price.index: _spread(price) for price in offers}
    every = [kinds for kinds in told.values() if kinds]
    shared = frozenset.intersection(*every) if len(every) > 1 else frozenset()
    rolls = {price.index for price in offers if shared == {"sheet"} and form_of(price.column) == "roll"}
    unlike = {index for index, kinds in told.items() if shared and not kinds and index not in rolls}
    return frozenset(unlike | {price.index for price in offers if not told[price.index] and _lent(price, offers)})


def _spread(price: PriceColumn) -> frozenset[str]:
    said = {
        "order size": price.bracket or price.sizes,
        "caliper": price.caliper,
        "weight": price.weights,
        "board": price.grade if price.grade is not None and price.grade.tells_board else None,
        "sheet": price.sheets,
    }
    return frozenset(kind for kind, value in said.items() if value)


def _lent(price: PriceColumn, offers: Sequence[PriceColumn]) -> bool:
    """The head 'Prix €/tonne' stands over the boards, runs on over a column that no known word heads, and ends where
    'Départ usine' begins: it may be the title of them all. 'Ark' over 'Format mm' and 'SEK/1000 ark' heads a group."""
    heads = price.column.heads
    if heads and heads[-1].column == price.index and price_unit(heads[-1].text) is not None:
        return False
    lending = {head.column for head in price.column.heads} - {offer.index for offer in offers}
    others = [{head.column for head in offer.column.heads} for offer in offers if offer is not price]
    return bool(lending) and price.delivery is None and any(lending.isdisjoint(heads) for heads in others)
