"""Heads over figures like prices that say whose prices they are: a market's, or the firm's that offers them."""

from collections.abc import Iterable, Sequence

from tracker.intake.columns.column import Column, basis_in_head
from tracker.intake.columns.sizes.order_sizes import without_unit
from tracker.intake.tables.table import Words
from tracker.intake.values.changes.others_prices import Offering, heading_offers
from tracker.intake.values.firms.company import company_name
from tracker.intake.values.prices.units_of_parts import parts_named
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases


def says_whose_prices(column: Column, above: Iterable[Words]) -> bool:
    """'For export: US$' beside 'Domestic price', and 'Abbotsreach offer' beside those of competitors; `above`: what
    stands over the table."""
    of_part = bool(column.currencies) and bool(parts_named(column.text))
    return of_part or any(_is_offer_of(words.text, column) for words in above)


def names_others_prices(column: Column) -> bool:
    """'Market', 'Competitor A' beside what a firm offers."""
    return bool(column.said) and heading_offers(column.said[-1].text) is not Offering.SURELY


def others_prices(columns: Sequence[Column]) -> list[Column]:
    """Those of columns that name such prices, where others beside them do not."""
    named = [column for column in columns if names_others_prices(column)]
    return named if len(named) < len(columns) else []


def _is_offer_of(text: str, column: Column) -> bool:
    """'Abbotsreach offer', 'Angebot Abbotsreach' below the letterhead of Abbotsreach Board, Inc.: the first words of
    the firm's name beside a word for the price of an offer, and nothing else."""
    if not column.said:
        return False
    head = without_unit(column.said[-1], basis_in_head(column.said[-1]))
    words = fold(head).split()
    ends = [(words[:-1], words[-1]), (words[1:], words[0])] if len(words) > 1 else []
    named = [firm for firm, offer in ends if phrases("prices_of_this_offer").whole(offer) is not None]
    name = company_name(text) if named else None
    own = fold(name).split() if name is not None else []
    return any(own[: len(firm)] == firm for firm in named)
