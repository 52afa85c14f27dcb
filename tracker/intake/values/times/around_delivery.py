"""Times before a delivery or after one, which are no lead times: when it is announced, and until when claims are made.

'Reklamationen innerhalb 48 Stunden nach Lieferung', 'Call 2 days before delivery', 'préavis 48 heures'.
"""

import re
from functools import lru_cache

from tracker.intake.values.times.lead import lead_phrases
from tracker.intake.values.times.times_in_words import times_in_figures
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, blanked

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
    around = phrases("around_delivery").find(figures)
    if any(match.value == "notice" for match in around):
        return not _leads(figures, around)
    counted = [match for match in around if match.value == "any" or _behind_a_time(figures, match)]
    return bool(counted) and not _leads(figures, counted)


def _leads(text: str, around: list[Found[str]]) -> bool:
    """Whether words for lead time stand beside these, which may hold one of them: 'Lieferung' does not count beside
    'Avis', for that is what is announced."""
    topics = phrases("lead_topic").find(blanked(text, (match.span for match in around)))
    notice = any(match.value == "notice" for match in around)
    return any(not notice or phrases("dispatch").whole(text[topic.start : topic.end]) is None for topic in topics)


def _behind_a_time(text: str, said: Found[str]) -> bool:
    """'48 hours of delivery'; 'time of delivery' and 'free from delivery' are none."""
    ahead = text[: said.start].rstrip()
    return any(
        match.end == len(ahead) and match.value in ("day", "working_day", "week", "month")
        for match in lead_phrases().find(ahead)
    )
