"""Lead times that are spoken of and can't be counted: 'Leverans v. 34', 'Lead time 4 weeks, sheets 6 weeks'."""

import re
from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.times.around_delivery import announced_in_weeks, without_notices
from tracker.intake.values.times.delivery_sentences import (
    begins_with_samples,
    tells_of_orders,
    time_led,
    without_rhythms,
    without_samples,
)
from tracker.intake.values.times.done_besides import without_doings
from tracker.intake.values.times.goods_in_stock import in_stock_for_some_orders, of_small_orders_alone
from tracker.intake.values.times.lead import LeadTime, lead_phrases
from tracker.intake.values.times.lead_from_order import leaves_for_some, leaves_from_stock
from tracker.intake.values.times.times_in_words import counts_time
from tracker.intake.values.times.told_later import told_later
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of

_WEEK = re.compile(r"\W*(?:(?:in|i|en|under)\s+)?(?P<week>[^\W\d_]+\.?)\s*\d{1,2}(?!\d)")


@dataclass(frozen=True, slots=True)
class LeadUnread:
    """The words that speak of it. `of_stock`: the time that they give for goods in stock, which may be all or some;
    `perhaps`: they may be said of other boards only."""

    words: str
    of_stock: LeadTime | None = None
    perhaps: bool = False


@lru_cache(maxsize=8192)
def lead_unread(text: str) -> LeadUnread | None:
    """The first clause that names a week of the calendar, several times, or none where one should stand."""
    unread = (each for each in clauses(text) if _names_a_week(each) or speaks_of_time(each) or _leaves_open(each))
    clause = next(unread, None)
    return LeadUnread(clause.strip(), leaves_from_stock(clause)) if clause is not None else None


def _names_a_week(clause: str) -> bool:
    """A week right behind words for delivery: 'Lieferung KW 34-36'."""
    topics = phrases("lead_topic").find(clause)
    behind = _WEEK.match(fold(clause[topics[-1].end :])) if topics else None
    return behind is not None and phrases("calendar_weeks").whole(behind["week"]) is not None


def speaks_of_time(clause: str) -> bool:
    """Weeks or days among words for lead time, and none for payment or validity."""
    if in_stock_for_some_orders(clause) or of_small_orders_alone(clause):
        return True
    if announced_in_weeks(clause) or leaves_for_some(clause) or _tells_the_time_later(clause):
        return True
    told = without_rhythms(without_doings(without_notices(clause)))
    if _counts_from_another(told) or _counts_hours(told):
        return True
    # 'Wir liefern Muster in 2 Tagen, Aufträge in 3 Wochen': the words for it stand in the part about samples.
    plain = without_samples(told)
    if _may_be_of_samples(told):
        return True
    other = any(match.value != "later" for match in phrases("not_lead").find(plain))
    if other or not phrases("lead_topic").find(told):
        return False
    return counts_time(plain)


def _counts_from_another(clause: str) -> bool:
    """'Delivery 10 days after receipt of payment': its own time leads, and what it is counted from stands behind."""
    for part in COMMA.split(clause):
        others = [match.start for match in phrases("not_lead").find(part) if match.value == "any"]
        led = (topic for topic in phrases("lead_topic").find(part) if time_led(part, topic.end) is not None)
        counted = [match.start for match in phrases("counted_after").find(part)]
        if others and counted and any(topic.end <= min(counted) < min(others) for topic in led):
            return True
    return False


def _counts_hours(clause: str) -> bool:
    """'We ship within 24 hours', 'livraison 48 h'; 'deliveries 8-16 h' are hours of the day."""
    for topic in phrases("lead_topic").find(clause):
        told = _HOURS.match(clause, topic.end)
        within = phrases("within_a_time").whole(told["led"].strip()) is not None if told is not None else False
        of_days = within or (told is not None and int(told["count"]) % _OF_A_DAY == 0)
        if told is None or not of_days or phrases("hours").whole(told["unit"]) is None:
            continue
        # '24 hours a day' is how long a dock is open.
        if phrases("rhythms").at(tokens_of(clause[told.end() :]), 0) is None:
            return True
    return False


_HOURS = re.compile(
    r"\s*:?(?P<led>[^\d,;:]*?)\s*(?:\d{1,2}\s*[-–/]\s*)?(?P<count>\d{1,3})\s*(?P<unit>[^\W\d_]+\.?)(?!\s*/)"
)
_OF_A_DAY = 24


def _tells_the_time_later(clause: str) -> bool:
    """'Lead time to be confirmed within 2 days', and no other in the clause."""
    parts = [part for part in COMMA.split(clause) if counts_time(part)]
    return bool(parts) and all(told_later(part) and bool(phrases("lead_topic").find(part)) for part in parts)


def _may_be_of_samples(clause: str) -> bool:
    """'Samples free, delivery 3 weeks': which of the two comes by then is open."""
    first, *parts = COMMA.split(clause)
    if not parts or not begins_with_samples(first) or counts_time(first):
        return False
    own = [part for part in parts if phrases("lead_topic").find(part) and not phrases("samples").find(part)]
    return any(not tells_of_orders(part) and (counts_time(part) or _names_stock(part)) for part in own)


def _names_stock(part: str) -> bool:
    return any(match.value == "stock" for match in lead_phrases().find(part))


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
