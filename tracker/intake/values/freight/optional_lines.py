"""Lines that say that a buyer may do without what stands below them: 'Optional:', 'Auf Wunsch:', 'Optional extras'."""

from functools import lru_cache

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.freight.charge_names import ChargeKind, charges_named
from tracker.intake.values.freight.charge_parts import is_optional
from tracker.intake.values.freight.entry_amounts import amounts_in
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.words.lists import phrases

_LONGEST = 80


_NO_NAMES = ("extras", "on_offer", "charge_filler")


@lru_cache(maxsize=4096)
def heads_extras(line: str) -> bool:
    """Whether a heading of rows says so: 'Tillägg per ton vid behov', 'Optional extras', 'On request:'. 'GC1 on
    request' and 'Zuschläge' do not, nor does 'Optional grades', which says more than that, or 'Sheeting (optional):
    $60/ST', which is itself such an extra."""
    if not is_optional(line) or len(line) > _LONGEST or find_grade(line) is not None or amounts_in(line):
        return False
    named = charges_named(line) or phrases("extras").find(line)
    return bool(named) or _says_no_more(line, "on_offer", "charge_filler")


@lru_cache(maxsize=4096)
def leads_to_extras(line: str) -> bool:
    """Whether a line of words by itself says so of the lines below it: 'Optional:', 'Special packing on request:',
    'Optional charges'. 'Freight on request' without a colon says all it has to say, and so does 'Surcharges on
    request'."""
    if not heads_extras(line):
        return False
    if line.rstrip().endswith(":") or _says_no_more(line, *_NO_NAMES):
        return True
    kinds = {match.value for match in phrases("optional").find(line)}
    named = charges_named(line)
    unnamed = bool(named) and all(match.value == ChargeKind.OTHER for match in named)
    return kinds == {"adjective"} and unnamed and _says_no_more(line, *_NO_NAMES, "charges")


def _says_no_more(line: str, *sections: str) -> bool:
    """Whether a line says no more than that, but for words of these sections."""
    return not rest_of(line, (match.span for match in phrases("optional").find(line)), *sections)


def as_optional(entry: str, line: str) -> str:
    """'Sheeting: $60/ST' with the line that it stands below, as one would write them in a line."""
    return f"{line.strip(' :.')}: {entry}"
