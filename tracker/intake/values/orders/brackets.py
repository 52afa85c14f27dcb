"""Order-size brackets as they are written: '< 5 t', '20,000–40,000 lb', 'ab 10 t', 'TL (40,000 lb)'."""

import re
from dataclasses import dataclass, replace
from decimal import Decimal
from functools import lru_cache

from tracker.intake.values.figures.numbers import SPACED_NUMBER, NumberReading
from tracker.intake.values.figures.numbers_in_words import in_figures
from tracker.intake.values.figures.ordinals import without_ordinal
from tracker.intake.values.heads.counted import size_without_count
from tracker.intake.values.orders.bracket_pieces import (
    HALF_LOAD,
    LOADS_AND_COUNTS,
    NAMED_SIZE,
    PIECES_OR_TONS,
    VEHICLES,
    pieces_of,
)
from tracker.intake.values.orders.broken_sizes import breaks_off
from tracker.intake.values.orders.masses import POUNDS, TONS, Mass, alike, find_mass_units
from tracker.intake.values.orders.thousands import bare_thousands_in_full
from tracker.intake.values.orders.weights_in_words import fractions_in_figures, weights_in_figures
from tracker.intake.words.lists import phrases
from tracker.trade.quantities import MassUnit


@dataclass(frozen=True, slots=True)
class Bracket:
    """One bracket as written. None is open. `not_weight`: 'truckload', 'pallet' … where no weight is given beside it.

    `end_included`: 'up to 20 t', '5–20 t'. `start_excluded`: 'over 20 t'. `alone`: a bare '5 t', which a row of price
    breaks means as 'from 5 t'. With `not_weight` the limits, if any, count loads ('2-4 truckloads') and have no unit.
    `step`: what the last figure counts, where that is not its own last place.
    """

    words: str
    start: Mass | None = None
    end: Mass | None = None
    end_included: bool = False
    start_excluded: bool = False
    alone: bool = False
    not_weight: str = ""
    step: Mass | None = None

    @property
    def how(self) -> tuple[object, ...]:
        """What it says, but for its figures."""
        return self.start is None, self.end is None, self.end_included, self.start_excluded, self.alone, self.not_weight


_COUNTED = ("truckload", "railcar", "pallet", "roll", "sheets", PIECES_OR_TONS)
# '20+ MT' and '20M+ lb': the sign that means 'and more' stands before the unit.
_PLUS_FIRST = re.compile(r"(\d[mk]?)\s*\+\s*([^\W\d][\w/. ]*|#)$", re.IGNORECASE)


# '10M - 20M lb', '10k to under 20k lbs' and '5M - 9,999 lb': the unit stands once.
_THOUSANDS_OF_POUNDS = re.compile(
    rf"(?<!\w)(\d+)\s?([mk])(?=\s*(?:[-–]|to)[^\d]{{0,12}}(?:\d+\s?\2|\d{{1,3}},\d{{3}}|\d{{4,6}})\s?({POUNDS}))",
    re.IGNORECASE,
)


@lru_cache(maxsize=8192)
def bracket_text(text: str, units: tuple[MassUnit, ...] = ()) -> Bracket | None:
    """A text that is one order-size bracket and nothing else; None otherwise.

    Bare numbers take the header's `units`.
    """
    stripped = text.strip()
    counted = bare_thousands_in_full(stripped) if units else stripped
    if counted != stripped:
        bracket = bracket_text(counted, units)
        return None if bracket is None else replace(bracket, words=stripped)
    if breaks_off(stripped):
        # '10,000 lb to': what is ordered so only the vendor knows.
        return Bracket(stripped, not_weight=NAMED_SIZE)
    figures = stripped if any(map(str.isdigit, stripped)) else in_figures(stripped)
    if figures != stripped and find_mass_units(stripped):
        # 'Less than three tonnes'; a bare 'one tonne' is what something is per, and 'one lot of 20 t' counts lots.
        bracket = bracket_text(figures, units)
        return None if bracket is None or bracket.alone else replace(bracket, words=stripped)
    weighed = _loads_weighed(stripped) or fractions_in_figures(size_without_count(stripped))
    if weighed != stripped:
        bracket = bracket_text(weighed, units)
        return None if bracket is None else replace(bracket, words=stripped)
    opened = _OPEN_END.sub(" +", stripped)
    if opened != stripped and (units or find_mass_units(stripped)):
        bracket = bracket_text(opened, units)
        return None if bracket is None else replace(bracket, words=stripped)
    for exclusive in reversed(phrases("exclusive_end").find(stripped)):
        stripped = f"{stripped[: exclusive.start]} {stripped[exclusive.end :]}".replace("( )", " ")
    both = _in_two_units(stripped, units) or _in_two_languages(stripped, units) or _pieces_and_weight(stripped)
    if both is not None:
        return both
    spelt = _THOUSANDS_OF_POUNDS.sub(r"\1\2 \3", _PLUS_FIRST.sub(r"\1 \2 +", without_ordinal(stripped)))
    pieces = pieces_of(spelt, units)
    figures = weights_in_figures(stripped)
    if figures != stripped and (pieces is None or not pieces[0]):
        bracket = bracket_text(figures, units)
        return None if bracket is None else replace(bracket, words=stripped)
    if pieces is None:
        return None
    masses, gaps = pieces
    loads = [word for gap in gaps for word in gap if word in LOADS_AND_COUNTS]
    if units and PIECES_OR_TONS in loads:
        # '5 to 10 ST' has its own unit, whatever the head above it names.
        return bracket_text(text)
    if _is_a_year(spelt, masses, gaps):
        return None
    if not masses:
        # 'Qty (ST)' heads what is ordered, and no price for it; 'Kleinmenge' is a size that only the vendor knows.
        if len(loads) == 1 and loads[0] in VEHICLES:
            return _of_one_load(stripped, gaps[0], loads[0])
        unweighed = loads or [word for gap in gaps for word in gap if word == NAMED_SIZE]
        return Bracket(stripped, not_weight=unweighed[0]) if unweighed and unweighed[0] != PIECES_OR_TONS else None
    signed = {"below", "up_to", "from", "above"} & set().union(*gaps)
    named = ("truckload", "part_load", HALF_LOAD, *(("pallet",) if signed else ()))
    if any(not mass.units for mass in masses) or (loads and loads[0] not in named):
        return _of_loads(stripped, masses, gaps, loads) if loads else None
    return _from_signs(stripped, masses, gaps, loads)


_TWICE = re.compile(r"(?P<first>[^()]+?)\s*\((?P<second>[^()]*\d[^()]*)\)(?P<behind>[^()\d]*)")


def _in_two_units(text: str, units: tuple[MassUnit, ...]) -> Bracket | None:
    """'5 tons+ (10,000 lb)', 'under 5 t (11,000 lb)': one order size in two units, of which the second says which ton
    the first is in."""
    match = _TWICE.fullmatch(text)
    first = bracket_text(f"{match['first']} {match['behind']}".strip(), units) if match is not None else None
    again = bracket_text(match["second"].strip(), units) if match is not None else None
    if first is None or again is None or first.not_weight or again.not_weight:
        return None
    if again.alone and again.start is not None and (first.start is None) != (first.end is None):
        again = replace(again, start=None, end=again.start) if first.start is None else again
    ends = ((first.start, again.start), (first.end, again.end))
    if any((one is None) != (other is None) for one, other in ends):
        return None
    # '5 tons+ (30,000 lb)' is no size that anybody can tell.
    agree = all(one is None or other is None or _may_be_alike(one, other) for one, other in ends)
    if not agree:
        return Bracket(text, not_weight="other_unit")
    return replace(first, words=text, start=_clearer(*ends[0]), end=_clearer(*ends[1]))


def _clearer(one: Mass | None, other: Mass | None) -> Mass | None:
    """The second, but where its ton may be either."""
    return one if other is None or (other.ambiguous_ton and one is not None and not one.ambiguous_ton) else other


def _may_be_alike(one: Mass, other: Mass) -> bool:
    """Whether one is the other, within a hundredth, in some of the tons that it may be in."""
    said, meant = ([kg for ton in TONS if (kg := mass.kg(ton)) is not None] for mass in (one, other))
    return any(abs(kg - again) <= again / 100 for kg in said for again in meant)


def _pieces_and_weight(text: str) -> Bracket | None:
    """'Moins de 4 palettes (< 3 000 kg)': a size in pieces, and in brackets its weight."""
    match = _TWICE.fullmatch(text)
    pieces = bracket_text(f"{match['first']} {match['behind']}".strip()) if match is not None else None
    if match is None or pieces is None or pieces.not_weight not in _COUNTED:
        return None
    said = bracket_text(match["second"].strip())
    if said is None or said.not_weight:
        return None
    # '2 truckloads (24 t)' leaves open of how many of them that is the weight.
    return None if said.alone else replace(said, words=text)


_LANGUAGES_APART = re.compile(r"\s/\s|\s*[|\n]\s*")


def _in_two_languages(text: str, units: tuple[MassUnit, ...]) -> Bracket | None:
    """'Moins de 5 t / Under 5 t': one order size said twice; 'Under 5 t / under 10 t' are two, and none."""
    first, behind, second = _LANGUAGES_APART.sub("\0", text).partition("\0")
    one, other = (bracket_text(part, units) if behind and part else None for part in (first, second))
    if one is None or other is None or one.not_weight or one.how != other.how:
        return None
    if alike(one.start, other.start) and alike(one.end, other.end):
        return replace(one, words=text)
    return None if one.alone else Bracket(text, not_weight="other_unit")


_YEAR = re.compile(r"(?<![\d.,])20[0-4]\d(?![\d.,])")


def _is_a_year(text: str, masses: list[Mass], gaps: list[list[str]]) -> bool:
    """'2025 volume (ST)' and '2026 tons' tell of a year, and nobody orders two thousand tons at once."""
    if len(masses) != 1 or not _YEAR.search(text) or set().union(*gaps) & {"below", "up_to", "from", "above"}:
        return False
    return set(masses[0].units) <= {MassUnit.SHORT_TON, MassUnit.TONNE}


_OPEN_END = re.compile(r"(?<=[^\W_])\s?[-–—]$")
"""'10 t –' and '10 000–', where nothing follows; the sign of '1.240,-' and '850:-' is one of money."""
_OPEN_FIGURE = re.compile(rf"\s*(?:{SPACED_NUMBER})\s?[-–—]\s*")


def is_open_figure(text: str) -> bool:
    """'10 000–': the last of a row of order sizes, and anywhere else a price as likely."""
    return _OPEN_FIGURE.fullmatch(text) is not None


def is_no_limit(text: str) -> bool:
    """'And up', 'no limit' and a dash say that there is no such limit."""
    behind = phrases("bracket").whole(text) in ("from", "above") and not any(map(str.isdigit, text))
    return behind or not any(map(str.isalnum, text)) or phrases("open_end").whole(text) is not None


def is_bare_order_size(text: str) -> bool:
    """'< 5', '5 - 20' or '40,000 and over': an order size whose unit stands elsewhere, or nowhere."""
    if find_mass_units(text) or is_open_figure(text):
        return False
    bracket = bracket_text(text, (MassUnit.KG,))
    return bracket is not None and not bracket.alone and not bracket.not_weight


_COUNT_WEIGHED = re.compile(
    r"(?P<before>[^\d()]*)(?P<count>\d+)\s+(?P<load>[^\d()]+?)\s*"
    r"\((?P<weight>[^()]*\d[^()]*)\)(?P<behind>[^\d()]*)"
)


def _loads_weighed(text: str) -> str | None:
    """What stands in brackets behind a count of loads: '1 truckload (42,000 lb)' is an order of 42,000 lb, and 'from 1
    truckload (42,000 lb)' begins there; whether the weight of several is that of each, a limit leaves open."""
    counted = _COUNT_WEIGHED.fullmatch(text)
    named = phrases("bracket").whole(counted["load"]) if counted is not None else None
    if counted is None or named not in LOADS_AND_COUNTS:
        return None
    limited = bool((counted["before"] + counted["behind"]).strip())
    return None if limited and counted["count"] != "1" else f"{counted['before']}{counted['weight']}{counted['behind']}"


def _of_one_load(words: str, signs: list[str], load: str) -> Bracket:
    """'Truckload', or where an order begins or ends by one: 'less than half a truck', 'from half truck'."""
    if "below" in signs or "up_to" in signs:
        return Bracket(words, end=_ONE, end_included="below" not in signs, not_weight=load)
    begins = load in ("part_load", HALF_LOAD) and {"from", "above"} & set(signs)
    return Bracket(words, start=_ONE if begins else None, not_weight=load)


_ONE = Mass((NumberReading(Decimal(1)),), ())


def _of_loads(words: str, masses: list[Mass], gaps: list[list[str]], loads: list[str]) -> Bracket:
    """'2-4 truckloads': how many, to be weighed where the file says what one weighs."""
    counted = loads[0] in _COUNTED and not any(mass.units for mass in masses)
    if loads[0] == PIECES_OR_TONS:
        masses = [replace(mass, units=(MassUnit.SHORT_TON,)) for mass in masses]
    bracket = _from_signs(words, masses, gaps, loads) if counted else None
    mixed = _ends_at_a_load(gaps[-1]) or (loads[0] != PIECES_OR_TONS and any(mass.units for mass in masses))
    return replace(bracket or Bracket(words), not_weight="other_unit" if mixed else loads[0])


def _from_signs(words: str, masses: list[Mass], gaps: list[list[str]], loads: list[str]) -> Bracket | None:
    before, behind = set(gaps[0]), set(gaps[-1])
    if len(masses) == 2:
        if masses[0].units != masses[1].units and not masses[0].units:
            return None
        between = set(gaps[1])
        if "filler" in between and not between & {"to", "up_to", "below"}:
            # '1 lot of 20 t'.
            return None
        if between & set(LOADS_AND_COUNTS) and not between & {"to", "up_to", "below", "above"}:
            # 'From 2 truckloads (48 t)': what both weigh, or each of them?
            return Bracket(words, not_weight="other_unit")
        return Bracket(words, masses[0], masses[1], "below" not in between, "above" in before or "above" in between)
    if len(masses) > 2:
        return None
    (mass,) = masses
    if _ends_at_a_load(gaps[-1]):
        # '5 tons to truckload' begins at the weight, and where it ends only the vendor knows.
        return Bracket(words, not_weight="other_unit")
    if "below" in before:
        return Bracket(words, end=mass)
    if "up_to" in before or "up_to" in behind or "below" in behind:
        return Bracket(words, end=mass, end_included=True)
    if "from" in before or "from" in behind:
        return Bracket(words, start=mass)
    if "above" in before or "above" in behind:
        return Bracket(words, start=mass, start_excluded="from" not in behind)
    lesser = next((load for load in loads if load in ("part_load", HALF_LOAD)), None)
    if lesser is not None:
        # 'LTL (10,000 lb)': from there or up to there?
        return Bracket(words, not_weight=lesser)
    return Bracket(words, start=mass, alone=not loads)


def _ends_at_a_load(behind: list[str]) -> bool:
    """A word for a load behind one for 'to'."""
    first = next((place for place, kind in enumerate(behind) if kind in ("to", "up_to")), len(behind))
    return any(kind in LOADS_AND_COUNTS for kind in behind[first:])
