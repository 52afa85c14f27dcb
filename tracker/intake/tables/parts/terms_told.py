"""Which terms a text tells, so that two texts of one kind are known from two that hold side by side."""

from collections.abc import Iterator

from tracker.intake.values.changes.price_changes import ChangesPrice, changes_of_row
from tracker.intake.values.changes.withdrawn import withdrawn
from tracker.intake.values.figures.sheetsize import SheetSize, find_sheet_sizes
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.notes.statements import SaysMinimum, statements
from tracker.intake.values.orders.minimum import LeastUnread
from tracker.intake.values.prices.tax import tax_included
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


def told_of_board(text: str) -> frozenset[tuple[type[object], str]]:
    """What a text beside a board tells of that one, which need be none of its terms: 'Discontinued', 'less 2 %',
    '28 x 40 in'."""
    return matters_told(text) or frozenset((type_, "") for type_ in _goods_told(text))


def _goods_told(text: str) -> Iterator[type[object]]:
    if withdrawn(text) or changes_of_row(text) or tax_included(text):
        yield ChangesPrice
    if find_sheet_sizes(text):
        yield SheetSize


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
