"""The 'firm' of 'Lead time 4 weeks firm', which says how sure the time is, and not that prices hold."""

import re
from functools import lru_cache

from tracker.intake.values.times.lead import lead_text
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import without

_PARTS = re.compile(r"(,(?!\d)|\s-\s(?!\d))")
_ENDS = " :.,-–="


@lru_cache(maxsize=8192)
def without_firm(clause: str) -> str:
    """The clause without a word that says so of a time right behind the words for lead time, which is all that its part
    between commas tells; 'Lead time 4 weeks, prices firm' and '4 weeks firm until 30 June 2026' stay as they are."""
    return "".join(map(_plain, _PARTS.split(clause)))


def _plain(part: str) -> str:
    topics = phrases("lead_topic").find(part)
    said = [match for match in phrases("firm_times").find(part) if topics and match.start >= topics[-1].end]
    if not said:
        return part
    plain = without(part, said)
    behind = plain[topics[-1].end :].strip(_ENDS)
    return plain if lead_text(behind) is not None else part
