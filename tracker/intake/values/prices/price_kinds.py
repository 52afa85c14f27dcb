"""Words of a row that say what kind of price it holds: 'List' beside 'Net', 'Old' beside 'New'."""

import re
from functools import lru_cache

from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.lists import phrases

_KINDS = frozenset({Role.LIST_PRICE, Role.NET_PRICE, Role.PREVIOUS_PRICE})
_PLAINLY = 0.9
_LONGEST = 30
_FIGURE = re.compile(r"\d")


@lru_cache(maxsize=16384)
def tells_price_kind(text: str) -> bool:
    """Whether a cell says this and no more: such words tell no board or order from another."""
    # Most cells of a long list have a figure, which settles it at once.
    return len(text) <= _LONGEST and _FIGURE.search(text) is None and _names_kind(text.strip(" ().:"))


@lru_cache(maxsize=4096)
def _names_kind(words: str) -> bool:
    if phrases("price_ages").whole(words) is not None:
        return True
    return any(reading.role in _KINDS and reading.strength >= _PLAINLY for reading in header_roles(words))
