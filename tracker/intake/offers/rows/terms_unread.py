"""What is said of terms around a table and gives none of them: 'lead time as per schedule A' over the one of two equal
tables, 'schedule B' over the other. Their lines are no repeats, though all that was read of them agrees."""

from collections.abc import Iterable, Sequence, Set
from functools import lru_cache

from tracker.intake.offers.draft import Draft
from tracker.intake.offers.notes.scope import Level
from tracker.intake.tables.table import Words
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.statements import Statement, statements
from tracker.intake.values.notes.topics import OF_TERMS, topic_of
from tracker.intake.values.orders.minimum import LeastUnread
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.intake.values.times.validity import Validity
from tracker.intake.words.fold import fold


def mark_terms_unread(drafts: Sequence[Draft], levels: Iterable[Level], *, alone: bool) -> None:
    """Keeps with each draft the parts of the texts over it, and around its table on its own sheet, that speak of terms
    and give none. Over all lines of a table that is `alone` and has no headings the same is said."""
    if alone and all(headings is None for _, headings in (draft.block for draft in drafts)):
        return
    around = _unread(words for level in levels if not level.foreign for words in level.texts)
    for draft in drafts:
        _, headings = draft.block
        draft.unread = around if headings is None else around | _unread(headings.own)


def _unread(texts: Iterable[Words]) -> frozenset[str]:
    return frozenset(part for words in texts for part in _unread_in(words.text))


@lru_cache(maxsize=4096)
def _unread_in(text: str) -> frozenset[str]:
    parts = (part for clause in clauses(text) for part in COMMA.split(clause))
    read = {type(one) for one in statements(text)}
    return frozenset(fold(part).strip() for part in parts if _is_unread(part, read))


def _is_unread(part: str, read: Set[type[object]]) -> bool:
    """`read`: the kinds of what is read in the whole text, where a part may mean another thing."""
    said = statements(part)
    if any(_leaves_open(one) or type(one) not in read for one in said):
        return True
    return not said and bool(topic_of(part, *OF_TERMS, "valid"))


def _leaves_open(one: Statement) -> bool:
    match one:
        case LeadUnread() | LeastUnread():
            return True
        case Validity():
            return one.unread
        case Delivery():
            return one.delivered is None
        case ChargeWords():
            return not one.amounts
    return False
