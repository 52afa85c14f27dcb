"""What a part about a way of selling board tells beside figures: a time for it, or only in which form board comes."""

import re

from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.freight.freight_of_prices import freight_of_prices
from tracker.intake.values.times.lead import counts_plain_days, lead_text
from tracker.intake.values.times.leads_in_full import goes_without_saying
from tracker.intake.values.times.times_in_words import counts_time, times_in_figures
from tracker.intake.words.lists import phrases


def tells_how_it_comes(piece: str, said: str) -> bool:
    """'SBS delivered in rolls' tells neither when nor on which terms. `said`: the piece without its ways."""
    timed = any(map(str.isdigit, said)) or counts_time(said) or lead_text(said) is not None
    return find_delivery(said) is not None and freight_of_prices(piece) is None and not timed


def counts_a_lead(said: str) -> bool:
    """The 'now 4 weeks for' of 'now 4 weeks for rolls, 6 weeks for sheets' is a time as well as the other."""
    counted = counts_time(said) and counts_plain_days(said) is None
    others = any(phrases(section).find(said) for section in ("not_lead", "price_words"))
    return counted and not others and goes_without_saying(said)


def with_unit_of(said: str, before: str) -> str:
    """The 'in 5 weeks' that is meant by 'in 5' behind 'delivered in 3 weeks': the unit is said once for both. Any other
    text as it stands, and one that counts otherwise: 'from 5'."""
    bare, before = _BARE.fullmatch(said.strip()), times_in_figures(before)
    units = [match for match in phrases("lead").find(before) if match.value in _UNITS]
    counts = [_COUNT.search(before[: match.start]) for match in units]
    if bare is None or len({match.value for match in units}) != 1 or None in counts:
        return said
    words = {count["word"] for count in counts if count is not None}
    unit = units[-1]
    return f"{said} {before[unit.start : unit.end]}" if bare["word"] is None or bare["word"] in words else said


_UNITS = ("day", "working_day", "week", "month")
_BARE = re.compile(r"(?:(?P<word>[^\W\d]+)\s)?\d{1,3}(?:\s?[-–]\s?\d{1,3})?")
_COUNT = re.compile(r"(?:(?P<word>[^\W\d]+)\s+)?\d{1,3}(?:\s?[-–]\s?\d{1,3})?\s*$")
