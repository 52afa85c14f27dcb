"""Order sizes in titles and sub-headings: 'Orders from 50 cwt' over a table, 'Order upp till 3 t' over some rows."""

import re
from collections.abc import Iterable
from functools import lru_cache

from tracker.intake.offers.notes.scope import Scope
from tracker.intake.tables.table import Words
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.notes.statements import SaysMinimum, Statement, statements
from tracker.intake.values.orders.bracket_pieces import NAMED_SIZE
from tracker.intake.values.orders.brackets import Bracket, bracket_text
from tracker.intake.values.orders.minimum import LeastUnread
from tracker.intake.values.orders.worded_brackets import bracket_behind_words
from tracker.intake.values.prices.money import price_unit
from tracker.intake.words.lists import phrases, without_words

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
    if phrases("negations").find(_STOP.split(text)[-1]) or any(phrases(one).find(text) for one in _OTHER_MATTERS):
        return None
    without_brackets = text.replace(" (", ", ").replace(")", "")
    return bracket_behind_words(text) or _beside_a_unit(text) or _beside_a_unit(without_brackets)


_OTHER_MATTERS = ("discounts", "stored", "samples")
"""'Discount from 20 ST' and 'Free storage up to 20 ST' bound no price."""
_STOP = re.compile(r"[,;:]\s|\s[–—-]\s")


def _beside_a_unit(text: str) -> Bracket | None:
    """The size of 'Mengen ab 1 t, Preis je 1.000 kg' and 'Price per tonne - orders of 5 t and more': beside it stands
    what the prices are per, and nothing else that might be for such orders alone."""
    parts = [part.strip() for part in _STOP.split(text) if part.strip()]
    sizes = [(part, size) for part in parts if (size := bracket_behind_words(part)) is not None]
    if len(sizes) != 1 or len(parts) == 1:
        return None
    ((sized, size),) = sizes
    ahead = without_words(sized.partition(size.words)[0], "order_words", "goods_of_a_size")
    others = [part for part in parts if part != sized]
    if any(map(str.isalnum, ahead)) or not any(map(_is_a_unit, others)):
        return None
    return size if all(_is_a_unit(part) or _names_a_size(part) for part in others) else None


def _is_a_unit(part: str) -> bool:
    """'Preis je 1.000 kg', 'prices in US$ per cwt'."""
    words = without_words(part, "price_words").split()
    small = len(words) > 1 and phrases("says_nothing_more").whole(words[0]) is not None
    return any(price_unit(" ".join(words[first:])) is not None for first in range(1 + small))


def _names_a_size(part: str) -> bool:
    """The 'Small lots' of 'Small lots: under 1 t, price per tonne'."""
    named = bracket_text(part)
    return named is not None and named.not_weight == NAMED_SIZE


def brackets_in(texts: Iterable[Words]) -> list[tuple[Words, Bracket]]:
    """Every order size among some titles, each with its title."""
    found = ((words, bracket_in_heading(words.text)) for words in texts)
    return [(words, bracket) for words, bracket in found if bracket is not None]


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
