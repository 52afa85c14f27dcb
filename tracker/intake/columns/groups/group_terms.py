"""What the lines over a group of columns say of its prices: until when they hold, when board comes, and its freight."""

from tracker.intake.columns.column import Column
from tracker.intake.values.freight.delivery import Delivery, find_delivery
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_by_itself import lead_by_itself
from tracker.intake.values.times.lead_sentences import find_lead, lead_in_remark
from tracker.intake.values.times.validity import Validity, validity


def until_of_group(column: Column) -> Validity | None:
    """'good thru 12/31/2026', 'Gültig bis: 31.12.2026'; None where no line, or more than one, gives a day."""
    found = {said for cell in column.lines if (said := validity(cell.text)) is not None and not said.unread}
    return found.pop() if len(found) == 1 else None


def lead_of_group(column: Column) -> LeadTime | None:
    """'Lead time: 4 weeks', 'FOB mill, 4 weeks'."""
    texts = [cell.text for cell in column.lines]
    read = (find_lead(text) or lead_by_itself(text) or lead_in_remark(text) for text in texts)
    found = {said.days: said for said in read if said is not None}
    return next(iter(found.values())) if len(found) == 1 else None


def delivery_of_group(column: Column) -> Delivery | None:
    """'F.O.B. MILL', 'Lieferbedingung: frei Haus'."""
    read = (find_delivery(cell.text) for cell in column.lines)
    found = {said.delivered: said for said in read if said is not None and not said.of_lead_time}
    return next(iter(found.values())) if len(found) == 1 else None
