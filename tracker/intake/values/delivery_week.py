"""A week of the calendar in which board comes: 'Leverans v. 34', 'Lieferung KW 34-36'."""

import re
from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.clauses import clauses
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases

_WEEK = re.compile(r"\W*(?:(?:in|i|en|under)\s+)?(?P<week>[^\W\d_]+\.?)\s*\d{1,2}(?!\d)")


@dataclass(frozen=True, slots=True)
class DeliveryWeek:
    """When it comes, which is no count of days from the order."""

    words: str


@lru_cache(maxsize=8192)
def delivery_week(text: str) -> DeliveryWeek | None:
    """The clause that names a week right behind words for delivery; None where there is none."""
    for clause in clauses(text):
        topics = phrases("lead_topic").find(clause)
        behind = _WEEK.match(fold(clause[topics[-1].end :])) if topics else None
        if behind is not None and phrases("calendar_weeks").whole(behind["week"]) is not None:
            return DeliveryWeek(clause.strip())
    return None
