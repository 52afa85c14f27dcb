"""Prices told apart by a sign that explains nothing: 'Price A' and 'Price B', 'Supplier 1' and 'Supplier 2'."""

from collections.abc import Sequence

from tracker.intake.columns.column import Column, PriceColumn, basis_in_head
from tracker.intake.columns.priced.labels import names_a_place
from tracker.intake.columns.sizes.order_sizes import without_unit
from tracker.intake.values.figures.web_widths import is_web_width
from tracker.intake.values.heads.header import Header
from tracker.intake.values.heads.roles import Role


def told_apart_by_letters(offers: Sequence[PriceColumn]) -> bool:
    """'Price A' and 'Price B', 'Price I' and 'Price II': a letter or a number is all that tells one from the next. Of
    places it is enough, and of what is measured: '3 in core' and '6 in core'."""
    labels = [_words(price.column) for price in offers if price.column.said]
    if len(labels) < 2 or len(labels) != len(offers) or len({len(label) for label in labels}) != 1:
        return False
    differing = [words for words in zip(*labels, strict=True) if len(set(words)) > 1]
    told = any(price.bracket or price.sizes or price.delivery or price.caliper or price.grade for price in offers)
    told = told or all(any(map(_explains_itself, price.column.said)) for price in offers)
    return not told and len(differing) == 1 and all(map(_is_a_sign, differing[0]))


def _explains_itself(head: Header) -> bool:
    return names_a_place(head) or is_web_width(head.text)


def _words(column: Column) -> list[str]:
    """The words of the lowest head, and of a vendor's above the units."""
    *above, lowest = column.said
    vendors = [without_unit(head, basis_in_head(head)) for head in above if head.role is Role.VENDOR]
    return " ".join([*vendors, lowest.text]).split()


def _is_a_sign(word: str) -> bool:
    """'A', '(1)', 'II': it counts, and explains nothing."""
    word = word.strip("()")
    return (len(word) == 1 and word.isalnum()) or set(word) <= set("IVX")
