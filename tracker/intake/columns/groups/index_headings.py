"""Groups of columns that an index heads: 'Published index, May' over '16 pt | 18 pt', beside 'Our prices'."""

import re
from collections.abc import Sequence
from dataclasses import replace

from tracker.intake.columns.column import Kind, PriceColumn, vendor_in_head
from tracker.intake.tables.headers.periods import without_periods
from tracker.intake.values.heads.header import Header
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import without


def without_indexes(prices: Sequence[PriceColumn]) -> list[PriceColumn]:
    """The prices with those set aside that an index heads. Of 'Index-linked contract', which says more than that it is
    an index, it is asked."""
    return [_of_index(price) if price.kind is Kind.OFFER else price for price in prices]


def _of_index(price: PriceColumn) -> PriceColumn:
    heads = [head for head in price.column.said[:-1] if speaks_of_index(head)]
    if not heads or price.vendor:
        return price
    if any(_names_index_alone(head.text) for head in heads):
        return replace(price, kind=Kind.LIST)
    return replace(price, unexplained=True, label=price.label or price.column.text)


def speaks_of_index(head: Header) -> bool:
    """'Index (2020 = 100)', 'Published index, May', and 'Index-linked contract'."""
    return bool(phrases("index").find(_first_part(head.text))) and vendor_in_head(head) is None


def _names_index_alone(text: str) -> bool:
    first = without_periods(_first_part(text))
    rest = without(first, joined("index", "index_words").find(first))
    return not any(map(str.isalnum, rest))


def _first_part(text: str) -> str:
    """Before a comma, a bracket or a dash: what follows tells of when it is, on what base, or what it is for."""
    return _ENDS.split(text.strip(), maxsplit=1)[0]


_ENDS = re.compile(r"[,;:(\[\n]|\s[-–—]\s")
