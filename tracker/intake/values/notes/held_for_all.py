"""What a text says of all lines though it excepts some from a part of it: 'SEK/ton delivered, except SBS: ex works'
gives its unit to SBS as well."""

from functools import lru_cache

from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.notes.lines_meant import LinesMeant
from tracker.intake.values.notes.statements import SaysMinimum, Statement, statements
from tracker.intake.values.orders.minimum import LeastUnread
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_remarked import lead_of_some
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.intake.values.times.validity import Validity

_SUBJECTS: tuple[tuple[type[object], ...], ...] = (
    (SaysCurrency, SaysBasis),
    (Delivery, ChargeWords),
    (LeadTime, LeadUnread),
    (SaysMinimum, LeastUnread),
    (Validity,),
)
"""Kinds of statements on one subject: an exception from one of them may be one from the others too."""


@lru_cache(maxsize=4096)
def held_for_all(meant: LinesMeant) -> tuple[Statement, ...]:
    """What is said of the other lines and holds for those excepted too: all on another subject than what is said of
    these; () where nothing is, for then it is not known from what they are excepted."""
    own = set(_subjects(meant.rest))
    if not own:
        return ()
    said = statements(meant.others)
    return tuple(one for one in said if _subject(one) not in (None, *own) and not getattr(one, "grades", ()))


def _subjects(text: str) -> list[int]:
    found = [subject for one in statements(text) if (subject := _subject(one)) is not None]
    return found if found or lead_of_some(text) is None else [_LEAD]


def _subject(one: Statement) -> int | None:
    return next((place for place, kinds in enumerate(_SUBJECTS) if isinstance(one, kinds)), None)


_LEAD = 2
