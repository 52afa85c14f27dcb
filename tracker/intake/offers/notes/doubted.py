"""What a text says of prices that it may not be about: neither taken for theirs nor left out, but open."""

from collections.abc import Iterable, Iterator
from dataclasses import replace

from tracker.intake.values.boards.open_grades import GRADES
from tracker.intake.values.changes.price_changes import ChangesPrice
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.notes.statements import SaysMinimum, Statement
from tracker.intake.values.orders.minimum import LeastUnread
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.intake.values.times.validity import Validity


def left_open(text: str, said: Iterable[Statement]) -> Iterator[Statement]:
    """The statements of a text as what is not known for certain: a charge without its amount, units that may be those
    of any board, times and smallest orders that are not read."""
    for one in said:
        if isinstance(one, ChargeWords):
            yield replace(one, amounts=())
        elif isinstance(one, SaysCurrency | SaysBasis):
            yield replace(one, grades=(), perhaps=GRADES)
        elif isinstance(one, Delivery):
            yield replace(one, delivered=None, perhaps=True)
        elif isinstance(one, LeadTime | LeadUnread):
            yield LeadUnread(text.strip(), perhaps=True)
        elif isinstance(one, Validity):
            yield Validity(one.words, unread=True, perhaps=True)
        elif isinstance(one, SaysMinimum | LeastUnread):
            yield LeastUnread(text.strip(), perhaps=True)
        elif isinstance(one, ChangesPrice):
            yield one
