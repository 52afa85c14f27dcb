"""In what a text says that lead times are counted, beside a column that does not: 'LT = lead time in weeks'."""

import re
from functools import lru_cache

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.times.lead import LeadUnit, lead_unit
from tracker.intake.words.lists import pattern, phrases

_IN = re.compile(rf"\s*[:(,–-]?\s*(?:{pattern('counted_in', 'any')})\s+(?P<unit>[^\d(),;:]+)", re.IGNORECASE)

_KEY = re.compile(r"\W*(?:[^\W\d_]{2,6}\s*:\s*)?(?:[^\W\d_]{1,4}\.?\s*[=:]\s*)?(?:all\s)?")
"""'Key: LT = ', 'all ', or nothing at all, before the words for lead time."""


@lru_cache(maxsize=4096)
def lead_unit_said(text: str) -> LeadUnit | None:
    """'Lead times in working days', 'LT = lead time in weeks'; None where a text gives a time itself, or no unit.

    'Stock sheets: lead times in days' is said of these alone.
    """
    for clause in clauses(text):
        for topic in phrases("lead_topic").find(clause):
            told = _IN.match(clause, topic.end) if _KEY.fullmatch(clause[: topic.start]) else None
            if told is not None and not _is_of_some(text):
                return lead_unit(told["unit"])
    return None


def _is_of_some(text: str) -> bool:
    """'Lead times in weeks except SBS', '… in days for rolls', '… in weeks on request'."""
    grade = find_grade(text)
    others = any(phrases(section).find(text) for section in ("forms", "the_others", "exceptions", "no_price"))
    return others or (grade is not None and bool(grade.grades))
