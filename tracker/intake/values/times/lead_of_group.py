"""The lead time behind the name of a group's board: 'Coated unbleached kraft, 5-6 weeks', 'Graukarton – ab Lager'."""

import re
from functools import lru_cache

from tracker.intake.values.boards.board_words import names_only_board
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_remarked import lead_remarked
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.intake.words.lists import phrases

_BEHIND_A_BOARD = re.compile(r"\s*:\s+(?=\d)|(?:(?<=[^\W\d_])|(?<=[^\W\d_]\d))\s+[-–—]\s+(?=\d)")
"""The colon of 'SBS: 3 weeks' and the dash of 'GC1 – 3 weeks', which spans no figures as that of 'SBS 2 - 3 weeks'."""


@lru_cache(maxsize=4096)
def lead_of_group(heading: str) -> LeadTime | LeadUnread | None:
    """The one lead time that a heading states of the boards it names; unread where it speaks of a time that may be
    one. In 'GC1, new prices in 3 weeks' and 'GC1 special offer, 3 weeks' something else is timed."""
    if find_grade(heading) is None or any(phrases(section).find(heading) for section in _TIMED):
        return None
    return lead_remarked(_parted(heading))


def _parted(heading: str) -> str:
    """With a comma between the board and its time; 'SBS transit - 3 weeks' names something else before the dash."""
    joint = _BEHIND_A_BOARD.search(heading)
    if joint is None or not names_only_board(heading[: joint.start()]):
        return heading
    return f"{heading[: joint.start()]}, {heading[joint.end() :]}"


_TIMED = ("price_words", "valid", "limited_offers")
