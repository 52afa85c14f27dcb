"""Prices that a buyer named himself, repeated beside the offer: 'Your target | Your current price | Our quote'."""

from collections.abc import Iterable

from tracker.intake.columns.column import Column
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.lists import phrases

BUYERS_PRICE = "price"
"""In the word list: 'your price', which is what the buyer named or what the vendor makes him pay."""


def named_by_buyer(priced: Iterable[Column]) -> list[Column]:
    """The columns of what a buyer pays today or wishes for, where another beside them is called the offer.

    'Your price' is the buyer's own only ahead of a quote: behind 'Our offer', or with a discount between the two, it
    may be what is left for him to pay.
    """
    every = list(priced)
    columns = [column for column in every if column.role is not Role.DISCOUNT]
    offered = [column.index for column in columns if _is_offered(column)]
    discounted = len(columns) < len(every)
    if not offered:
        return []
    return [
        column
        for column in columns
        if column.index not in offered
        and (said := whose_figure(column)) is not None
        and (said != BUYERS_PRICE or (column.index < min(offered) and not discounted))
    ]


def whose_figure(column: Column) -> str | None:
    """What a head says of a figure that is the buyer's, by the word list; None for all other heads."""
    return next((match.value for match in phrases("buyers_figures").find(column.text)), None)


def _is_offered(column: Column) -> bool:
    """'Our quote', 'Offer price'; not 'Your current price (before our quote)'."""
    return whose_figure(column) is None and bool(phrases("quoted_now").find(column.text))
