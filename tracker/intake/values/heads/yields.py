"""Heads that say how much board a weight makes: 'm² je t', 'sheets per ton', 'MSF/ST'."""

from tracker.intake.values.orders.masses import MASS_UNITS
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.words.lists import phrases

_AREAS_AND_COUNTS = frozenset({"m2", "1000m2", "msf", "msi", "square_foot", "sheet", "1000sheets", "linear"})


def tells_yield(text: str) -> bool:
    """Whether an area or a count, and then a weight that it is per, is all that a head says; 'EUR/m² per t' and
    'Bogen' are none."""
    found = phrases("basis").find(text)
    if len(found) != 2 or found[0].value not in _AREAS_AND_COUNTS or found[1].value not in MASS_UNITS:
        return False
    between = text[found[0].end : found[1].start].strip()
    per = between == "/" or phrases("per").whole(between) is not None
    return per and not find_currencies(text) and not phrases("price_words").find(text)
