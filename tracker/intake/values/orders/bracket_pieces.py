"""The weights that an order size names, and the kinds of words before, between and behind them."""

import re

from tracker.intake.values.figures.numbers import SPACED_NUMBER, number_readings
from tracker.intake.values.orders.masses import RANGE_TO, Mass, end_of_unit, mass_text
from tracker.intake.words.fold import fold, tokens
from tracker.intake.words.lists import phrases
from tracker.trade.quantities import MassUnit

_NUMBER = re.compile(rf"(?<![^\W\d])(?:{SPACED_NUMBER})")
PIECES_OR_TONS = "pieces_or_tons"
HALF_LOAD = "half_load"
VEHICLES = ("truckload", "railcar", "part_load", HALF_LOAD)
"""Loads of a vehicle, and what is less than one."""
LOADS_AND_COUNTS = (*VEHICLES, "pallet", "roll", "sheets", "other_unit", PIECES_OR_TONS)
NAMED_SIZE = "named_size"


def pieces_of(text: str, units: tuple[MassUnit, ...]) -> tuple[list[Mass], list[list[str]]] | None:
    """The weights, and before, between and behind them the kinds of words; None where any word is not a bracket's.

    A number without any unit comes back as a weight without units.
    """
    folded = fold(text)
    spans = []
    reached = 0
    for match in _NUMBER.finditer(folded):
        if match.start() >= reached:
            reached = _with_unit(folded, match.end())
            spans.append((match.start(), reached, reached > match.end()))
    if len(spans) > 2:
        return None
    edges = [0, *(edge for start, end, _ in spans for edge in (start, end)), len(folded)]
    gaps = []
    for place in range(0, len(edges), 2):
        kinds = _kinds(folded[edges[place] : edges[place + 1]])
        if kinds is None:
            return None
        gaps.append(kinds)
    own_units = [text[start:end] for start, end, _ in spans]
    if len(spans) == 2 and not spans[0][2] and spans[1][2]:
        # '5–20 t': the unit stands once.
        second = text[spans[1][0] : spans[1][1]]
        own_units[0] = own_units[0] + " " + second[len(_number_of(second)) :].strip()
    loads_behind = len(spans) == 2 and _names_load(folded[spans[1][1] :])
    if len(spans) == 2 and spans[0][2] and not spans[1][2] and "up_to" in gaps[1] and not loads_behind:
        # 'over 10 t, up to 20': it stands beside the first; '5 t up to 10 trucks' is in two units.
        first = text[spans[0][0] : spans[0][1]]
        own_units[1] = own_units[1] + " " + first[len(_number_of(first)) :].strip()
    masses = [mass_text(piece, units) or Mass(number_readings(piece), ()) for piece in own_units]
    if loads_behind and masses[0].units:
        masses[1] = Mass(number_readings(own_units[1]), ())
    return masses, gaps


def _number_of(piece: str) -> str:
    match = _NUMBER.match(piece)
    return match.group() if match else ""


def _with_unit(folded: str, end: int) -> int:
    ahead = folded[end : end + 30]
    if RANGE_TO.match(ahead) or _names_load(ahead):
        return end
    return end_of_unit(folded, end) or end


def _names_load(ahead: str) -> bool:
    """'T/L' is a truckload, though it begins like a ton."""
    found = tokens(ahead)
    match = phrases("bracket").at(found, 0) if found else None
    return match is not None and match.value in LOADS_AND_COUNTS


def _kinds(gap: str) -> list[str] | None:
    found = tokens(gap)
    kinds: list[str] = []
    place = reached = 0
    while place < len(found):
        match = phrases("bracket").at(found, place)
        if match is None:
            if found[place][0] not in "()[],;:/":
                return None
            place += 1
            continue
        if kinds and "/" in gap[reached : match.start] and _packs(match.value, kinds[-1]):
            return None
        kinds.append(match.value)
        place, reached = match.after, match.end
    return kinds


def _packs(one: str, other: str) -> bool:
    """'1,500 sheets/pallet' is how board is packed, and no order."""
    return one != other and {one, other} <= {*LOADS_AND_COUNTS}
