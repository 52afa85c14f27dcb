"""What the lines over a group of columns say of its prices: until when they hold, when board comes, and its freight."""

from tracker.intake.columns.column import Column
from tracker.intake.values.freight.delivery import Delivery, find_delivery
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_by_itself import lead_by_itself
from tracker.intake.values.times.lead_sentences import find_lead, lead_in_remark
from tracker.intake.values.times.lead_unread import LeadUnread, lead_unread
from tracker.intake.values.times.validity import Validity, validity
from tracker.intake.values.times.validity_cell import validity_text


def until_of_group(column: Column) -> Validity | None:
    """'good thru 12/31/2026', 'Gültig bis: 31.12.2026'; None where more than one line gives a day, or none speaks of
    it. 'Offer valid: until withdrawn' is unread, and what is said of other prices not this one's."""
    told = [said for cell in column.lines if (said := validity(cell.text) or _labelled(cell.text)) is not None]
    found = {said for said in told if not said.unread} or set(told)
    return found.pop() if len(found) == 1 else None


def _labelled(text: str) -> Validity | None:
    """'Offer valid: see letter': what stands behind a label of last days, whatever it says."""
    label, _, value = text.partition(":")
    named = bool(value.strip()) and any(reading.role is Role.VALIDITY for reading in header_roles(label)[:1])
    return validity_text(value) if named else None


def lead_of_group(column: Column) -> LeadTime | LeadUnread | None:
    """'Lead time: 4 weeks', 'FOB mill, 4 weeks'; 'Lead time: tbd' is unread."""
    texts = [cell.text for cell in column.lines]
    read = (find_lead(text) or lead_by_itself(text) or lead_in_remark(text) for text in texts)
    found = {said.days: said for said in read if said is not None}
    if not found:
        return next(filter(None, map(lead_unread, texts)), None)
    return next(iter(found.values())) if len(found) == 1 else None


def delivery_of_group(column: Column) -> Delivery | None:
    """'F.O.B. MILL', 'Lieferbedingung: frei Haus'."""
    read = (find_delivery(cell.text) for cell in column.lines)
    found = {said.delivered: said for said in read if said is not None and not said.of_lead_time}
    return next(iter(found.values())) if len(found) == 1 else None
