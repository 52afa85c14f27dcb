"""The columns of a header in which prices stand, as far as its words tell."""

from collections.abc import Sequence

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import head_of_words, is_bare_number
from tracker.intake.tables.table import HeadedColumn
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.money import price_unit


def valued(columns: Sequence[HeadedColumn]) -> frozenset[int]:
    """Columns whose heads say price, or spread a property of board across; all without a known head when none does, and
    where every head is known, those of places: 'Zone 1 | Zone 2'."""
    heads = {column.index: head_of_words(column.text) for column in columns if column.heads}
    priced = frozenset(index for index, head in heads.items() if head is not None and (head.price or head.across))
    priced |= frozenset(column.index for column in columns if column.heads and is_bare_number(column.heads[-1]))
    priced |= frozenset(column.index for column in columns if len(column.heads) > 1 and _over_unit(column.heads))
    # 'Each cwt' over figures says what they are per, where 'Unit' stands over such words.
    per = frozenset(
        index for index, head in heads.items() if head is not None and head.role is Role.BASIS and head.unit
    )
    named = frozenset(index for index, head in heads.items() if head is not None and (head.named or head.unit))
    places = frozenset(index for index, head in heads.items() if head is not None and head.role is Role.DESTINATION)
    several = places if len(places) > 1 else frozenset()
    return priced or per or frozenset(heads) - named or several or frozenset(column.index for column in columns)


def _over_unit(heads: Sequence[Cell]) -> bool:
    """'Alderfen Board' over 'EUR/t': who quotes, by a word that heads boards elsewhere."""
    above, unit = head_of_words(heads[0].text), price_unit(heads[-1].text)
    priced = unit is not None and unit.currency is not None and unit.basis is not None
    return priced and above is not None and above.role in (Role.PRODUCT, Role.GRADE)
