"""Terms that a price's own head names: they come before any said of the whole sheet."""

from tracker.intake.columns.column import PriceColumn
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.said import at
from tracker.intake.offers.terms.terms import not_counted
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.trade.offer import Evidence, NoteCode


def fill_until(draft: Draft, price: PriceColumn, facts: FileFacts) -> None:
    """The last day that the price's own head names."""
    if price.until is None:
        return
    head = price.column.head_saying(price.until.words)
    day = price.until.last_day(facts.date_order, facts.list_date)
    draft.valid_until = day
    if day is not None:
        draft.evidence.append(Evidence("valid_until", at(head), head.text.strip()))
    elif price.until.ambiguous:
        text = f"The date in “{price.until.words}” can be read as day and month or month and day."
        draft.note(NoteCode.DATE_AMBIGUOUS, at(head), text)
    else:
        # '30 days' from nobody knows when.
        text = f"“{price.until.words}” gives no day until which the price holds."
        draft.note(NoteCode.VALIDITY_UNREAD, at(head), text)


def fill_lead_of_head(draft: Draft, price: PriceColumn) -> None:
    """The weeks that the price's own head names."""
    if isinstance(price.lead, LeadUnread):
        head = price.column.head_saying(price.lead.words)
        draft.lead_days = None
        draft.note(NoteCode.LEAD_TIME_UNREAD, at(head), not_counted(price.lead.words))
    elif price.lead is not None:
        head = price.column.head_saying(price.lead.words)
        draft.lead_days = price.lead.days
        draft.evidence.append(Evidence("lead_days", at(head), head.text.strip()))
