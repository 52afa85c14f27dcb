"""Heads that say how much board a weight makes or a roll holds: 'm² je t', 'sheets per ton', 'MSF per roll'."""

from tracker.intake.values.orders.masses import MASS_UNITS
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.words.lists import phrases

_AREAS = frozenset({"m2", "1000m2", "msf", "msi", "square_foot", "linear"})
_COUNTS = frozenset({"sheet", "1000sheets"})
_PACKAGES = frozenset({"roll", "pallet"})


def tells_yield(text: str) -> bool:
    """Whether an area or a count, and then a weight that it is per, or an area and a package, is all that a head says;
    'EUR/m² per t' and 'Bogen' are none."""
    found = phrases("basis").find(text)
    if len(found) != 2 or found[0].value not in _AREAS | _COUNTS:
        return False
    if found[1].value not in MASS_UNITS and not (found[0].value in _AREAS and found[1].value in _PACKAGES):
        return False
    between = text[found[0].end : found[1].start].strip()
    per = between == "/" or phrases("per").whole(between) is not None
    return per and not find_currencies(text) and not phrases("price_words").find(text)
