"""Lead times in what a row says of itself: 'Nachschub, 15 Arbeitstage', 'this one runs 6 weeks', 'entrega 45 días'.

A remark may speak of a time that is not for certain a lead time, or not for certain read. Then the one that holds for
the rest of the list is not the row's either.
"""

import re
from collections.abc import Iterator
from functools import lru_cache

from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.times.around_delivery import is_notice
from tracker.intake.values.times.delivery_sentences import begins_with_samples, without_samples
from tracker.intake.values.times.done_besides import without_doings
from tracker.intake.values.times.goods_in_stock import in_stock_for_some_orders
from tracker.intake.values.times.lead import LeadTime, LeadUnit, counts_plain_days, lead_text, lead_unit
from tracker.intake.values.times.lead_sentences import find_lead, lead_in_remark, leads_by_grade
from tracker.intake.values.times.lead_unread import LeadUnread, lead_unread, names_week
from tracker.intake.values.times.times_in_words import counts_time, times_in_figures
from tracker.intake.words.lists import pattern, phrases
from tracker.intake.words.phrases import without

_PARTS = re.compile(rf",(?!\d)|[()\[\]]|\s[-–—/+]\s(?!\d)|(?<!\d)\s{pattern('range', 'and')}\s(?=\d)")
"""Between what a remark says of one thing and of the next; the dash of '4 - 6 weeks' and the 'and' of 'between 4 and 6
weeks' part nothing."""


@lru_cache(maxsize=8192)
def lead_remarked(text: str) -> LeadTime | LeadUnread | None:
    """The one lead time that a remark states; unread where it speaks of a time that may be one."""
    if leads_by_grade(text) or _of_samples(text) or any(map(in_stock_for_some_orders, clauses(text))):
        return LeadUnread(text.strip())
    # A word that leads to it may be parted from it by a comma: 'ab Werk, Lieferzeit 4 Wochen'.
    said = find_lead(text) or lead_in_remark(text)
    found = {said.days: said} if said is not None else {}
    for part in _times(text):
        lead = _read(part)
        if lead is None:
            return LeadUnread(part)
        found[lead.days] = lead
    if len(found) > 1:
        return LeadUnread(text.strip())
    return next(iter(found.values())) if found else lead_unread(text)


def _of_samples(text: str) -> bool:
    """'Muster kostenlos, Versand in 3 Tagen': of the row's own time it says nothing that is known."""
    told = [without_doings(clause) for clause in clauses(text) if not phrases("not_lead").find(clause)]
    return any(begins_with_samples(one) and counts_time(one) and not without_samples(one).strip() for one in told)


def _times(text: str) -> Iterator[str]:
    """The parts of a remark that speak of a time that is none of payment, validity and the like."""
    for clause in clauses(text):
        for part in (piece.strip() for piece in _PARTS.split(without_doings(clause))):
            # What a clause says of payment is said of a time between its commas as well: 'payment terms: 30 days, net'.
            whole = part if phrases("lead_topic").find(part) else clause
            if not (phrases("not_lead").find(whole) or is_notice(part)) and (_counts_time(part) or names_week(part)):
                yield part


_ONE_LETTER = re.compile(r"(\d)\s*[^\W\d_]\b")


def _counts_time(part: str) -> bool:
    """The letter of '38 w' may stand for a width, and counts weeks only where nothing else is said."""
    return counts_time(_ONE_LETTER.sub(r"\1", part)) or (counts_time(part) and lead_text(part) is not None)


def _read(part: str) -> LeadTime | None:
    """Weeks and working days by themselves, or behind words that lead to them; days alone may be those of payment."""
    part = without_this_line(part)
    said = lead_text(part) or find_lead(part) or _behind_words(part)
    if said is None or (lead_unit(said.words) is LeadUnit.DAY and find_lead(part) is None):
        return None
    return said


def without_this_line(text: str) -> str:
    """'4 weeks on that one' is 4 weeks, 'this one per MSF' per MSF."""
    return without(text, phrases("of_this_line").find(text)).strip(" .:")


def _behind_words(part: str) -> LeadTime | None:
    """'this one runs 6 weeks', 'dauert 6 Wochen'."""
    topics = phrases("takes_time").find(times_in_figures(part))
    if topics and phrases("may_be").find(times_in_figures(part)[: topics[-1].start]):
        # 'First orders may take 8 weeks'.
        return None
    return lead_text(times_in_figures(part)[topics[-1].end :].strip(" :")) if topics else None


def lead_of_some(text: str) -> LeadTime | LeadUnread | None:
    """The lead time in what a note says of its lines: 'ten weeks', 'comes from abroad and needs seven weeks'."""
    return bare_lead(text) or lead_remarked(text)


@lru_cache(maxsize=4096)
def bare_lead(text: str) -> LeadTime | None:
    """The lead time that is all that a note says of its lines: the 'ten weeks' of '24 pt: ten weeks'.

    Days without more may be those of payment.
    """
    said = lead_text(text.strip(" :.,"))
    return said if said is not None and said.high > 0 and counts_plain_days(said.words) is None else None


def stock_lead(text: str) -> LeadTime | None:
    """The lead time of lines that a note says are 'in stock', and nothing else."""
    found = phrases("from_stock").find(text)
    ends = bool(found) and not text[found[-1].end :].strip(" ,;:.") and not denied(text, found[-1])
    short = len(text.split()) <= _FEW_WORDS and not any(map(str.isdigit, text))
    return LeadTime(0, 0, text.strip()) if ends and short else None


_FEW_WORDS = 7
