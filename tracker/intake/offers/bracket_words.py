"""Order sizes in titles and sub-headings: 'Orders from 50 cwt' over a table, 'Order upp till 3 t' over some rows."""

from collections.abc import Iterable
from functools import lru_cache

from tracker.intake.offers.scope import Scope
from tracker.intake.tables.table import Words
from tracker.intake.values.brackets import Bracket
from tracker.intake.values.statements import SaysMinimum, statements
from tracker.intake.values.worded_brackets import bracket_behind_words

_LONGEST = 60


@lru_cache(maxsize=4096)
def bracket_in_title(text: str) -> Bracket | None:
    """The order size that a short title ends with, perhaps behind a few words; None for a smallest order or none."""
    if len(text) > _LONGEST or any(isinstance(said, SaysMinimum) for said in statements(text)):
        return None
    return bracket_behind_words(text)


def brackets_in(texts: Iterable[Words]) -> tuple[Bracket, ...]:
    """Every order size among some titles."""
    found = (bracket_in_title(words.text) for words in texts)
    return tuple(bracket for bracket in found if bracket is not None)


def bracket_around(scope: Scope) -> tuple[Words, Bracket] | None:
    """The order size of the nearest sub-heading or title that names one."""
    for level in scope.levels:
        if level.name not in ("heading", "title", "sheet name"):
            continue
        for words in reversed(level.texts):
            bracket = bracket_in_title(words.text)
            if bracket is not None:
                return words, bracket
    return None
