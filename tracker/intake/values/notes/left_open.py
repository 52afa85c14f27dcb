"""Terms that a note tells and leaves open: a smallest order that is not understood, and what stands behind other goods.

'Prices for tissue are delivered, minimum 5 t' may tell the smallest order of board, or of tissue.
"""

from collections.abc import Iterator

from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.orders.minimum import LeastUnread, least_unread, tells_a_least
from tracker.intake.values.orders.other_goods import behind_other_goods
from tracker.intake.values.times.lead_sentences import find_lead
from tracker.intake.values.times.lead_unread import LeadUnread


def left_open(text: str, usual: str) -> Iterator[LeadUnread | LeastUnread]:
    """The lead times and smallest orders that a text tells so; `usual`: what it says of usual orders."""
    unread = least_unread(usual)
    if unread is not None:
        yield unread
    for clause in clauses(text):
        behind = behind_other_goods(clause)
        if behind and find_lead(behind) is not None:
            yield LeadUnread(clause)
        if behind and tells_a_least(behind):
            yield LeastUnread(clause)
