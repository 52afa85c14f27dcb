"""Times before a delivery or after one, which are no lead times: when it is announced, and until when claims are made.

'Reklamationen innerhalb 48 Stunden nach Lieferung', 'Call 2 days before delivery', 'préavis 48 heures'.
"""

import re
from collections.abc import Sequence
from functools import lru_cache

from tracker.intake.values.times.delivery_sentences import time_led
from tracker.intake.values.times.lead import LeadUnit, lead_phrases
from tracker.intake.values.times.times_in_words import times_in_figures
from tracker.intake.words.lists import phrases, without_words
from tracker.intake.words.phrases import Found, blanked, tokens_of

_PARTS = re.compile(r"(,(?!\d)|\s-\s(?!\d))")
"""What parts the terms of one line, kept."""


@lru_cache(maxsize=8192)
def without_notices(clause: str) -> str:
    """The clause without the parts between its commas that tell of such a time; a part that names the lead time as
    well, as 'Lead time 4 weeks before delivery' does, stays."""
    if not phrases("around_delivery").find(clause):
        return clause
    return "".join(part for part in _PARTS.split(clause) if not is_notice(part))


def is_notice(part: str) -> bool:
    """Whether all that a part tells of delivery is what something else is counted from or announced for."""
    figures = times_in_figures(part)
    if ordered_ahead(figures):
        return False
    around = phrases("around_delivery").find(figures)
    if any(match.value == "notice" for match in around):
        return not _leads(figures, around)
    counted = [match for match in around if match.value in ("any", "before") or _behind_a_time(figures, match)]
    return bool(counted) and not _leads(figures, counted)


def ordered_ahead(part: str) -> bool:
    """'Order 3 weeks before delivery', 'Bestelleingang 3 Wochen vor Lieferung': that long it takes; not 'order changes
    up to 10 days before shipment' or 'orders 3 weeks before shipment cannot be changed'."""
    least = (match.span for match in phrases("bracket").find(part) if match.value == "from")
    told = blanked(part, least).lstrip()
    orders = phrases("ordered_ahead").at(tokens_of(told), 0)
    if orders is None or not any(_ends_before_delivery(part, match) for match in phrases("around_delivery").find(part)):
        return False
    unit = time_led(told, orders.end)
    return unit is LeadUnit.WEEK if orders.value == "in_weeks" else unit is not None


def _ends_before_delivery(part: str, said: Found[str]) -> bool:
    """'3 weeks before delivery', and no more but to where."""
    behind = part[said.end :]
    behind = without_words(behind, "to_the_buyer", "buyer_sites", "the_buyer")
    return said.value == "before" and _behind_a_time(part, said) and not any(map(str.isalnum, behind))


def announced_in_weeks(clause: str) -> bool:
    """'Entrega con 4 semanas de antelación': nobody gives notice of a truck in weeks, so it may be the lead time."""
    return any(_announced_in_weeks(part) for part in _PARTS.split(clause))


def _announced_in_weeks(part: str) -> bool:
    notice = any(match.value == "notice" for match in phrases("around_delivery").find(part))
    weeks = notice and any(match.value == "week" for match in lead_phrases().find(times_in_figures(part)))
    if not weeks or phrases("given_notice_of").find(part):
        return False
    return any(phrases(section).find(part) for section in ("dispatch", "order_words"))


def _leads(text: str, around: Sequence[Found[str]]) -> bool:
    """Whether words for lead time stand beside these, which may hold one of them: 'Lieferung' does not count beside
    'Avis', for that is what is announced, but where weeks stand right behind it."""
    topics = phrases("lead_topic").find(blanked(text, (match.span for match in around)))
    notice = any(match.value == "notice" for match in around)
    return any(
        not notice
        or phrases("dispatch").whole(text[topic.start : topic.end]) is None
        or time_led(text, topic.end) is LeadUnit.WEEK
        for topic in topics
    )


def _behind_a_time(text: str, said: Found[str]) -> bool:
    """'48 hours of delivery'; 'time of delivery' and 'free from delivery' are none."""
    ahead = text[: said.start].rstrip()
    return any(
        match.end == len(ahead) and match.value in ("day", "working_day", "week", "month")
        for match in lead_phrases().find(ahead)
    )
