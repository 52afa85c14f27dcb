"""That prices hold for full loads: 'All prices for full truckloads', 'Preise für ganze LKW', 'LTL prices'."""

import re
from functools import lru_cache

from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.orders.bracket_pieces import VEHICLES
from tracker.intake.values.orders.brackets import Bracket
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.times.lead_sentences import times_deliveries
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of

_OTHER_SUBJECTS = ("charges", "minimum", "reductions", "additions", "no_price", "multiplies")
"""With words for one of these it is freight, a discount or another list that truckloads are spoken of."""


@lru_cache(maxsize=8192)
def loads_priced(text: str) -> Bracket | None:
    """The kind of load that a note's prices are for; None where it names none, two, or gives a weight beside it."""
    parts = [part for clause in clauses(text) for part in _parts(clause)] if not priced_alike(text) else []
    found = {kind: part for part in parts if (kind := _kind(part, alone=len(parts) == 1)) is not None}
    if len(found) != 1:
        return None
    ((kind, part),) = found.items()
    return Bracket(part.strip(), not_weight=kind)


@lru_cache(maxsize=4096)
def is_load(text: str) -> bool:
    """Nothing but the kind of load: what a sheet or a group of rows may be called, and a label among definitions."""
    return phrases("loads_priced").whole(text) in _LOADS


@lru_cache(maxsize=4096)
def priced_alike(text: str) -> bool:
    """'Carload / LTL same price': the prices are for orders of every size, whatever a sheet or a group is called."""
    return any(
        bool(phrases("one_price").find(clause)) and (len(_loads_named(clause)) > 1 or _any_size(clause))
        for clause in clauses(text)
    )


@lru_cache(maxsize=4096)
def whole_or_part(text: str) -> bool:
    """'Full or part loads' bound no order."""
    return any(match.value == "both" for match in phrases("loads_priced").find(text))


def _loads_named(clause: str) -> set[str]:
    return {match.value for match in phrases("bracket").find(clause)} & {*VEHICLES, "pallet"}


def _any_size(clause: str) -> bool:
    return bool(phrases("any_size").find(clause))


_LOADS = ("truckload", "part_load", "pallet")


def _parts(clause: str) -> list[str]:
    """Between commas, but for lead times; none of a clause about something else, or that says what a load weighs."""
    if find_masses(clause) or any(phrases(section).find(clause) for section in _OTHER_SUBJECTS):
        return []
    parts = [part for part in re.split(r",(?!\d)", clause) if part.strip()]
    return [part for part in parts if not times_deliveries(part)]


def _kind(part: str, *, alone: bool) -> str | None:
    """'EUR/t delivered, truckloads' tells of the freight, as may be; of prices only where it is all that is said."""
    named = {match.value for match in phrases("loads_priced").find(part) if match.value in _LOADS}
    of_prices = phrases("price_words").find(part) or (alone and _nothing_else(part))
    return named.pop() if len(named) == 1 and of_prices else None


def _nothing_else(part: str) -> bool:
    found = [token for token in tokens_of(part) if token[0].isalnum()]
    place = 0
    while place < len(found):
        match = phrases("loads_priced").at(found, place)
        if match is None:
            return False
        place = match.after
    return True
