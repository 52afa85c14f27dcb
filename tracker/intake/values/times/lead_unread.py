"""Lead times that are spoken of and can't be counted: 'Leverans v. 34', 'Lead time 4 weeks, sheets 6 weeks'."""

import re
from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.times.around_delivery import announced_in_weeks, without_notices
from tracker.intake.values.times.delivery_sentences import without_rhythms, without_samples
from tracker.intake.values.times.times_in_words import counts_in_figures
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases

_WEEK = re.compile(r"\W*(?:(?:in|i|en|under)\s+)?(?P<week>[^\W\d_]+\.?)\s*\d{1,2}(?!\d)")
_COUNT = re.compile(r"(?P<whole>\d+(?:[.,]\d{3}(?!\d))?)(?:[.,]\d+)?\s*(?P<unit>[^\W\d_]+(?:\s[^\W\d_]+)?)")
_LONGEST = 3
"""Digits of the longest lead time in days (our choice)."""
_COUNTED = ("day", "working_day", "week", "month")


@dataclass(frozen=True, slots=True)
class LeadUnread:
    """The words that speak of it."""

    words: str


@lru_cache(maxsize=8192)
def lead_unread(text: str) -> LeadUnread | None:
    """The first clause that names a week of the calendar, several times, or none where one should stand."""
    unread = (each for each in clauses(text) if _names_a_week(each) or speaks_of_time(each) or _leaves_open(each))
    clause = next(unread, None)
    return LeadUnread(clause.strip()) if clause is not None else None


def _names_a_week(clause: str) -> bool:
    """A week right behind words for delivery: 'Lieferung KW 34-36'."""
    topics = phrases("lead_topic").find(clause)
    behind = _WEEK.match(fold(clause[topics[-1].end :])) if topics else None
    return behind is not None and phrases("calendar_weeks").whole(behind["week"]) is not None


def speaks_of_time(clause: str) -> bool:
    """Weeks or days among words for lead time, and none for payment or validity."""
    if announced_in_weeks(clause):
        return True
    clause = without_samples(without_rhythms(without_notices(clause)))
    other = any(match.value == "any" for match in phrases("not_lead").find(clause))
    if other or not phrases("lead_topic").find(clause):
        return False
    return counts_time(clause)


def counts_time(text: str) -> bool:
    """Whether it counts days, weeks or months: '15 Arbeitstage', 'three weeks', '2 meses'. The 'dia' of '1200 dia'
    is a roll's diameter."""
    found = (
        match
        for match in _COUNT.finditer(counts_in_figures(text))
        if match["whole"].isdigit() and len(match["whole"]) <= _LONGEST
    )
    counted = (match["unit"] for match in found)
    return any(phrases("lead").whole(part) in _COUNTED for unit in counted for part in (unit, unit.split()[0]))


def names_week(text: str) -> bool:
    """Whether a text names a week of the calendar: 'KW 34', 'week 33'. The v of 'v. 34' begins it."""
    return any(
        re.match(r"\.?\s*\d{1,2}(?![\d%°])", text[match.end :]) is not None
        for match in phrases("calendar_weeks").find(text)
        if match.start == 0 or match.end - match.start > 1
    )


def _leaves_open(clause: str) -> bool:
    """'Lead time on request', 'Entrega: según disponibilidad'."""
    topics = phrases("lead_topic").find(clause)
    if not topics:
        return False
    before, behind = clause[: topics[0].start].strip(" :"), clause[topics[0].end :].strip(" :,-–")
    if before:
        # 'Call for lead time'.
        return not behind and phrases("lead_asked").whole(before) is not None
    return any(phrases(words).whole(behind) is not None for words in ("lead_open", "no_price"))
