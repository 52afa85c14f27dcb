"""In what a text says that lead times are counted, beside a column that does not: 'LT = lead time in weeks'."""

import re
from functools import lru_cache

from tracker.intake.values.clauses import clauses
from tracker.intake.values.lead import LeadUnit, lead_unit
from tracker.intake.words.lists import pattern, phrases

_IN = re.compile(rf"\s*[:(,–-]?\s*(?:{pattern('counted_in', 'any')})\s+(?P<unit>[^\d(),;:]+)", re.IGNORECASE)


@lru_cache(maxsize=4096)
def lead_unit_said(text: str) -> LeadUnit | None:
    """'Lead times in working days', 'Lieferzeit in Wochen'; None where a text gives a time itself, or no unit."""
    for clause in clauses(text):
        for topic in phrases("lead_topic").find(clause):
            told = _IN.match(clause, topic.end)
            if told is not None and (unit := lead_unit(told["unit"])) is not None:
                return unit
    return None
