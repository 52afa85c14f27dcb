"""Lines that say that a buyer may do without what stands below them: 'Optional:', 'Auf Wunsch:', 'Optional extras'."""

from functools import lru_cache

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.freight.charge_parts import is_optional
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.words.lists import phrases

_LONGEST = 80


@lru_cache(maxsize=4096)
def heads_extras(line: str) -> bool:
    """'Tillägg per ton vid behov', 'Optional extras', 'On request:'; 'GC1 on request' and 'Zuschläge' are none, nor is
    'Optional grades', which says more than that."""
    if not is_optional(line) or len(line) > _LONGEST or find_grade(line) is not None:
        return False
    named = charges_named(line) or phrases("extras").find(line)
    optional = (match.span for match in phrases("optional").find(line))
    return bool(named) or not rest_of(line, optional, "on_offer", "charge_filler")


def as_optional(entry: str, line: str) -> str:
    """'Sheeting: $60/ST' with the line that it stands below, as one would write them in a line."""
    return f"{line.strip(' :')}: {entry}"
