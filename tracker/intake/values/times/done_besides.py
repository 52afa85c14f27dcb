"""Times of what else is done about deliveries: claims, bookings, returns, stops for late payment, holidays.

'Shortages in a delivery must be reported within 3 days', 'No deliveries for two weeks in August', 'Beyond 60 days
overdue shipments are suspended'. A word that names a lead time alone, such as 'Lieferzeit', may stand beside words for
such a thing where it leads to the time itself: 'confirmed lead time 4 weeks'.
"""

import re
from functools import lru_cache

from tracker.intake.values.notes.denials import denied
from tracker.intake.values.times.around_delivery import ordered_ahead
from tracker.intake.values.times.delivery_sentences import changes_nothing, of_deliveries, time_led
from tracker.intake.values.times.lead import lead_phrases
from tracker.intake.values.times.times_in_words import counts_time, times_in_figures
from tracker.intake.words.lists import phrases, without_words
from tracker.intake.words.phrases import Found, blanked, outside

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
    if any(denied(part, topic) for topic in topics):
        return True
    return any(not _is_behind_the_time(part, topics, doing) for doing in _doings(part))


@lru_cache(maxsize=8192)
def leads_to_its_time(part: str) -> bool:
    """Whether the words of deliveries in a part tell when they come, for claims, bookings and holidays name them too.

    They lead to the time, or no word of the part is unknown: 'Allow six weeks for delivery'.
    """
    topics = phrases("lead_topic").find(part)
    if not topics or not counts_time(part) or phrases("from_order").find(part) or ordered_ahead(times_in_figures(part)):
        return True
    if not all(of_deliveries(part, topic) and topic.value != "verb" for topic in topics):
        return True
    return any(time_led(part, topic.end) for topic in topics) or changes_nothing(_without_known(part))


def _without_known(part: str) -> str:
    rest = without_words(times_in_figures(part), *_KNOWN)
    return blanked(rest, (match.span for match in lead_phrases().find(rest)))


_KNOWN = ("from_order", "around_delivery", "lead_topic", "takes_time", "comes_so", "counted_after", "order_taken",
    "the_order", "ordered_ahead", "copula")  # fmt: skip


def _doings(part: str) -> list[Found[str]]:
    """The words for it; those of 'after we confirm your order' tell from when the time is counted."""
    return outside(phrases("other_times").find(part), phrases("from_order").find(part))


def _is_behind_the_time(part: str, topics: list[Found[str]], doing: Found[str]) -> bool:
    """'Delivery 3 weeks after the drawing is confirmed'."""
    ahead = (topic for topic in topics if topic.end <= doing.start)
    return any(time_led(part, each.end) is not None and counts_time(part[each.end : doing.start]) for each in ahead)
