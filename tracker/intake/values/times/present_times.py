"""Two times of which one is that of today: 'Current lead time 3 weeks, normal 5 weeks'; and one that is no more: 'Lead
time was 5 weeks'."""

import re
from functools import lru_cache

from tracker.intake.values.times.times_in_words import counts_time
from tracker.intake.words.lists import phrases

_PARTS = re.compile(r",(?!\d)|[()]|\s[-–—/]\s(?!\d)")


@lru_cache(maxsize=8192)
def of_today(clause: str) -> str:
    """The clause without the usual or former times beside its one present time; their words for lead time stay."""
    kinds = {part: _kinds(part) for part in _PARTS.split(clause) if counts_time(part)}
    present = [part for part, kind in kinds.items() if "now" in kind]
    others = [part for part in kinds if part not in present]
    if len(present) != 1 or not others or not all(kinds[part] for part in others):
        return clause
    kept = (_topic(part) if part in others else part for part in _PARTS.split(clause))
    return ", ".join(part.strip() for part in kept if part.strip())


@lru_cache(maxsize=8192)
def is_past(part: str) -> bool:
    """Whether a part tells a time that was: 'Lead time was 5 weeks'; 'is now' is said of the one after it."""
    return _kinds(part) >= {"past"} and "now" not in _kinds(part)


def _kinds(part: str) -> set[str]:
    return {match.value for match in phrases("present_times").find(part)}


def _topic(part: str) -> str:
    return " ".join(part[match.start : match.end] for match in phrases("lead_topic").find(part))
