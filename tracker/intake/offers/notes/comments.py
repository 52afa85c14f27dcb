"""Comments at a price's own cell: terms that they state are taken, changes asked about, and each is told."""

from tracker.intake.offers.draft import Draft
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.said import at
from tracker.intake.offers.prices.price_changes import ask_whether_it_stands
from tracker.intake.values.changes.price_changes import price_changes
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.validity import Validity
from tracker.trade.offer import Evidence, NoteCode


def fill_comment(draft: Draft, facts: FileFacts) -> None:
    """What a comment says of the price it is at, before all that stands around it."""
    comment = " ".join(draft.cell.comment.split())
    if not comment:
        return
    draft.evidence.append(Evidence("comment", at(draft.cell), draft.cell.comment))
    draft.note(NoteCode.NUMBER_AMBIGUOUS, draft.where, f"A comment at this price says “{comment}”.")
    for said in statements(draft.cell.comment):
        _take_term(draft, said, comment, facts)
    if _changes_its_price(comment):
        ask_whether_it_stands(draft, comment, "in the comment at this price changes what it comes to", facts)


def _take_term(draft: Draft, said: object, comment: str, facts: FileFacts) -> None:
    if isinstance(said, Validity):
        day = said.last_day(facts.date_order, facts.list_date)
        draft.valid_until = day
        _tell(draft, "valid_until", comment, known=day is not None)
    elif isinstance(said, LeadTime):
        draft.lead_days = said.days
        _tell(draft, "lead_days", comment, known=True)
    elif isinstance(said, Delivery) and not said.of_lead_time:
        draft.delivered = said.delivered
        _tell(draft, "delivered", comment, known=said.delivered is not None)


def _tell(draft: Draft, field: str, comment: str, *, known: bool) -> None:
    if known:
        draft.evidence.append(Evidence(field, draft.where, comment))


def _changes_its_price(comment: str) -> bool:
    """'Less 5 %' and 'plus 25 for C2S': a comment speaks of the price that it is at without naming it."""
    return bool(price_changes(comment) or price_changes(f"price {comment}"))
