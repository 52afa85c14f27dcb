"""How long something can be had, which is no time that it takes: 'available for 6 weeks', 'offer open for 6 weeks'."""

import re
from functools import lru_cache

from tracker.intake.values.times.times_in_words import times_in_figures
from tracker.intake.words.lists import phrases, without_words
from tracker.intake.words.phrases import Found


@lru_cache(maxsize=8192)
def lasting(text: str) -> tuple[Found[str], ...]:
    """The words for it that a count of days, weeks or months stands right behind; 'available for shipment in 6 weeks'
    says when."""
    found = phrases("lasts_for").find(text)
    return tuple(match for match in found if _counts_at_once(text[match.end :]))


def _counts_at_once(behind: str) -> bool:
    told = without_words(times_in_figures(behind), "about", "articles").lstrip(" :~≈")
    count = _COUNT.match(told)
    return count is not None and phrases("lead").whole(count["unit"]) in ("day", "working_day", "week", "month")


_COUNT = re.compile(r"\d{1,3}(?:\s*[-–]\s*\d{1,3})?\s*(?P<unit>[^\W\d_]+)")
