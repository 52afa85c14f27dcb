"""Times of what else is done about deliveries: claims, bookings, returns, stops for late payment, holidays.

'Shortages in a delivery must be reported within 3 days', 'No deliveries for two weeks in August', 'Beyond 60 days
overdue shipments are suspended'. A word that names a lead time alone, such as 'Lieferzeit', may stand beside words for
such a thing where it leads to the time itself: 'confirmed lead time 4 weeks'.
"""

import re
from collections.abc import Sequence
from functools import lru_cache

from tracker.intake.values.notes.denials import denied
from tracker.intake.values.times.delivery_sentences import of_deliveries, time_led
from tracker.intake.values.times.leads_in_full import tells_its_time
from tracker.intake.values.times.times_in_words import counts_time, times_in_figures
from tracker.intake.values.times.told_later import told_later
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, outside, tokens_of

_PARTS = re.compile(r"(,(?!\d)|\s-\s(?!\d))")
"""What parts the terms of one line, kept."""


@lru_cache(maxsize=8192)
def without_doings(clause: str) -> str:
    """The clause without the parts between its commas that count the time of something else that is done."""
    parts = _PARTS.split(clause)
    if not any(map(_does_another, parts)):
        return clause
    return "".join(part for part in parts if not _does_another(part))


@lru_cache(maxsize=8192)
def _does_another(part: str) -> bool:
    if told_later(part):
        return True
    if tells_its_time(part):
        return False
    figures = times_in_figures(part)
    topics = phrases("lead_topic").find(part)
    own = [topic for topic in topics if not of_deliveries(part, topic)]
    if own:
        # 'Lead time to be confirmed, currently 4 weeks' has its time behind the comma.
        return counts_time(figures) and bool(_doings(part)) and not any(time_led(part, topic.end) for topic in own)
    if any(topic.value == "verb" for topic in topics):
        # What stands between it and the time is looked at there.
        return False
    if not topics and (phrases("from_order").find(part) or not counts_time(figures)):
        # Only words that are all known to tell of goods leaving make that a lead time.
        return False
    if any(denied(part, topic) and not _bounded(part, topic) for topic in topics):
        return True
    return any(not _is_behind_the_time(part, topics, doing) for doing in _doings(part))


def _bounded(part: str, topic: Found[str]) -> bool:
    """'Delivery not before 3 weeks': some time is told."""
    return phrases("no_sooner").at(tokens_of(part), topic.after) is not None


def _doings(part: str) -> Sequence[Found[str]]:
    """The words for it; those of 'after we confirm your order' tell from when the time is counted."""
    return outside(phrases("other_times").find(part), phrases("from_order").find(part))


def _is_behind_the_time(part: str, topics: Sequence[Found[str]], doing: Found[str]) -> bool:
    """'Delivery 3 weeks after the drawing is confirmed'."""
    ahead = (topic for topic in topics if topic.end <= doing.start)
    return any(time_led(part, each.end) is not None and counts_time(part[each.end : doing.start]) for each in ahead)
