"""Order sizes in titles and sub-headings: 'Orders from 50 cwt' over a table, 'Order upp till 3 t' over some rows."""

import re
from collections.abc import Iterable
from functools import lru_cache

from tracker.intake.offers.notes.scope import Scope
from tracker.intake.tables.table import Words
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.notes.statements import SaysMinimum, Statement, statements
from tracker.intake.values.orders.brackets import Bracket
from tracker.intake.values.orders.minimum import LeastUnread
from tracker.intake.values.orders.worded_brackets import bracket_behind_words
from tracker.intake.words.lists import phrases

_LONGEST = 60


def bracket_in_title(text: str) -> Bracket | None:
    """The order size that a short title ends with, perhaps behind a few words; None for a smallest order or none.

    'Frei Haus ab 5 t' says from which order on freight is paid, and not for which orders the prices are.
    """
    return None if any(map(_of_freight, statements(text))) else bracket_in_heading(text)


def _of_freight(said: Statement) -> bool:
    return isinstance(said, Delivery) and said.delivered is None


@lru_cache(maxsize=4096)
def bracket_in_heading(text: str) -> Bracket | None:
    """The same of a sub-heading: 'Frei Haus ab 5 t' over some of the rows tells their prices from the others. 'No
    sheets below 500 kg' are not what stands below it."""
    if len(text) > _LONGEST or any(isinstance(said, SaysMinimum | LeastUnread) for said in statements(text)):
        return None
    return None if phrases("negations").find(_STOP.split(text)[-1]) else bracket_behind_words(text)


_STOP = re.compile(r"[,;:]\s|\s[–—-]\s")


def brackets_in(texts: Iterable[Words]) -> tuple[Bracket, ...]:
    """Every order size among some titles."""
    found = (bracket_in_heading(words.text) for words in texts)
    return tuple(bracket for bracket in found if bracket is not None)


def bracket_around(scope: Scope) -> tuple[Words, Bracket] | None:
    """The order size of the nearest sub-heading or title that names one."""
    for level in scope.levels:
        if level.name not in ("heading", "title", "sheet name"):
            continue
        for words in reversed(level.texts):
            bracket = (bracket_in_heading if level.name == "heading" else bracket_in_title)(words.text)
            if bracket is not None:
                return words, bracket
    return None
