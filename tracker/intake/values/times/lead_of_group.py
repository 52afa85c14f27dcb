"""The lead time behind the name of a group's board: 'Coated unbleached kraft, 5-6 weeks', 'Graukarton – ab Lager'."""

import re
from functools import lru_cache

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_remarked import lead_remarked
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.intake.words.lists import phrases

_BEHIND_A_CODE = re.compile(r"(?<=[^\W\d_]\d)\s+[-–—]\s+(?=\d)")
"""The dash of 'GC1 – 3 weeks', which spans no figures."""


@lru_cache(maxsize=4096)
def lead_of_group(heading: str) -> LeadTime | LeadUnread | None:
    """The one lead time that a heading states of the boards it names; unread where it speaks of a time that may be
    one. In 'GC1, new prices in 3 weeks' and 'GC1 special offer, 3 weeks' something else is timed."""
    if find_grade(heading) is None or any(phrases(section).find(heading) for section in _TIMED):
        return None
    return lead_remarked(_BEHIND_A_CODE.sub(", ", heading))


_TIMED = ("price_words", "valid", "limited_offers")
