"""Times beside words for deliveries in which something else comes than the goods: 'Delivery to be confirmed within 2
days' says when the day is told, 'Order confirmation in 2 days' when a paper comes, and 'Shipment from our mill to your
dock takes 2 days' how long they are on the road."""

import re
from collections.abc import Iterator
from functools import lru_cache

from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.times.counted_from_order import counted_from
from tracker.intake.values.times.lead import lead_phrases
from tracker.intake.values.times.times_in_words import counts_time, times_in_figures
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, outside

_FIGURE = re.compile(r"\d")
_UNITS = ("day", "working_day", "week")
_BETWEEN = ("within_a_time", "about", "the_buyer")


@lru_cache(maxsize=8192)
def told_later(part: str) -> bool:
    """Whether the time of a part is that in which one is told, or a confirmation comes."""
    figures = times_in_figures(part)
    if not counts_time(figures):
        return False
    return _begins_with_a_confirmation(figures) or any(_tells_when(figures, said) for said in _tellings(figures))


@lru_cache(maxsize=8192)
def is_a_journey(part: str) -> bool:
    """Whether a part names where goods leave and where they arrive, and the time between."""
    places = phrases("journeys").find(part)
    return counts_time(part) and {"from", "to"} <= {match.value for match in places}


def _begins_with_a_confirmation(figures: str) -> bool:
    """'Order acknowledgement within 2 days'; 'confirmed lead time 4 weeks' is another matter."""
    named = next(iter(phrases("confirmations").find(figures)), None)
    if named is None or rest_of(figures[: named.start], ()):
        return False
    return not phrases("lead_topic").find(figures[named.end :])


def _tellings(figures: str) -> Iterator[Found[str]]:
    """The words of telling; those of 'after the order is confirmed' tell from when the time is counted."""
    counted = counted_from(figures)
    for said in outside(phrases("told_when").find(figures), phrases("from_order").find(figures)):
        if not any(start < said.end and said.start < end for start, end in counted):
            yield said


def _tells_when(figures: str, said: Found[str]) -> bool:
    """'Given within 2 days', 'given 3 days after order'; 'given as 3 weeks' is a lead time. Where verbs come last also
    'in 2 Tagen genannt'."""
    behind = _FIGURE.search(figures, said.end)
    if behind is not None and not rest_of(figures[said.end : behind.start()], (), *_BETWEEN):
        between = figures[said.end : behind.start()]
        counted = not between.strip() and _is_counted_from_order(figures[behind.start() :])
        return _is_led(between) or (counted and not (said.value == "stated" and _is_stated(figures, said.start)))
    return said.value == "closes" and _closes(figures, said)


def _is_led(between: str) -> bool:
    """'in', 'within' and the like; a colon or a dash leads to what was told: 'delivery quoted: in 3 weeks'."""
    return bool(phrases("within_a_time").find(between)) and not re.search(r"[:=–-]", between)


def _is_counted_from_order(time: str) -> bool:
    return bool(counted_from(time))


def _is_stated(figures: str, end: int) -> bool:
    """'Lead time quoted 3 weeks after order' states how long it is: nobody is told in weeks, and with no verb. Of days
    and of a delivery date it is when they are told."""
    topics = [topic for topic in phrases("lead_topic").find(figures[:end]) if not figures[topic.end : end].strip()]
    # The 'date' of 'date de livraison' stands before the topic.
    dates = phrases("deliveries_named").find(figures[:end]) or any(rest_of(figures[: one.start], ()) for one in topics)
    weeks = any(match.value == "week" for match in lead_phrases().find(figures[end:]))
    return bool(topics) and not dates and weeks


def _closes(figures: str, said: Found[str]) -> bool:
    figure = _FIGURE.search(figures[: said.start])
    if figure is None or rest_of(figures[said.end :], ()):
        return False
    units = [match for match in lead_phrases().find(figures[: said.start]) if match.value in _UNITS]
    if not units:
        return False
    between = figures[units[-1].end : said.start]
    counted = counted_from(between)
    led = any(not figures[match.end : figure.start()].strip() for match in phrases("within_a_time").find(figures))
    told = led or (bool(counted) and not _is_stated(figures, figure.start()))
    return told and not rest_of(between, counted)
