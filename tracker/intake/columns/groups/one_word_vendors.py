"""Vendors called by one word: 'Orvelune' between 'Cartons Fenwold' and 'Papeteries Orrick', each over a price and a
lead time of its own, as those of nobody but who quotes are."""

from collections.abc import Sequence
from dataclasses import replace

from tracker.intake.columns.column import Column, Kind, PriceColumn
from tracker.intake.grid import Cell
from tracker.intake.tables.table import Words
from tracker.intake.values.firms.own_words import has_words_of_its_own
from tracker.intake.values.heads.header import Header, without_unit
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.fold import fold
from tracker.intake.words.likeness import is_listed
from tracker.intake.words.lists import phrases

_FEWEST_FIRMS, _SHORTEST = 2, 4


def with_one_word_vendors(
    prices: Sequence[PriceColumn], columns: Sequence[Column], texts: Sequence[Words]
) -> list[PriceColumn]:  # fmt: skip
    """The prices with the vendors who are named in one row with firms, and whose columns have the same heads as theirs.
    'Orvelune' over a price alone may be anything, as may a word of some list: 'Contrat', 'Plan'. Where nothing says
    that bids are compared it may be the town of a firm's second mill, and is asked."""
    blocks = {price.index: _block(price, columns) for price in prices}
    firms = [blocks[price.index] for price in prices if price.vendor]
    told = any(phrases("bids_compared").find(words.text) for words in texts)
    return [price if price.vendor else _named(price, blocks[price.index], firms, told=told) for price in prices]


_Block = tuple[Cell, Header, tuple[tuple[str, ...], ...]]
"""The cell over a price and a lead time, what it says, and what stands below it over each of their columns."""


def _block(price: PriceColumn, columns: Sequence[Column]) -> _Block | None:
    if len(price.column.heads) < 2:
        return None
    name, *_ = price.column.heads
    under = [one for one in columns if one.heads and one.heads[0].row == name.row and one.heads[0].text == name.text]
    if not any(one.role is Role.LEAD_TIME for one in under):
        return None
    return name, price.column.said[0], tuple(tuple(fold(cell.text) for cell in one.heads[1:]) for one in under)


def _named(
    price: PriceColumn, block: _Block | None, firms: Sequence[_Block | None], *, told: bool
) -> PriceColumn:  # fmt: skip
    """`told`: it is said that bids are compared."""
    if block is None or price.kind is not Kind.OFFER or price.unexplained:
        return price
    cell, head, heads = block
    alike = [one for one in firms if one is not None and one[0].row == cell.row and one[2] == heads]
    name = without_unit(head).strip()
    if len({one[0].text for one in alike}) < _FEWEST_FIRMS or not _is_one_name(name) or head.roles:
        return price
    return replace(price, vendor=name) if told else replace(price, unexplained=True, label=price.label or name)


def _is_one_name(name: str) -> bool:
    written = name.isalpha() and name[0].isupper() and len(name) >= _SHORTEST
    return written and has_words_of_its_own(name) and not is_listed(fold(name))
