"""Which terms a text tells, so that two texts of one kind are known from two that hold side by side."""

from collections.abc import Iterator

from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.notes.statements import SaysMinimum, statements
from tracker.intake.values.orders.minimum import LeastUnread
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_remarked import lead_remarked
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.intake.values.times.validity import Validity
from tracker.intake.words.lists import phrases

_OF_BOARDS = (Delivery, LeadTime, LeadUnread, Validity, ChargeWords, SaysMinimum, LeastUnread)
"""What a board may have of its own."""


def terms_told(text: str) -> frozenset[tuple[type[object], str]]:
    """The kinds of terms that a text tells: each charge is one of its own, and so are the lead times of rolls and of
    sheets."""
    return frozenset(_terms_in(text))


def matters_told(text: str) -> frozenset[tuple[type[object], str]]:
    """Which terms a text tells where it stands by a board: there '4 weeks' is its lead time."""
    if any(isinstance(one, _OF_BOARDS) for one in statements(text)):
        return terms_told(text)
    return frozenset({(LeadTime, "")} if lead_remarked(text) is not None else ())


def _terms_in(text: str) -> Iterator[tuple[type[object], str]]:
    said = statements(text)
    charged = any(isinstance(one, ChargeWords) for one in said)
    forms = " ".join(sorted(match.value for match in phrases("forms").find(text)))
    for one in said:
        if isinstance(one, ChargeWords):
            yield ChargeWords, f"{one.kind} {one.label.lower()}"
        elif not (isinstance(one, Delivery) and charged):
            # 'Carriage extra at £18.50' says in passing that prices are without it.
            yield type(one), forms
